package caryatid.chart;

import caryatid.alignment.AlignmentState;
import caryatid.chart.leg.Leg;
import caryatid.chart.leg.LoadLine;
import caryatid.chart.leg.Strip;
import caryatid.chart.leg.StripPlan;
import caryatid.chart.leg.View;
import caryatid.chart.leg.Window;
import caryatid.chart.mark.Box;
import caryatid.chart.mark.Drawing;
import caryatid.chart.mark.Drawing.Part;
import caryatid.chart.mark.Letters;
import caryatid.chart.mark.Mark;
import caryatid.chart.mark.Mark.Fill;
import caryatid.chart.mark.Mark.Stroke;
import caryatid.chart.mark.Mark.Text;
import caryatid.chart.mark.Shapes;
import caryatid.chart.mark.Spot;
import caryatid.chart.mark.Style.Ink;
import caryatid.chart.mark.Style.Lettering;
import caryatid.chart.mark.Style.Pen;
import caryatid.chart.paint.MarkCanvas;
import caryatid.chart.paint.StripChart;
import caryatid.geometry.Plane;
import caryatid.geometry.Side;
import caryatid.wording.LandmarkWords;
import caryatid.wording.Wording;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Plans the main picture of one leg in one plane: a strip for each target at true size, stacked by
 * height, with the load line as one vertical through all of them.
 */
public final class StripDrawing {
  private static final double TITLE_MM = 4.6;
  private static final double SKETCH_MM = 15;
  private static final double HEAD_MM = 19;
  private static final double ENDS_MM = 13.5;
  private static final double ROUNDING_MM = 1e-6;
  private static final double LEAST_ZONE_MM = 3;
  private static final double MOST_ZONE_MM = 11;
  private static final double LEAST_GAP_MM = 0.6;
  private static final double MOST_GAP_MM = 7;

  /** The zone's share of what a strip may gain in height; the gap gets the rest. */
  private static final double ZONE_SHARE =
      (MOST_ZONE_MM - LEAST_ZONE_MM) / (MOST_ZONE_MM - LEAST_ZONE_MM + MOST_GAP_MM - LEAST_GAP_MM);

  private final Leg leg;
  private final Wording wording;
  private final double widthMm;
  private final LandmarkWords landmarks;
  private final StripWords words;
  private final List<Strip> strips;

  /** What is said of each strip in full, and in one line. */
  private final List<List<StripWords.Line>> full;

  private final List<List<StripWords.Line>> brief;
  private final Window window;

  private StripDrawing(
      AlignmentState state,
      Optional<AlignmentState> before,
      View view,
      Wording wording,
      double widthMm) {
    this.leg = Leg.of(state, before, view);
    this.wording = wording;
    this.widthMm = widthMm;
    this.landmarks = new LandmarkWords(wording, state.stands().get(0).trial().level());
    this.words = new StripWords(leg, landmarks, wording, widthMm - HEAD_MM);
    this.strips = Strip.of(leg);
    this.full = strips.stream().map(words::lines).toList();
    this.brief = strips.stream().map(words::brief).toList();
    double left = HEAD_MM + ENDS_MM;
    List<Double> places = strips.stream().flatMap(s -> s.placesMm().stream()).toList();
    double line = leg.line().map(LoadLine::acrossMm).orElse(places.isEmpty() ? 0 : places.get(0));
    this.window = Window.of(places, line, left, widthMm - left - ENDS_MM);
  }

  /** Whether a landmark of a side was marked in a plane, so that there is something to draw. */
  public static boolean isDrawn(AlignmentState state, Plane plane, Side side) {
    return state.stands().get(0).landmarks().stream()
        .anyMatch(l -> l.side() == side && l.in(plane).isPresent());
  }

  /**
   * Plans a drawing.
   *
   * @param state what was found
   * @param before the state before, whose offsets are marked
   * @param plane the plane, in which at least one landmark of the side was marked
   * @param side the leg
   * @param widthMm width on paper, at least 150 mm
   * @param heightMm height on paper; at least {@link #leastMm}, more than {@link #mostMm} is left
   *     free
   */
  public static Drawing plan(
      AlignmentState state,
      Optional<AlignmentState> before,
      Plane plane,
      Side side,
      Wording wording,
      double widthMm,
      double heightMm) {
    return new StripDrawing(state, before, new View(plane, side), wording, widthMm)
        .drawing(heightMm);
  }

  /** What of the key's symbols a drawing shows. */
  enum Symbol {
    LINE,
    TARGET,
    BEFORE,
    BREAK
  }

