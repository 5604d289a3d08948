package caryatid.chart;

import caryatid.alignment.Stand;
import caryatid.chart.Drawing.Part;
import caryatid.chart.Mark.Fill;
import caryatid.chart.Mark.Stroke;
import caryatid.chart.Mark.Text;
import caryatid.chart.Scale.Place;
import caryatid.chart.Style.Ink;
import caryatid.chart.Style.Lettering;
import caryatid.chart.Style.Pen;
import caryatid.chart.Tracks.Track;
import caryatid.recording.Recording;
import caryatid.remark.Argument;
import caryatid.remark.Unit;
import caryatid.standing.QuietStretch;
import caryatid.standing.Sway;
import caryatid.wording.Wording;
import java.util.ArrayList;
import java.util.List;

/** Plans the path of the centre of pressure seen from above, with the feet where they are known. */
public final class PathDrawing {
  private static final double TITLE_MM = 6;
  private static final double DIRECTIONS_MM = 4.2;
  private static final int KEY_ENTRIES = 4;

  /** Points closer on paper than a tenth of a pen's width add nothing. */
  private static final double LEAST_STEP_MM = 0.03;

  private final Stand stand;
  private final Wording wording;
  private final double widthMm;
  private final double heightMm;
  private final Box room;
  private final List<Track> tracks;
  private final Scale scale;

  private PathDrawing(
      Stand stand, Recording recording, Wording wording, double widthMm, double heightMm) {
    this.stand = stand;
    this.wording = wording;
    this.widthMm = widthMm;
    this.heightMm = heightMm;
    double floor = heightMm - Key.heightMm(KEY_ENTRIES) - DIRECTIONS_MM;
    this.room = new Box(0, TITLE_MM, widthMm, floor);
    this.tracks = Tracks.of(stand, recording);
    this.scale = Scale.centred(places(), room);
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
    return new PathDrawing(stand, recording, wording, widthMm, heightMm).drawing();
  }

  private List<Place> places() {
    List<Place> places = new ArrayList<>();
    Feet.of(stand).forEach(places::addAll);
    for (Track track : tracks) {
      QuietStretch stretch = stand.standing().stretch();
      for (int i = stretch.fromIndex(); i < stretch.toIndex(); i++) {
        if (track.plate().usable().at(i)) {
          places.add(place(track, i));
        }
      }
    }
    ellipses().forEach(places::addAll);
    return places;
  }

  private static Place place(Track track, int index) {
    return new Place(track.plate().copRightMm().at(index), track.plate().copAnteriorMm().at(index));
  }

  private List<List<Place>> ellipses() {
    return tracks.stream().flatMap(t -> Ellipse.of(stand.standing(), t.of()).stream()).toList();
  }

  private Drawing drawing() {
    List<Part> parts = new ArrayList<>();
    String title = wording.word("PathDrawing.TITLE");
    Spot base = new Spot(0, Lettering.TITLE.ascentMm());
    parts.add(
        Part.background(
            List.of(
                new Text(base, Letters.fit(title, Lettering.TITLE, widthMm), Lettering.TITLE))));
    parts.add(Part.background(feet()));
    tracks.forEach(track -> parts.add(Part.saying(says(track), path(track))));
    parts.add(Part.background(outlines()));
    parts.add(Part.background(Ruler.directions("PathDrawing", wording, room, DIRECTIONS_MM)));
    parts.add(Part.background(key()));
    List<String> sentences = new ArrayList<>(List.of(title + "."));
    tracks.forEach(track -> sentences.add(says(track)));
    return new Drawing("path", widthMm, heightMm, String.join(" ", sentences), parts);
  }

  private List<Mark> feet() {
    List<Mark> marks = new ArrayList<>();
    for (List<Place> foot : Feet.of(stand)) {
      List<Spot> outline = foot.stream().map(scale::spot).toList();
      marks.add(new Fill(outline, Ink.MIST));
      marks.add(Shapes.closed(outline, Pen.BODY));
    }
    return marks;
  }

  private List<Mark> path(Track track) {
    List<Spot> path = new ArrayList<>();
    QuietStretch stretch = stand.standing().stretch();
    for (int i = stretch.fromIndex(); i < stretch.toIndex(); i++) {
      if (track.plate().usable().at(i)) {
        Spot spot = scale.spot(place(track, i));
        if (path.isEmpty() || spot.distanceMm(path.get(path.size() - 1)) > LEAST_STEP_MM) {
          path.add(spot);
        }
      }
    }
    return path.size() < 2 ? List.of() : List.of(new Stroke(path, Pen.TRACE));
  }

  private List<Mark> outlines() {
    List<Mark> marks = new ArrayList<>();
    ellipses()
        .forEach(e -> marks.add(Shapes.closed(e.stream().map(scale::spot).toList(), Pen.ELLIPSE)));
    stand.standing().loads().stream()
        .filter(load -> tracks.stream().anyMatch(track -> track.of() == load.of()))
        .forEach(
            load ->
                marks.addAll(
                    Symbols.mean(
                        scale.spot(load.copRightMm().value(), load.copAnteriorMm().value()))));
    return marks;
  }

  private String says(Track track) {
    String name = wording.word(track.of());
    return stand.standing().sway().stream()
        .filter(s -> s.of() == track.of())
        .findFirst()
        .map(sway -> says(name, sway))
        .orElse(name);
  }

  private String says(String name, Sway sway) {
    return wording.fill(
        "PathDrawing.SAYS",
        Argument.text(name),
        Argument.of(sway.sdRightMm(), Unit.MM),
        Argument.of(sway.sdAnteriorMm(), Unit.MM),
        Argument.of(sway.ellipseMm2(), Unit.MM2));
  }

  private List<Mark> key() {
    Key key = new Key(0, heightMm - Key.heightMm(KEY_ENTRIES), widthMm);
    key.line(Pen.TRACE, wording.word("PathDrawing.PATH"));
    key.mean(wording.word("PathDrawing.MEAN"));
    key.line(Pen.ELLIPSE, wording.word("PathDrawing.ELLIPSE"));
    double bar = Ruler.barMm(scale);
    key.scaleBar(bar / scale.oneTo(), Sentences.scale(scale, bar, wording));
    return key.marks();
  }
}
