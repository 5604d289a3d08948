package caryatid.chart;

import caryatid.alignment.AlignmentState;
import caryatid.chart.Drawing.Part;
import caryatid.chart.Leg.Level;
import caryatid.chart.Mark.Stroke;
import caryatid.chart.Mark.Text;
import caryatid.chart.Scale.Place;
import caryatid.chart.Style.Lettering;
import caryatid.chart.Style.Pen;
import caryatid.geometry.Plane;
import caryatid.geometry.Side;
import caryatid.wording.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** Plans the drawing of one leg in one plane, true to scale, with its load line and targets. */
public final class LegDrawing {
  private static final double TICKS_MM = 8;
  private static final double TITLE_MM = 5;
  private static final double DIRECTIONS_MM = 4.2;

  /** How far up lines run, as a factor of what is below them. */
  private static final double LINE_ABOVE = 1.06;

  /** How much of the width a leg may take at most. */
  private static final double MOST_ACROSS = 0.54;

  /** So much of the width keeps the words below the floor whole; the labels get the rest. */
  private static final double LEAST_ACROSS_MM = 36;

  private final Leg leg;
  private final Wording wording;
  private final double widthMm;
  private final double heightMm;
  private final Box room;
  private final Scale scale;
  private final double topMm;

  /**
   * @param other the same leg in the other plane: both are drawn at one scale
   */
  private LegDrawing(Leg leg, Leg other, Wording wording, double widthMm, double heightMm) {
    this.leg = leg;
    this.wording = wording;
    this.widthMm = widthMm;
    this.heightMm = heightMm;
    double floor = heightMm - Key.heightMm(LegKey.entries(leg)) - DIRECTIONS_MM;
    List<Place> places = Extent.of(leg);
    Box most = new Box(TICKS_MM, TITLE_MM + 2, TICKS_MM + MOST_ACROSS * widthMm, floor);
    double oneTo =
        Math.max(
            Scale.fitting(places, most).oneTo(), Scale.fitting(Extent.of(other), most).oneTo());
    double drawn = Extent.widthMm(places) / oneTo;
    double across = Math.min(most.widthMm(), Math.max(LEAST_ACROSS_MM, drawn));
    this.room = new Box(TICKS_MM, most.topMm(), TICKS_MM + across, floor);
    this.scale = Scale.fitting(places, room).with(oneTo, room);
    this.topMm = Math.min(room.heightMm() * oneTo, LINE_ABOVE * Extent.topMm(places));
  }

  /**
   * Plans a drawing.
   *
   * @param state what was found
   * @param before the state before, whose line is drawn beside
   * @param plane the plane
   * @param side the leg
   * @param widthMm width on paper, at least 70 mm
   * @param heightMm height on paper, at least 60 mm
   */
  public static Drawing plan(
      AlignmentState state,
      Optional<AlignmentState> before,
      Plane plane,
      Side side,
      Wording wording,
      double widthMm,
      double heightMm) {
    Leg leg = Leg.of(state, before, new View(plane, side));
    Leg other = Leg.of(state, before, new View(plane.other(), side));
    return new LegDrawing(leg, other, wording, widthMm, heightMm).drawing();
  }

  private Drawing drawing() {
    LegMarks marks = new LegMarks(leg, scale, topMm);
    List<Part> parts = new ArrayList<>();
    parts.add(Part.background(title()));
    parts.add(marks.body());
    parts.add(Part.background(heights()));
    leg.line().ifPresent(line -> parts.add(Part.background(marks.interval(line))));
    leg.line().ifPresent(line -> parts.addAll(lines(line, marks)));
    Box column = new Box(room.rightMm() + 4, TITLE_MM, widthMm, room.bottomMm());
    Labels labels = new Labels(leg, wording, column);
    leg.beforeMm()
        .ifPresent(
            mm ->
                parts.add(
                    Part.saying(wording.word("LegDrawing.BEFORE"), List.of(marks.before(mm)))));
    parts.addAll(levels(marks, labels));
    parts.add(Part.background(key(labels)));
    View view = leg.view();
    String name = (view.plane().name() + "-" + view.side().name()).toLowerCase(Locale.ROOT);
    return new Drawing(name, widthMm, heightMm, alternative(), parts);
  }

  private List<Mark> title() {
    Spot base = new Spot(0, Lettering.TITLE.ascentMm());
    String words = Letters.fit(wording.word(leg.view().key("TITLE")), Lettering.TITLE, widthMm);
    return List.of(new Text(base, words, Lettering.TITLE));
  }

  private List<Mark> heights() {
    List<Mark> marks = new ArrayList<>(Ruler.heights(scale, room, topMm));
    marks.add(
        Stroke.of(
            Pen.FLOOR,
            new Spot(room.leftMm(), room.bottomMm()),
            new Spot(room.rightMm(), room.bottomMm())));
    marks.addAll(Ruler.directions(leg.view(), wording, room, DIRECTIONS_MM));
    return marks;
  }

  private List<Part> lines(LoadLine line, LegMarks marks) {
    List<Part> parts = new ArrayList<>();
    List<Mark> vertical = new ArrayList<>(marks.stands(line));
    vertical.add(marks.vertical(line));
    line.leanPerUp()
        .ifPresent(
            lean ->
                parts.add(
                    Part.saying(
                        wording.word("LegDrawing.MEASURED_FORCE"),
                        List.of(marks.measuredForce(line, lean)))));
    parts.add(Part.saying(Sentences.line(line, wording), vertical));
    return parts;
  }

  private List<Part> levels(LegMarks marks, Labels column) {
    List<Spot> leaders = leg.levels().stream().map(this::leaderStart).toList();
    List<List<Mark>> labels = column.place(leaders);
    List<Part> parts = new ArrayList<>();
    for (int i = 0; i < leg.levels().size(); i++) {
      Level level = leg.levels().get(i);
      List<Mark> label = i < labels.size() ? labels.get(i) : List.of();
      parts.add(
          Part.saying(
              Sentences.level(level, leg.view().plane(), wording),
              Stream.concat(label.stream(), marks.level(level).stream()).toList()));
    }
    return parts;
  }

  private Spot leaderStart(Level level) {
    return scale.spot(Extent.rightmost(level, leg), level.heightMm());
  }

  private List<Mark> key(Labels labels) {
    Key key = new Key(0, heightMm - Key.heightMm(LegKey.entries(leg)), widthMm);
    return new LegKey(leg, scale, wording).marks(key, labels.closeUp());
  }

  private String alternative() {
    List<String> sentences = new ArrayList<>();
    sentences.add(wording.word(leg.view().key("TITLE")) + ".");
    leg.line().ifPresent(line -> sentences.add(Sentences.line(line, wording)));
    leg.levels()
        .forEach(level -> sentences.add(Sentences.level(level, leg.view().plane(), wording)));
    return String.join(" ", sentences);
  }
}
