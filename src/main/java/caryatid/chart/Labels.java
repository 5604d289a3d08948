package caryatid.chart;

import caryatid.chart.Leg.Level;
import caryatid.chart.Mark.Stroke;
import caryatid.chart.Mark.Text;
import caryatid.chart.Style.Lettering;
import caryatid.chart.Style.Pen;
import caryatid.remark.Argument;
import caryatid.remark.Unit;
import caryatid.wording.OffsetWords;
import caryatid.wording.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The column of labels beside a leg: as many lines for each landmark as there is room for. */
final class Labels {
  private static final double GAP_MM = 1.2;

  private final Leg leg;
  private final Wording wording;
  private final OffsetWords words;
  private final Box room;

  Labels(Leg leg, Wording wording, Box room) {
    this.leg = leg;
    this.wording = wording;
    this.words = new OffsetWords(wording);
    this.room = room;
  }

  private record Line(String words, Lettering lettering) {}

  /**
   * The marks of each level's label; empty for levels that are left to the table.
   *
   * @param from where each level's leader starts, in the order of the leg's levels
   */
  List<List<Mark>> place(List<Spot> from) {
    List<List<Line>> labels = fitting();
    List<Double> heights = labels.stream().map(Labels::heightMm).toList();
    List<Double> wanted = new ArrayList<>();
    for (int i = 0; i < labels.size(); i++) {
      wanted.add(from.get(i).downMm() - Lettering.STRONG.lineMm() / 2);
    }
    List<Double> tops = Apart.tops(wanted, heights, room.topMm(), room.bottomMm());
    List<List<Mark>> marks = new ArrayList<>();
    for (int i = 0; i < labels.size(); i++) {
      marks.add(marks(labels.get(i), tops.get(i), from.get(i)));
    }
    return marks;
  }

  private List<Mark> marks(List<Line> label, double topMm, Spot from) {
    List<Mark> marks = new ArrayList<>();
    Spot to = new Spot(room.leftMm(), topMm + Lettering.STRONG.lineMm() / 2);
    marks.add(Stroke.of(Pen.LEADER, from, to.moved(-2, 0), to.moved(-0.5, 0)));
    double down = topMm;
    for (Line line : label) {
      Spot base = new Spot(room.leftMm(), down + line.lettering().ascentMm());
      marks.add(new Text(base, line.words(), line.lettering()));
      down += line.lettering().lineMm();
    }
    return marks;
  }

  private List<List<Line>> fitting() {
    for (int detail = 4; detail >= 1; detail--) {
      int lines = detail;
      List<List<Line>> labels = leg.levels().stream().map(level -> lines(level, lines)).toList();
      if (labels.stream().mapToDouble(Labels::heightMm).sum() <= room.heightMm()) {
        return labels;
      }
    }
    int most = (int) (room.heightMm() / (Lettering.STRONG.lineMm() + GAP_MM));
    return leg.levels().stream().limit(most).map(level -> lines(level, 1)).toList();
  }

  private static double heightMm(List<Line> label) {
    return GAP_MM + label.stream().mapToDouble(line -> line.lettering().lineMm()).sum();
  }

  /** A level in as many kinds of lines as asked for: offset, name, result, target. */
  private List<Line> lines(Level level, int detail) {
    List<Line> lines = new ArrayList<>();
    if (detail == 1) {
      add(
          lines,
          level.landmark().name() + offset(level).map(o -> ": " + o).orElse(""),
          Lettering.PLAIN);
      return lines;
    }
    add(lines, level.landmark().name(), Lettering.STRONG);
    offset(level).ifPresent(words -> add(lines, words, Lettering.PLAIN));
    level
        .finding()
        .filter(f -> detail > 2)
        .ifPresent(f -> wrap(lines, wording.word("Labels.VERDICT." + f.verdict().name())));
    level.finding().filter(f -> detail > 3).ifPresent(f -> wrap(lines, wanted(level)));
    return lines;
  }

  private Optional<String> offset(Level level) {
    return level.offset().map(o -> words.rounded(leg.view().plane(), o.mm().value()));
  }

  private String wanted(Level level) {
    var target = level.finding().orElseThrow().target();
    return wording.fill(
        "Labels.WANTED",
        Argument.text(signed(target.recommendedMm())),
        Argument.text(signed(target.lowestMm())),
        Argument.text(signed(target.highestMm())));
  }

  private String signed(double mm) {
    return wording.signed(mm, Unit.MM);
  }

  private void add(List<Line> lines, String words, Lettering lettering) {
    lines.add(new Line(Letters.fit(words, lettering, room.widthMm()), lettering));
  }

  private void wrap(List<Line> lines, String words) {
    for (String line : Letters.wrap(words, Lettering.PLAIN, room.widthMm())) {
      add(lines, line, Lettering.PLAIN);
    }
  }
}
