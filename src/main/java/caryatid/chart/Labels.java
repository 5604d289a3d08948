package caryatid.chart;

import caryatid.chart.LabelText.Detail;
import caryatid.chart.Leg.Level;
import caryatid.chart.Mark.Stroke;
import caryatid.chart.Style.Lettering;
import caryatid.chart.Style.Pen;
import caryatid.wording.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/** The column of labels beside a leg: as much on each landmark as there is room for. */
final class Labels {
  private static final double GAP_MM = 1.2;

  private final Leg leg;
  private final LabelText text;
  private final Box room;
  private final OptionalInt closeUp;
  private final Detail detail;

  Labels(Leg leg, Wording wording, Box room) {
    this.leg = leg;
    this.text = new LabelText(leg.view().plane(), wording, room.widthMm());
    this.room = room;
    OptionalInt scale = CloseUp.scale(leg, room.widthMm());
    this.detail = detail(scale);
    this.closeUp = detail.drawn() ? scale : OptionalInt.empty();
  }

  /** The scale of the close-ups, one to so many; empty where there is no room for them. */
  OptionalInt closeUp() {
    return closeUp;
  }

  private Detail detail(OptionalInt scale) {
    Detail[] all = Detail.values();
    for (int i = all.length - 1; i > 0; i--) {
      Detail tried = all[i];
      boolean drawn = scale.isPresent() && tried.drawn();
      double sum = leg.levels().stream().mapToDouble(level -> heightMm(level, tried, drawn)).sum();
      if (sum <= room.heightMm()) {
        return tried;
      }
    }
    return Detail.ONE_LINE;
  }

  private double heightMm(Level level, Detail lines, boolean drawn) {
    double picture = drawn && level.finding().isPresent() ? CloseUp.HEIGHT_MM : 0;
    return GAP_MM + LabelText.heightMm(text.lines(level, lines)) + picture;
  }

  /**
   * The marks of each level's label; none for levels that are left to the table.
   *
   * @param from where each level's leader starts, in the order of the leg's levels
   */
  List<List<Mark>> place(List<Spot> from) {
    int most = (int) (room.heightMm() / (Lettering.STRONG.lineMm() + GAP_MM));
    int count =
        detail == Detail.ONE_LINE ? Math.min(most, leg.levels().size()) : leg.levels().size();
    List<Double> heights = new ArrayList<>();
    List<Double> wanted = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      heights.add(heightMm(leg.levels().get(i), detail, closeUp.isPresent()));
      wanted.add(from.get(i).downMm() - Lettering.STRONG.lineMm() / 2);
    }
    List<Double> tops = Apart.tops(wanted, heights, room.topMm(), room.bottomMm());
    List<List<Mark>> marks = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      marks.add(marks(leg.levels().get(i), tops.get(i), from.get(i)));
    }
    return marks;
  }

  private List<Mark> marks(Level level, double topMm, Spot from) {
    List<Mark> marks = new ArrayList<>();
    Spot to = new Spot(room.leftMm(), topMm + Lettering.STRONG.lineMm() / 2);
    marks.add(Stroke.of(Pen.LEADER, from, to.moved(-2, 0), to.moved(-0.5, 0)));
    List<LabelText.Line> lines = text.lines(level, detail);
    marks.addAll(LabelText.marks(lines, room.leftMm(), topMm));
    double under = topMm + LabelText.heightMm(lines);
    Box strip = new Box(room.leftMm(), under, room.rightMm(), under + CloseUp.HEIGHT_MM);
    closeUp.ifPresent(scale -> marks.addAll(CloseUp.marks(level, leg.view(), scale, strip)));
    return marks;
  }
}
