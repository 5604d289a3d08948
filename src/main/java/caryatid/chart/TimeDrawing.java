package caryatid.chart;

import caryatid.alignment.Stand;
import caryatid.chart.Drawing.Part;
import caryatid.chart.Mark.Text;
import caryatid.chart.Style.Lettering;
import caryatid.chart.Style.Pen;
import caryatid.chart.Tracks.Track;
import caryatid.recording.Recording;
import caryatid.recording.Samples;
import caryatid.remark.Argument;
import caryatid.remark.Unit;
import caryatid.standing.LeftOut;
import caryatid.wording.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Plans vertical force and centre of pressure over time, what was left out hatched. */
public final class TimeDrawing {
  private static final double TITLE_MM = 6;
  private static final int CAPTION_LINES = 2;
  private static final double GAP_MM = 5.5;
  private static final double LEFT_MM = 11;
  private static final double BELOW_MM = 12.2;

  private final Stand stand;
  private final Recording recording;
  private final Wording wording;
  private final double widthMm;
  private final double heightMm;
  private final Track track;

  private TimeDrawing(
      Stand stand, Recording recording, Wording wording, double widthMm, double heightMm) {
    this.stand = stand;
    this.recording = recording;
    this.wording = wording;
    this.widthMm = widthMm;
    this.heightMm = heightMm;
    this.track = ownTrack(stand, recording);
  }

  /** The prosthetic foot's track; the whole body's where only that was recorded. */
  private static Track ownTrack(Stand stand, Recording recording) {
    List<Track> tracks = Tracks.of(stand, recording);
    List<String> prosthetic =
        stand.trial().side().sides().stream().map(side -> side.name() + "_FOOT").toList();
    return tracks.stream()
        .filter(t -> prosthetic.contains(t.of().name()))
        .findFirst()
        .orElse(tracks.get(0));
  }

  /**
   * Plans a drawing.
   *
   * @param recording the stand's own
   * @param widthMm width on paper, at least 60 mm
   * @param heightMm height on paper, at least 50 mm
   */
  public static Drawing plan(
      Stand stand, Recording recording, Wording wording, double widthMm, double heightMm) {
    return new TimeDrawing(stand, recording, wording, widthMm, heightMm).drawing();
  }

  private record Row(String label, Samples values) {}

  private List<Row> rows() {
    List<Row> rows = new ArrayList<>();
    track.plate().upN().ifPresent(n -> rows.add(new Row(wording.word("TimeDrawing.FORCE"), n)));
    rows.add(new Row(wording.word("TimeDrawing.ANTERIOR"), track.plate().copAnteriorMm()));
    rows.add(new Row(wording.word("TimeDrawing.RIGHT"), track.plate().copRightMm()));
    return rows;
  }

  private Drawing drawing() {
    List<Row> rows = rows();
    double each = (heightMm - TITLE_MM - BELOW_MM) / rows.size();
    List<Part> parts = new ArrayList<>();
    String title = wording.fill("TimeDrawing.TITLE", Argument.text(wording.word(track.of())));
    parts.add(Part.background(List.of(text(0, 0, title, Lettering.TITLE))));
    for (int i = 0; i < rows.size(); i++) {
      double top = TITLE_MM + i * each;
      Box box = new Box(LEFT_MM, top + GAP_MM - 1, widthMm - 1, top + each - 1.2);
      parts.add(panel(rows.get(i), box, top));
    }
    parts.add(Part.background(time(new Box(LEFT_MM, 0, widthMm - 1, heightMm - BELOW_MM))));
    String left = leftOut();
    parts.add(Part.background(caption(left)));
    return new Drawing("time", widthMm, heightMm, title + ". " + left, parts);
  }

  private List<Mark> caption(String words) {
    double top = heightMm - CAPTION_LINES * Lettering.PLAIN.lineMm() - 0.4;
    List<Mark> marks = new ArrayList<>();
    for (String line : Letters.wrap(words, Lettering.PLAIN, widthMm)) {
      if (marks.size() < CAPTION_LINES) {
        marks.add(text(0, top + marks.size() * Lettering.PLAIN.lineMm(), line, Lettering.PLAIN));
      }
    }
    return marks;
  }

  private Text text(double left, double top, String words, Lettering lettering) {
    String fitted = Letters.fit(words, lettering, widthMm - left);
    return new Text(new Spot(left, top + lettering.ascentMm()), fitted, lettering);
  }

  private Part panel(Row row, Box box, double top) {
    Series series =
        new Series(recording.timeS(), row.values(), track.plate().usable(), durationS(), box);
    List<Mark> marks = new ArrayList<>();
    for (LeftOut left : stand.standing().stretch().leftOut()) {
      marks.addAll(
          Shapes.hatch(
              new Box(series.x(left.fromS()), box.topMm(), series.x(left.toS()), box.bottomMm()),
              1.2,
              Pen.LEFT_OUT));
    }
    marks.add(Shapes.closed(Shapes.corners(box), Pen.TICK));
    marks.addAll(series.ticks(wording));
    marks.addAll(series.traces());
    marks.add(text(LEFT_MM, top, row.label(), Lettering.PLAIN));
    return Part.saying(row.label(), marks);
  }

  private double durationS() {
    return recording.timeS().at(recording.timeS().size() - 1);
  }

  private List<Mark> time(Box box) {
    List<Mark> marks = new ArrayList<>();
    double duration = Math.max(durationS(), 1e-3);
    double step = Ticks.step(duration, box.widthMm() / 14);
    String unit = " " + Unit.S.symbol();
    for (double at = 0; at <= duration; at += step) {
      String words = Ticks.text(at, step, wording) + (at == 0 ? unit : "");
      double width = Letters.widthMm(words, Lettering.PLAIN);
      double middle = box.leftMm() + at / duration * box.widthMm();
      double left = Math.max(0, Math.min(widthMm - width, middle - width / 2));
      marks.add(text(left, box.bottomMm() - 0.6, words, Lettering.PLAIN));
    }
    return marks;
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
