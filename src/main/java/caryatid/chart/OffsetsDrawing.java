package caryatid.chart;

import caryatid.chart.mark.Box;
import caryatid.chart.mark.Drawing;
import caryatid.chart.mark.Drawing.Part;
import caryatid.chart.mark.Fonts;
import caryatid.chart.mark.Mark;
import caryatid.chart.mark.Mark.Text;
import caryatid.chart.mark.PaperPoint;
import caryatid.chart.mark.PrintableText;
import caryatid.chart.mark.Style.Lettering;
import caryatid.chart.paint.OffsetsChart;
import caryatid.chart.paint.OffsetsChart.ChangeMark;
import caryatid.chart.paint.OffsetsChart.Join;
import caryatid.remark.Argument;
import caryatid.remark.Unit;
import caryatid.views.OffsetSeries;
import caryatid.views.OffsetSeries.Measured;
import caryatid.views.ResultOrigin;
import caryatid.views.StandChange;
import caryatid.views.StateChange;
import caryatid.views.StateChange.Judgement;
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

  private final OffsetSeries series;
  private final LandmarkWords names;
  private final List<StandChange> changes;
  private final List<StateChange> judged;
  private final Wording wording;
  private final double widthMm;
  private final Box plot;

  private OffsetsDrawing(
      OffsetSeries series,
      List<StandChange> changes,
      List<StateChange> judged,
      LandmarkWords names,
      Wording wording,
      double widthMm) {
    this.names = names;
    this.series = series;
    this.changes = changes;
    this.judged = judged;
    this.wording = wording;
    this.widthMm = widthMm;
    this.plot = new Box(LEFT_MM, TOP_MM, widthMm - 1, HEIGHT_MM - BELOW_MM);
  }

  /**
   * Plans a drawing.
   *
   * @param series the offset, at least one stand
   * @param changes of the whole record; those between stands of the series are marked
   * @param judged which changes are real; two stands are joined by a line where theirs is, by a
   *     dashed one where it is if the marks stayed
   * @param names of the record's landmarks
   * @param widthMm width on paper, at least 100 mm
   */
  public static Drawing plan(
      OffsetSeries series,
      List<StandChange> changes,
      List<StateChange> judged,
      LandmarkWords names,
      Wording wording,
      double widthMm) {
    return new OffsetsDrawing(series, changes, judged, names, wording, widthMm).drawing();
  }

  private Drawing drawing() {
    List<Part> parts = new ArrayList<>();
    parts.add(Part.background(title()));
    List<String> sentences = series.measured().stream().map(this::sentence).toList();
    parts.addAll(
        OffsetsChart.draw(
            new OffsetsChart.OffsetsPlan(
                series.measured(), names(), sentences, changes(), joins(), plot),
            wording));
    parts.add(Part.background(List.of(directions())));
    OffsetLegend legend = new OffsetLegend(HEIGHT_MM - 1.2, widthMm, wording);
    parts.add(Part.background(legend.marks()));
    String says = titleWords() + ". " + String.join(" ", sentences);
    return new Drawing(name(), widthMm, HEIGHT_MM, says, parts);
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
        Argument.text(PrintableText.of(names.name(series.landmark(), series.side()))));
  }

  private List<Mark> title() {
    String words = Fonts.fit(titleWords(), Lettering.TITLE, widthMm);
    PaperPoint at = new PaperPoint(0, Lettering.TITLE.ascentMm());
    return List.of(new Text(at, words, Lettering.TITLE));
  }

  /** The changes between each two stands, by their names. */
  private List<ChangeMark> changes() {
    List<ChangeMark> marks = new ArrayList<>();
    for (int i = 1; i < series.measured().size(); i++) {
      Measured before = series.measured().get(i - 1);
      Measured after = series.measured().get(i);
      String between =
          changes.stream()
              .filter(c -> c.isAfter(before.at(), before.entry()))
              .filter(c -> !c.isAfter(after.at(), after.entry()))
              .map(StandChange::name)
              .collect(Collectors.joining(" "));
      if (!between.isEmpty()) {
        marks.add(new ChangeMark(between, i));
      }
    }
    return marks;
  }

  private List<Join> joins() {
    List<Join> joins = new ArrayList<>();
    for (int i = 1; i < series.measured().size(); i++) {
      Judgement judgement = judgement(series.measured().get(i - 1), series.measured().get(i));
      if (judgement != Judgement.CHANCE) {
        joins.add(new Join(i, judgement == Judgement.REAL_IF_STAYED));
      }
    }
    return joins;
  }

  private Judgement judgement(Measured before, Measured after) {
    return judged.stream()
        .filter(c -> c.before() == before.entry() && c.after() == after.entry())
        .flatMap(c -> c.of(series).stream())
        .map(Judgement::of)
        .findFirst()
        .orElse(Judgement.CHANCE);
  }

  /** The stands' entries; a result that was typed has its mark. */
  private List<String> names() {
    return series.measured().stream()
        .map(m -> m.entry() + (m.typed() ? " " + wording.word("OffsetsDrawing.TYPED") : ""))
        .toList();
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