  static Set<Symbol> symbols(
      AlignmentState state, Optional<AlignmentState> before, View view, double widthMm) {
    StripDrawing drawing =
        new StripDrawing(state, before, view, Wording.in(Locale.ENGLISH), widthMm);
    Set<Symbol> symbols = EnumSet.noneOf(Symbol.class);
    drawing.leg.line().ifPresent(line -> symbols.add(Symbol.LINE));
    for (Strip strip : drawing.strips) {
      strip.target().ifPresent(target -> symbols.add(Symbol.TARGET));
      strip.beforeMm().ifPresent(mm -> symbols.add(Symbol.BEFORE));
      if (strip.placesMm().stream()
          .anyMatch(mm -> drawing.window.isBeforeBreak(mm) || drawing.window.isAfterBreak(mm))) {
        symbols.add(Symbol.BREAK);
      }
    }
    return symbols;
  }

  /** The least height that holds all strips of a plane, mm. */
  public static double leastMm(
      AlignmentState state, Plane plane, Side side, Wording wording, double widthMm) {
    return new StripDrawing(state, Optional.empty(), new View(plane, side), wording, widthMm)
        .leastMm();
  }

  /** The height at which all strips of a plane have room enough, mm. */
  public static double mostMm(
      AlignmentState state, Plane plane, Side side, Wording wording, double widthMm) {
    return new StripDrawing(state, Optional.empty(), new View(plane, side), wording, widthMm)
        .mostMm();
  }

  private double leastMm() {
    return heightMm(brief, LEAST_ZONE_MM, LEAST_GAP_MM);
  }

  private double mostMm() {
    return heightMm(full, MOST_ZONE_MM, MOST_GAP_MM);
  }

  private double heightMm(List<List<StripWords.Line>> heads, double zoneMm, double gapMm) {
    double words = heads.stream().mapToDouble(StripDrawing::headMm).sum();
    return TITLE_MM + words + strips.size() * (zoneMm + gapMm + StripChart.AXIS_MM);
  }

  private static double headMm(List<StripWords.Line> lines) {
    return lines.size() * Lettering.PLAIN.lineMm() + 0.4;
  }

  private Drawing drawing(double heightMm) {
    List<List<StripWords.Line>> heads =
        heightMm + ROUNDING_MM >= heightMm(full, LEAST_ZONE_MM, LEAST_GAP_MM) ? full : brief;
    double least = heightMm(heads, LEAST_ZONE_MM, LEAST_GAP_MM);
    double more = (heightMm - least) / Math.max(1, strips.size());
    double zone = Math.min(MOST_ZONE_MM, LEAST_ZONE_MM + ZONE_SHARE * Math.max(0, more));
    double gap = Math.min(MOST_GAP_MM, LEAST_GAP_MM + (1 - ZONE_SHARE) * Math.max(0, more));
    List<Double> tops = new ArrayList<>();
    List<StripPlan> plans = new ArrayList<>();
    double down = TITLE_MM;
    for (int i = 0; i < strips.size(); i++) {
      tops.add(down + gap / 2);
      double top = down + gap / 2 + headMm(heads.get(i));
      Box room = new Box(window.leftMm(), top, window.rightMm(), top + zone);
      plans.add(StripPlan.of(strips.get(i), window, room));
      down = top + zone + StripChart.AXIS_MM + gap / 2;
    }
    String name =
        (leg.view().plane().name() + "-" + leg.view().side().name()).toLowerCase(Locale.ROOT);
    return new Drawing(name, widthMm, heightMm, alternative(), parts(heads, tops, plans, down));
  }

  private List<Part> parts(
      List<List<StripWords.Line>> heads, List<Double> tops, List<StripPlan> plans, double downMm) {
    List<Part> parts = new ArrayList<>();
    parts.add(Part.background(title()));
    parts.add(
        Part.background(
            new LegSketch(leg, new Box(0.5, TITLE_MM, SKETCH_MM, downMm - 2))
                .marks(middles(tops), HEAD_MM - 1)));
    List<List<Mark>> charts = plans.stream().map(this::chart).toList();
    parts.add(
        Part.background(
            charts.stream().flatMap(List::stream).filter(StripDrawing::isInterval).toList()));
    OptionalDouble line = OptionalDouble.empty();
    if (leg.line().isPresent()) {
      LoadLine of = leg.line().get();
      line = OptionalDouble.of(window.xMm(of.acrossMm()));
      parts.add(Part.saying(Sentences.line(of, wording), vertical(of, plans)));
    }
    for (int i = 0; i < strips.size(); i++) {
      List<Mark> marks = new ArrayList<>();
      Stream.of(
              charts.get(i).stream().filter(mark -> !isInterval(mark)),
              other(strips.get(i), plans.get(i)).stream(),
              head(heads.get(i), tops.get(i)).stream(),
              ends(plans.get(i)).stream())
          .flatMap(marksOf -> marksOf)
          .forEach(marks::add);
      parts.add(Part.saying(says(strips.get(i)), onWhite(marks, line)));
    }
    return parts;
  }

