package caryatid.chart;

import caryatid.alignment.Stand;
import caryatid.chart.FootTracks.Track;
import caryatid.chart.mark.Box;
import caryatid.chart.mark.Curve;
import caryatid.chart.mark.Drawing;
import caryatid.chart.mark.Drawing.Part;
import caryatid.chart.mark.Fonts;
import caryatid.chart.mark.Mark;
import caryatid.chart.mark.Mark.Text;
import caryatid.chart.mark.PaperPoint;
import caryatid.chart.mark.Style.Lettering;
import caryatid.chart.mark.Style.Pen;
import caryatid.geometry.Side;
import caryatid.recording.model.Recording;
import caryatid.remark.Argument;
import caryatid.standing.MeanLoad;
import caryatid.uncertainty.Estimate;
import caryatid.wording.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** Plans vertical force and centre of pressure over time, what was left out hatched. */
public final class TimeDrawing {
  /** Room to the left of the axis of time, mm. */
  public static final double LEFT_MM = 11;

  /** Room to the right of it, mm. */
  public static final double RIGHT_MM = TimePanel.BESIDE_MM;

  private static final double TITLE_MM = 6;
  private static final int CAPTION_LINES = 2;
  private static final double GAP_MM = 5.5;
  private static final double BELOW_MM = 12.2;

  private final Stand stand;
  private final Recording recording;
  private final Track track;
  private final String title;
  private final Wording wording;
  private final double widthMm;
  private final double heightMm;

  private TimeDrawing(
      Stand stand,
      Recording recording,
      Track track,
      String title,
      Wording wording,
      double widthMm,
      double heightMm) {
    this.stand = stand;
    this.recording = recording;
    this.track = track;
    this.title = title;
    this.wording = wording;
    this.widthMm = widthMm;
    this.heightMm = heightMm;
  }

  /**
   * Plans a drawing.
   *
   * @param stands of one state
   * @param recordings the stands' own, in their order
   * @param number which of the stands, from 0
   * @param side whose foot; the whole body is shown where only that was recorded
   * @param widthMm width on paper, at least 60 mm
   * @param heightMm height on paper, at least 40 mm
   */
  public static Drawing plan(
      List<Stand> stands,
      List<Recording> recordings,
      int number,
      Side side,
      Wording wording,
      double widthMm,
      double heightMm) {
    Stand stand = stands.get(number);
    Recording recording = recordings.get(number);
    Track track = FootTracks.of(stand, recording, side);
    Argument line = Argument.term(track.of());
    String title =
        stands.size() == 1
            ? wording.fill("TimeDrawing.TITLE", line)
            : wording.fill("TimeDrawing.TITLE_OF_STAND", line, Argument.count(number + 1));
    return new TimeDrawing(stand, recording, track, title, wording, widthMm, heightMm)
        .drawing("time-" + (number + 1) + "-" + side.lastPart().toLowerCase(Locale.ROOT));
  }

  private List<TimePanel> rows() {
    List<TimePanel> rows = new ArrayList<>();
    track
        .plate()
        .upN()
        .map(n -> new TimePanel.Named("", new Curve(n, 0, Pen.TRACE)))
        .ifPresent(
            named -> rows.add(new TimePanel(wording.word("TimeDrawing.FORCE"), List.of(named))));
    Optional<MeanLoad> load = stand.standing().load(track.of());
    double anterior = load.map(l -> l.copAnteriorMm().value()).orElse(0.0);
    double right = load.flatMap(MeanLoad::copRightMm).map(Estimate::value).orElse(0.0);
    List<TimePanel.Named> curves = new ArrayList<>();
    curves.add(
        new TimePanel.Named(
            wording.word("TimeDrawing.ANTERIOR"),
            new Curve(track.plate().copAnteriorMm(), anterior, Pen.TRACE)));
    track
        .plate()
        .copRightMm()
        .map(cop -> new Curve(cop, right, Pen.SECOND_TRACE))
        .ifPresent(
            curve -> curves.add(new TimePanel.Named(wording.word("TimeDrawing.RIGHT"), curve)));
    rows.add(new TimePanel(wording.word("TimeDrawing.COP"), curves));
    return rows;
  }

  private Drawing drawing(String name) {
    List<TimePanel> rows = rows();
    double each = (heightMm - TITLE_MM - BELOW_MM) / rows.size();
    List<Part> parts = new ArrayList<>();
    parts.add(Part.background(List.of(text(0, 0, title, Lettering.TITLE))));
    for (int i = 0; i < rows.size(); i++) {
      double top = TITLE_MM + i * each;
      Box box = new Box(LEFT_MM, top + GAP_MM - 1, widthMm - RIGHT_MM, top + each - 1.2);
      boolean numbered = i == rows.size() - 1;
      parts.add(rows.get(i).part(stand, recording, track, box, top, numbered, wording));
    }
    String left = leftOut();
    parts.add(Part.background(caption(left)));
    return new Drawing(name, widthMm, heightMm, title + ". " + left, parts);
  }

  private List<Mark> caption(String words) {
    double top = heightMm - CAPTION_LINES * Lettering.PLAIN.lineMm() - 0.4;
    List<Mark> marks = new ArrayList<>();
    for (String line : Fonts.wrap(words, Lettering.PLAIN, widthMm)) {
      if (marks.size() < CAPTION_LINES) {
        marks.add(text(0, top + marks.size() * Lettering.PLAIN.lineMm(), line, Lettering.PLAIN));
      }
    }
    return marks;
  }

  private Text text(double left, double top, String words, Lettering lettering) {
    String fitted = Fonts.fit(words, lettering, widthMm - left);
    return new Text(new PaperPoint(left, top + lettering.ascentMm()), fitted, lettering);
  }

  private String leftOut() {
    String reasons =
        stand.standing().stretch().leftOut().stream()
            .map(left -> wording.word(left.reason()))
            .distinct()
            .collect(Collectors.joining(", "));
    return reasons.isEmpty()
        ? wording.word("TimeDrawing.ALL_USED")
        : wording.fill("TimeDrawing.LEFT_OUT", Argument.text(reasons));
  }
}
