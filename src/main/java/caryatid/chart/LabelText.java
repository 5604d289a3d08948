package caryatid.chart;

import caryatid.chart.Leg.Level;
import caryatid.chart.Mark.Text;
import caryatid.chart.Style.Lettering;
import caryatid.geometry.Plane;
import caryatid.loadline.Offset;
import caryatid.loadline.Target;
import caryatid.remark.Argument;
import caryatid.remark.Unit;
import caryatid.wording.OffsetWords;
import caryatid.wording.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The words of a landmark's label, from the least to all. */
final class LabelText {

  /** How much a label says, from the least; each with what the ones before it say. */
  enum Detail {
    ONE_LINE,
    RESULT,
    CLOSE_UP,
    CLOSE_UP_AND_RESULT,
    TWO_LINES,
    TARGET;

    boolean drawn() {
      return compareTo(CLOSE_UP) >= 0;
    }

    boolean saysResult() {
      return this == RESULT || compareTo(CLOSE_UP_AND_RESULT) >= 0;
    }
  }

  private final Plane plane;
  private final Wording wording;
  private final OffsetWords words;
  private final double roomMm;

  LabelText(Plane plane, Wording wording, double roomMm) {
    this.plane = plane;
    this.wording = wording;
    this.words = new OffsetWords(wording);
    this.roomMm = roomMm;
  }

  /** A line of a label. */
  record Line(String words, Lettering lettering) {}

  static double heightMm(List<Line> lines) {
    return lines.stream().mapToDouble(line -> line.lettering().lineMm()).sum();
  }

  static List<Mark> marks(List<Line> lines, double leftMm, double topMm) {
    List<Mark> marks = new ArrayList<>();
    double down = topMm;
    for (Line line : lines) {
      Spot base = new Spot(leftMm, down + line.lettering().ascentMm());
      marks.add(new Text(base, line.words(), line.lettering()));
      down += line.lettering().lineMm();
    }
    return marks;
  }

  List<Line> lines(Level level, Detail detail) {
    List<Line> lines = new ArrayList<>();
    if (detail.compareTo(Detail.TWO_LINES) >= 0) {
      add(lines, level.landmark().name(), Lettering.STRONG);
      offset(level).ifPresent(offset -> add(lines, offset, Lettering.PLAIN));
    } else {
      add(lines, oneLine(level), Lettering.PLAIN);
    }
    level
        .before()
        .filter(before -> detail != Detail.ONE_LINE)
        .ifPresent(before -> add(lines, before(before), Lettering.PLAIN));
    level
        .finding()
        .filter(finding -> detail.saysResult())
        .ifPresent(f -> wrap(lines, wording.word("Labels.VERDICT." + f.verdict().name())));
    level
        .finding()
        .filter(finding -> detail == Detail.TARGET)
        .ifPresent(finding -> wrap(lines, wanted(finding.target())));
    return lines;
  }

  /** Name and offset; the name is cut short before the offset is. */
  private String oneLine(Level level) {
    String offset = offset(level).map(o -> ": " + o).orElse("");
    double room = roomMm - Letters.widthMm(offset, Lettering.PLAIN);
    return Letters.fit(level.landmark().name(), Lettering.PLAIN, room) + offset;
  }

  private Optional<String> offset(Level level) {
    return level.offset().map(offset -> words.rounded(plane, offset.mm().value()));
  }

  private String before(Offset before) {
    String whole = wording.signed(before.mm().value(), Unit.COUNT);
    return wording.fill("Labels.BEFORE", Argument.text(whole));
  }

  private String wanted(Target target) {
    return wording.fill(
        "Labels.WANTED",
        Argument.text(signed(target.recommendedMm())),
        Argument.text(signed(target.lowestMm())),
        Argument.text(signed(target.highestMm())));
  }

  private String signed(double mm) {
    return wording.signed(mm, mm == Math.rint(mm) ? Unit.COUNT : Unit.MM);
  }

  private void add(List<Line> lines, String text, Lettering lettering) {
    lines.add(new Line(Letters.fit(text, lettering, roomMm), lettering));
  }

  private void wrap(List<Line> lines, String text) {
    for (String line : Letters.wrap(text, Lettering.PLAIN, roomMm)) {
      add(lines, line, Lettering.PLAIN);
    }
  }
}