  private static List<Double> middles(List<Double> tops) {
    return tops.stream().map(top -> top + 0.55 * Lettering.STRONG.lineMm()).toList();
  }

  private static boolean isInterval(Mark mark) {
    return mark instanceof Fill fill && fill.ink() == Ink.PALE_BLUE;
  }

  private List<Mark> chart(StripPlan plan) {
    MarkCanvas canvas = new MarkCanvas();
    StripChart.draw(plan, wording, canvas);
    return canvas.marks();
  }

  private List<Mark> vertical(LoadLine line, List<StripPlan> plans) {
    Box first = plans.get(0).room();
    Box last = plans.get(plans.size() - 1).room();
    MarkCanvas canvas = new MarkCanvas();
    Box room = new Box(window.leftMm(), first.topMm(), window.rightMm(), last.bottomMm() + 1.6);
    StripChart.drawLine(window.shownMm(line.acrossMm()), window, room, canvas);
    return canvas.marks();
  }

  /** Another load line than the leg's, which a target may be meant for. */
  private List<Mark> other(Strip strip, StripPlan plan) {
    if (!words.isOther(strip)) {
      return List.of();
    }
    double x = window.xMm(strip.lineMm().orElseThrow());
    return List.of(
        Stroke.of(
            Pen.OTHER_LINE,
            new Spot(x, plan.room().topMm()),
            new Spot(x, plan.room().bottomMm() + 1.6)));
  }

  private List<Mark> title() {
    Spot base = new Spot(0, Lettering.TITLE.ascentMm());
    String title = Letters.fit(wording.word(leg.view().key("TITLE")), Lettering.TITLE, widthMm);
    return List.of(new Text(base, title, Lettering.TITLE));
  }

  private List<Mark> head(List<StripWords.Line> lines, double topMm) {
    List<Mark> marks = new ArrayList<>();
    double base = topMm + Lettering.PLAIN.ascentMm();
    for (StripWords.Line line : lines) {
      double left = HEAD_MM;
      if (!line.name().isEmpty()) {
        marks.add(new Text(new Spot(left, base), line.name(), Lettering.STRONG));
        left += Letters.widthMm(line.name(), Lettering.STRONG);
      }
      if (!line.after().isEmpty()) {
        marks.add(new Text(new Spot(left, base), line.after(), Lettering.PLAIN));
      }
      if (!line.result().isEmpty()) {
        double width = Letters.widthMm(line.result(), line.lettering());
        marks.add(new Text(new Spot(widthMm - width, base), line.result(), line.lettering()));
      }
      base += Lettering.PLAIN.lineMm();
    }
    return marks;
  }

  /** What lies to the left and right, at the axis's ends. */
  private List<Mark> ends(StripPlan plan) {
    double base = plan.room().bottomMm() + 0.4;
    double room = ENDS_MM - 1.5;
    String left = Letters.fit(words.end(false), Lettering.PLAIN, room);
    String right = Letters.fit(words.end(true), Lettering.PLAIN, room);
    double width = Letters.widthMm(left, Lettering.PLAIN);
    return List.of(
        new Text(new Spot(window.leftMm() - 1.2 - width, base), left, Lettering.PLAIN),
        new Text(new Spot(window.rightMm() + 1.2, base), right, Lettering.PLAIN));
  }

  /** Words that the load line would cross get a white ground. */
  private static List<Mark> onWhite(List<Mark> marks, OptionalDouble lineMm) {
    List<Mark> on = new ArrayList<>();
    for (Mark mark : marks) {
      if (mark instanceof Text text && lineMm.isPresent()) {
        Box box = text.box();
        double x = lineMm.getAsDouble();
        if (x > box.leftMm() - 0.5 && x < box.rightMm() + 0.5) {
          Box ground =
              new Box(box.leftMm(), box.topMm() - 0.1, box.rightMm(), box.bottomMm() + 0.1);
          on.add(new Fill(Shapes.corners(ground), Ink.WHITE));
        }
      }
      on.add(mark);
    }
    return on;
  }

  private String says(Strip strip) {
    return Sentences.strip(strip, landmarks, leg.view().plane(), wording);
  }

  private String alternative() {
    List<String> sentences = new ArrayList<>();
    sentences.add(wording.word(leg.view().key("TITLE")) + ".");
    leg.line().ifPresent(line -> sentences.add(Sentences.line(line, wording)));
    strips.forEach(strip -> sentences.add(says(strip)));
    return String.join(" ", sentences);
  }
}
