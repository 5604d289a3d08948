package caryatid.chart;

import caryatid.chart.mark.Box;
import caryatid.chart.mark.Drawing;
import caryatid.chart.mark.Drawing.Part;
import caryatid.chart.mark.Fonts;
import caryatid.chart.mark.Mark;
import caryatid.chart.mark.Mark.Stroke;
import caryatid.chart.mark.Mark.Text;
import caryatid.chart.mark.PaperPoint;
import caryatid.chart.mark.PrintableText;
import caryatid.chart.mark.Shapes;
import caryatid.chart.mark.Style.Lettering;
import caryatid.chart.mark.Style.Pen;
import caryatid.chart.mark.Symbols;
import caryatid.chart.mark.Ticks;
import caryatid.remark.Argument;
import caryatid.remark.Unit;
import caryatid.views.OffsetSeries;
import caryatid.views.OffsetSeries.Measured;
import caryatid.views.ResultOrigin;
import caryatid.views.StandChange;
import caryatid.wording.LandmarkWords;
import caryatid.wording.OffsetWords;
import caryatid.wording.ResultWords;
import caryatid.wording.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Plans the drawing of one offset from stand to stand, with its tolerance bands and the changes in
 * between.
 */
public final class OffsetsDrawing {
  /** Height on paper, mm. */
  public static final double HEIGHT_MM = 58;

  private static final double LEFT_MM = 12;
  private static final double TOP_MM = 12;
  private static final double BELOW_MM = 13;
  private static final double TICK_GAP_MM = 6;
  private static final double LABEL_GAP_MM = 1.5;
  private static final double LETTER_MM = 8.4;

  private final OffsetSeries series;
  private final LandmarkWords names;
  private final List<StandChange> changes;
  private final Wording wording;
  private final double widthMm;
  private final Box plot;
  private final double lowMm;
  private final double highMm;
  private final double stepMm;

  private OffsetsDrawing(
      OffsetSeries series,
      List<StandChange> changes,
      LandmarkWords names,
      Wording wording,
      double widthMm) {
    this.names = names;
    this.series = series;
    this.changes = changes;
    this.wording = wording;
    this.widthMm = widthMm;
    this.plot = new Box(LEFT_MM, TOP_MM, widthMm - 1, HEIGHT_MM - BELOW_MM);
    double low = series.measured().stream().mapToDouble(OffsetsDrawing::lowest).min().orElse(0);
    double high = series.measured().stream().mapToDouble(OffsetsDrawing::highest).max().orElse(0);
    this.stepMm = Ticks.step(Math.max(high - low, 1), plot.heightMm() / TICK_GAP_MM);
    this.lowMm = Math.floor(low / stepMm) * stepMm;
    this.highMm = Math.ceil(high / stepMm) * stepMm;
  }

  /**
   * Plans a drawing.
   *
   * @param series the offset, at least one stand
   * @param changes of the whole record; those between stands of the series are marked
   * @param names of the record's landmarks
   * @param widthMm width on paper, at least 100 mm
   */
  public static Drawing plan(
      OffsetSeries series,
      List<StandChange> changes,
      LandmarkWords names,
      Wording wording,
      double widthMm) {
    return new OffsetsDrawing(series, changes, names, wording, widthMm).drawing();
  }

  private static double lowest(Measured m) {
    return Math.min(m.lowestMm(), m.offsetMm() - m.expandedMm());
  }

  private static double highest(Measured m) {
    return Math.max(m.highestMm(), m.offsetMm() + m.expandedMm());
  }

  private Drawing drawing() {
    List<Part> parts = new ArrayList<>();
    parts.add(Part.background(title()));
    parts.add(Part.background(axis()));
    parts.add(Part.background(between()));
    for (int i = 0; i < series.measured().size(); i++) {
      Measured measured = series.measured().get(i);
      parts.add(
          Part.saying(sentence(measured), new OffsetMarks(this::y, each()).of(measured, x(i))));
    }
    parts.add(Part.background(entries()));
    parts.add(Part.background(key()));
    String says = series.measured().stream().map(this::sentence).collect(Collectors.joining(" "));
    return new Drawing(name(), widthMm, HEIGHT_MM, titleWords() + ". " + says, parts);
  }

  private String name() {
    String at = series.landmark().replaceAll("[^A-Za-z0-9]+", "-");
    return (series.plane().lastPart() + "-" + series.side().lastPart() + "-" + at)
        .toLowerCase(java.util.Locale.ROOT);
  }

  private String titleWords() {
    return wording.fill(
        "OffsetsDrawing.TITLE",
        Argument.term(series.plane()),
        Argument.term(series.side()),
        Argument.text(PrintableText.of(names.name(series.landmark()))));
  }

  private List<Mark> title() {
    String words = Fonts.fit(titleWords(), Lettering.TITLE, widthMm);
    PaperPoint at = new PaperPoint(0, Lettering.TITLE.ascentMm());
    return List.of(new Text(at, words, Lettering.TITLE));
  }

