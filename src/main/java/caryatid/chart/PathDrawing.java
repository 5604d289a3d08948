package caryatid.chart;

import caryatid.alignment.Stand;
import caryatid.chart.FootTracks.Track;
import caryatid.chart.mark.Box;
import caryatid.chart.mark.Drawing;
import caryatid.chart.mark.Drawing.Part;
import caryatid.chart.mark.Fonts;
import caryatid.chart.mark.Mark;
import caryatid.chart.mark.Mark.Fill;
import caryatid.chart.mark.Mark.Text;
import caryatid.chart.mark.PaperPoint;
import caryatid.chart.mark.Scale;
import caryatid.chart.mark.Scale.PersonPoint;
import caryatid.chart.mark.Shapes;
import caryatid.chart.mark.Style.Ink;
import caryatid.chart.mark.Style.Lettering;
import caryatid.chart.mark.Style.Pen;
import caryatid.geometry.Side;
import caryatid.recording.model.Recording;
import caryatid.remark.Argument;
import caryatid.remark.Unit;
import caryatid.standing.Sway;
import caryatid.wording.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;

/**
 * Plans the paths of the centre of pressure seen from above: with the feet where they are known,
 * and next to them one foot's paths at a larger scale.
 */
public final class PathDrawing {
  private static final double TITLE_MM = 6;
  private static final double DIRECTIONS_MM = 4.2;
  private static final double OVERVIEW = 0.55;
  private static final double GAP_MM = 3;
  private static final int KEY_ENTRIES = 4;

  private final List<Stand> stands;
  private final List<Recording> recordings;
  private final Side side;
  private final Wording wording;
  private final double widthMm;
  private final double heightMm;
  private final Box room;
  private final Scale scale;

  private PathDrawing(
      List<Stand> stands,
      List<Recording> recordings,
      Side side,
      Wording wording,
      double widthMm,
      double heightMm) {
    this.stands = stands;
    this.recordings = recordings;
    this.side = side;
    this.wording = wording;
    this.widthMm = widthMm;
    this.heightMm = heightMm;
    double floor = heightMm - Legend.heightMm(KEY_ENTRIES) - DIRECTIONS_MM;
    this.room = new Box(0, TITLE_MM, OVERVIEW * widthMm, floor);
    List<PersonPoint> places = new ArrayList<>();
    feetAndPaths(places);
    this.scale = Scale.centred(places, room);
  }

  /** Whether there is a path to draw: the side's plate measured both directions in each stand. */
  public static boolean isDrawn(List<Stand> stands, List<Recording> recordings, Side side) {
    return IntStream.range(0, stands.size())
        .mapToObj(i -> FootTracks.of(stands.get(i), recordings.get(i), side))
        .allMatch(track -> track.plate().copRightMm().isPresent());
  }

  /**
   * Plans a drawing.
   *
   * @param stands of one state; their feet are drawn where the first one's sheet says
   * @param recordings the stands' own, in their order
   * @param side whose path is shown at a larger scale; one that is drawn
   * @param widthMm width on paper, at least 60 mm
   * @param heightMm height on paper, at least 40 mm
   */
  public static Drawing plan(
      List<Stand> stands,
      List<Recording> recordings,
      Side side,
      Wording wording,
      double widthMm,
      double heightMm) {
    return new PathDrawing(stands, recordings, side, wording, widthMm, heightMm).drawing();
  }

  private void feetAndPaths(List<PersonPoint> places) {
    FootOutlines.of(stands.get(0)).forEach(places::addAll);
    for (int i = 0; i < stands.size(); i++) {
      paths(i).forEach(path -> places.addAll(path.corners()));
    }
  }

  private List<PathMarks> paths(int stand) {
    Stand of = stands.get(stand);
    return FootTracks.of(of, recordings.get(stand)).stream()
        .filter(track -> track.plate().copRightMm().isPresent())
        .map(track -> new PathMarks(of, track))
        .toList();
  }

  private Drawing drawing() {
    List<Part> parts = new ArrayList<>();
    String title = wording.word("PathDrawing.TITLE");
    PaperPoint base = new PaperPoint(0, Lettering.TITLE.ascentMm());
    String fitted = Fonts.fit(title, Lettering.TITLE, widthMm);
    parts.add(Part.background(List.of(new Text(base, fitted, Lettering.TITLE))));
    parts.add(Part.background(feet()));
    List<String> sentences = new ArrayList<>(List.of(title + "."));
    for (int i = 0; i < stands.size(); i++) {
      for (PathMarks path : paths(i)) {
        String says = says(i, path.track());
        sentences.add(says);
        parts.add(Part.saying(says, path.at(scale)));
      }
    }
    parts.add(Part.background(closeUp()));
    parts.add(Part.background(Ruler.directions("PathDrawing", wording, room, DIRECTIONS_MM)));
    parts.add(Part.background(key()));
    String name = "path-" + side.lastPart().toLowerCase(Locale.ROOT);
    return new Drawing(name, widthMm, heightMm, String.join(" ", sentences), parts);
  }

  private List<Mark> closeUp() {
    Box frame = new Box(room.rightMm() + GAP_MM, TITLE_MM + 0.5, widthMm - 0.2, room.bottomMm());
    List<PathMarks> paths = new ArrayList<>();
    for (int i = 0; i < stands.size(); i++) {
      Stand of = stands.get(i);
      paths.add(new PathMarks(of, FootTracks.of(of, recordings.get(i), side)));
    }
    return new PathCloseUp(paths, frame).marks(wording, DIRECTIONS_MM);
  }

  private List<Mark> feet() {
    List<Mark> marks = new ArrayList<>();
    for (List<PersonPoint> foot : FootOutlines.of(stands.get(0))) {
      List<PaperPoint> outline = foot.stream().map(scale::spot).toList();
      marks.add(new Fill(outline, Ink.MIST));
      marks.add(Shapes.closed(outline, Pen.BODY));
    }
    return marks;
  }

  private String says(int stand, Track track) {
    String line = wording.word(track.of());
    String name =
        stands.size() == 1
            ? line
            : wording.fill("PathDrawing.STAND", Argument.count(stand + 1), Argument.text(line));
    return stands.get(stand).standing().sway().stream()
        .filter(s -> s.of() == track.of())
        .findFirst()
        .flatMap(sway -> sway.both().map(both -> says(name, sway.sdAnteriorMm(), both)))
        .orElse(name);
  }

  private String says(String name, double sdAnteriorMm, Sway.BothDirections sway) {
    return wording.fill(
        "PathDrawing.SAYS",
        Argument.text(name),
        Argument.of(sway.sdRightMm(), Unit.MM),
        Argument.of(sdAnteriorMm, Unit.MM),
        Argument.of(sway.ellipseMm2(), Unit.MM2));
  }

  private List<Mark> key() {
    Legend key = new Legend(0, heightMm - Legend.heightMm(KEY_ENTRIES), widthMm);
    key.line(Pen.TRACE, wording.word("PathDrawing.PATH"));
    key.mean(wording.word(stands.size() > 1 ? "PathDrawing.MEANS" : "PathDrawing.MEAN"));
    key.line(Pen.ELLIPSE, wording.word("PathDrawing.ELLIPSE"));
    double bar = Ruler.barMm(scale);
    key.scaleBar(bar / scale.oneTo(), LegSentences.scale(scale, bar, wording));
    return key.marks();
  }
}