  /** Where a stand stands across the plot. */
  private double x(int index) {
    return plot.leftMm() + (index + 0.5) * each();
  }

  private double each() {
    return plot.widthMm() / series.measured().size();
  }

  private double y(double offsetMm) {
    return plot.bottomMm() - (offsetMm - lowMm) / (highMm - lowMm) * plot.heightMm();
  }

  private List<Mark> axis() {
    List<Mark> marks = new ArrayList<>();
    marks.add(Shapes.closed(Shapes.corners(plot), Pen.TICK));
    long steps = Math.round((highMm - lowMm) / stepMm);
    for (int i = 0; i <= steps; i++) {
      double at = lowMm + i * stepMm;
      String words = wording.signed(at, stepMm >= 1 ? Unit.COUNT : Unit.MM);
      double width = Fonts.widthMm(words, Lettering.PLAIN);
      PaperPoint tick = new PaperPoint(plot.leftMm(), y(at));
      marks.add(Stroke.of(Pen.TICK, tick.moved(-1, 0), tick));
      marks.add(new Text(tick.moved(-1.4 - width, 1), words, Lettering.PLAIN));
    }
    if (lowMm < 0 && highMm > 0) {
      PaperPoint zero = new PaperPoint(plot.leftMm(), y(0));
      marks.add(Stroke.of(Pen.TICK, zero, new PaperPoint(plot.rightMm(), zero.downMm())));
    }
    return marks;
  }

  /** The changes between two stands, a line and their names over it. */
  private List<Mark> between() {
    List<Mark> marks = new ArrayList<>();
    double free = 0;
    for (int i = 1; i < series.measured().size(); i++) {
      Measured before = series.measured().get(i - 1);
      Measured after = series.measured().get(i);
      String names =
          changes.stream()
              .filter(c -> c.isAfter(before.at(), before.entry()))
              .filter(c -> !c.isAfter(after.at(), after.entry()))
              .map(StandChange::name)
              .collect(Collectors.joining(" "));
      if (names.isEmpty()) {
        continue;
      }
      double at = x(i) - each() / 2;
      marks.add(
          Stroke.of(
              Pen.LEADER,
              new PaperPoint(at, plot.topMm() - 0.8),
              new PaperPoint(at, plot.bottomMm())));
      double width = Fonts.widthMm(names, Lettering.STRONG);
      double left = Math.min(at - width / 2, plot.rightMm() - width);
      if (left >= free) {
        marks.add(new Text(new PaperPoint(left, LETTER_MM + 2), names, Lettering.STRONG));
        free = left + width + LABEL_GAP_MM;
      }
    }
    return marks;
  }

  /** The stands' entries below the plot, as many as there is room for. */
  private List<Mark> entries() {
    List<Mark> marks = new ArrayList<>();
    double free = 0;
    for (int i = 0; i < series.measured().size(); i++) {
      Measured m = series.measured().get(i);
      String words = m.entry() + (m.typed() ? " " + wording.word("OffsetsDrawing.TYPED") : "");
      double width = Fonts.widthMm(words, Lettering.PLAIN);
      double left = x(i) - width / 2;
      marks.add(Symbols.upright(Pen.TICK, new PaperPoint(x(i), plot.bottomMm() + 0.5), 0.5));
      if (left >= free && left + width <= widthMm) {
        marks.add(new Text(new PaperPoint(left, plot.bottomMm() + 4), words, Lettering.PLAIN));
        free = left + width + LABEL_GAP_MM;
      }
    }
    marks.add(directions());
    return marks;
  }

  private Mark directions() {
    OffsetWords words = new OffsetWords(wording);
    String both =
        wording.fill(
            "OffsetsDrawing.AXES",
            Argument.text(words.direction(series.plane(), 1)),
            Argument.text(words.direction(series.plane(), -1)));
    return new Text(
        new PaperPoint(0, plot.bottomMm() + 7.6),
        Fonts.fit(both, Lettering.PLAIN, widthMm),
        Lettering.PLAIN);
  }

  private List<Mark> key() {
    OffsetMarks.LegendRow key = new OffsetMarks.LegendRow(HEIGHT_MM - 1.2, widthMm, wording);
    return key.marks();
  }

  private String sentence(Measured m) {
    return wording.fill(
        "OffsetsDrawing.SAYS",
        Argument.count(m.entry()),
        Argument.text(new OffsetWords(wording).distance(series.plane(), m.offsetMm())),
        Argument.of(m.expandedMm(), Unit.MM),
        Argument.text(wording.signed(m.lowestMm(), Unit.MM)),
        Argument.text(wording.signed(m.highestMm(), Unit.MM)),
        Argument.text(
            new ResultWords(wording).result(m.verdict(), m.offsetMm(), m.lowestMm(), m.highestMm())
                + (m.typed() ? wording.word(ResultOrigin.TYPED) : "")));
  }
}
