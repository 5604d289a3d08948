package caryatid.chart;

import caryatid.alignment.AlignmentState;
import caryatid.chart.StripLayout.Stack;
import caryatid.chart.StripLayout.StripRow;
import caryatid.chart.leg.Leg;
import caryatid.chart.leg.LegView;
import caryatid.chart.leg.LoadLine;
import caryatid.chart.leg.Strip;
import caryatid.chart.leg.StripPlan;
import caryatid.chart.leg.StripWindow;
import caryatid.chart.mark.Box;
import caryatid.chart.mark.Drawing;
import caryatid.chart.mark.Drawing.Part;
import caryatid.chart.mark.Fonts;
import caryatid.chart.mark.Mark;
import caryatid.chart.mark.Mark.Fill;
import caryatid.chart.mark.Mark.Stroke;
import caryatid.chart.mark.Mark.Text;
import caryatid.chart.mark.PaperPoint;
import caryatid.chart.mark.Shapes;
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
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Plans the main picture of one leg in one plane: a strip for each target at true size, stacked by
 * height, with the load line as one vertical through all of them.
 */
public final class StripDrawing {
  private static final double SKETCH_MM = 15;

  private final Leg leg;
  private final Wording wording;
  private final double widthMm;
  private final LandmarkWords landmarks;
  private final StripWords words;
  private final StripLayout layout;

  private StripDrawing(
      AlignmentState state,
      Optional<AlignmentState> before,
      LegView view,
      Wording wording,
      double widthMm) {
    this.leg = Leg.of(state, before, view);
    this.wording = wording;
    this.widthMm = widthMm;
    this.landmarks = new LandmarkWords(wording, state.stands().get(0).trial().level());
    this.words = new StripWords(leg, landmarks, wording, widthMm - StripLayout.HEAD_MM);
    this.layout = new StripLayout(leg, words, widthMm);
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
    return new StripDrawing(state, before, new LegView(plane, side), wording, widthMm)
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
      AlignmentState state, Optional<AlignmentState> before, LegView view, double widthMm) {
    StripDrawing drawing =
        new StripDrawing(state, before, view, Wording.in(Locale.ENGLISH), widthMm);
    StripWindow window = drawing.layout.window();
    Set<Symbol> symbols = EnumSet.noneOf(Symbol.class);
    drawing.leg.line().ifPresent(line -> symbols.add(Symbol.LINE));
    for (Strip strip : drawing.layout.strips()) {
      strip.target().ifPresent(target -> symbols.add(Symbol.TARGET));
      strip.beforeMm().ifPresent(mm -> symbols.add(Symbol.BEFORE));
      if (strip.placesMm().stream()
          .anyMatch(mm -> window.isBeforeBreak(mm) || window.isAfterBreak(mm))) {
        symbols.add(Symbol.BREAK);
      }
    }
    return symbols;
  }

  /** The least height that holds all strips of a plane, mm. */
  public static double leastMm(
      AlignmentState state, Plane plane, Side side, Wording wording, double widthMm) {
    return new StripDrawing(state, Optional.empty(), new LegView(plane, side), wording, widthMm)
        .layout.leastMm();
  }

  /** The height at which all strips of a plane have room enough, mm. */
  public static double mostMm(
      AlignmentState state, Plane plane, Side side, Wording wording, double widthMm) {
    return new StripDrawing(state, Optional.empty(), new LegView(plane, side), wording, widthMm)
        .layout.mostMm();
  }

  private Drawing drawing(double heightMm) {
    String name =
        (leg.view().plane().lastPart() + "-" + leg.view().side().lastPart())
            .toLowerCase(Locale.ROOT);
    return new Drawing(name, widthMm, heightMm, alternative(), parts(layout.stack(heightMm)));
  }

  private List<Part> parts(Stack stack) {
    List<Part> parts = new ArrayList<>();
    parts.add(Part.background(title()));
    parts.add(Part.background(sketch(stack)));
    List<StripPlan> plans = stack.rows().stream().map(StripRow::plan).toList();
    List<List<Mark>> charts = plans.stream().map(this::chart).toList();
    parts.add(
        Part.background(
            charts.stream().flatMap(List::stream).filter(StripDrawing::isInterval).toList()));
    leg.line()
        .ifPresent(
            line ->
                parts.add(Part.saying(LegSentences.line(line, wording), vertical(line, plans))));
    for (int i = 0; i < plans.size(); i++) {
      List<Mark> marks =
          charts.get(i).stream()
              .filter(mark -> !isInterval(mark))
              .collect(Collectors.toCollection(ArrayList::new));
      marks.addAll(around(stack.rows().get(i)));
      parts.add(Part.saying(says(plans.get(i).strip()), onWhite(marks)));
    }
    return parts;
  }

  private List<Mark> sketch(Stack stack) {
    Box room = new Box(0.5, StripLayout.TITLE_MM, SKETCH_MM, stack.bottomMm() - 2);
    List<Double> middles =
        stack.rows().stream().map(row -> row.topMm() + 0.55 * Lettering.STRONG.lineMm()).toList();
    return new LegSketch(leg, room).marks(middles, StripLayout.HEAD_MM - 1);
  }

  /** What stands around a strip's chart: another load line, the head, the words at the ends. */
  private List<Mark> around(StripRow row) {
    return Stream.of(other(row.plan()), head(row.head(), row.topMm()), ends(row.plan()))
        .flatMap(List::stream)
        .toList();
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
    StripWindow window = layout.window();
    Box room = new Box(window.leftMm(), first.topMm(), window.rightMm(), last.bottomMm() + 1.6);
    StripChart.drawLine(window.shownMm(line.acrossMm()), window, room, canvas);
    return canvas.marks();
  }

  /** Another load line than the leg's, which a target may be meant for. */
  private List<Mark> other(StripPlan plan) {
    if (!words.isOther(plan.strip())) {
      return List.of();
    }
    double x = layout.window().xMm(plan.strip().lineMm().orElseThrow());
    return List.of(
        Stroke.of(
            Pen.OTHER_LINE,
            new PaperPoint(x, plan.room().topMm()),
            new PaperPoint(x, plan.room().bottomMm() + 1.6)));
  }

  private List<Mark> title() {
    PaperPoint base = new PaperPoint(0, Lettering.TITLE.ascentMm());
    String title = Fonts.fit(wording.word(leg.view().key("TITLE")), Lettering.TITLE, widthMm);
    return List.of(new Text(base, title, Lettering.TITLE));
  }

  private List<Mark> head(List<StripWords.HeadLine> lines, double topMm) {
    List<Mark> marks = new ArrayList<>();
    double base = topMm + Lettering.PLAIN.ascentMm();
    for (StripWords.HeadLine line : lines) {
      double left = StripLayout.HEAD_MM;
      if (!line.name().isEmpty()) {
        marks.add(new Text(new PaperPoint(left, base), line.name(), Lettering.STRONG));
        left += Fonts.widthMm(line.name(), Lettering.STRONG);
      }
      if (!line.after().isEmpty()) {
        marks.add(new Text(new PaperPoint(left, base), line.after(), Lettering.PLAIN));
      }
      if (!line.result().isEmpty()) {
        double width = Fonts.widthMm(line.result(), line.lettering());
        marks.add(new Text(new PaperPoint(widthMm - width, base), line.result(), line.lettering()));
      }
      base += Lettering.PLAIN.lineMm();
    }
    return marks;
  }

  /** What lies to the left and right, at the axis's ends. */
  private List<Mark> ends(StripPlan plan) {
    double base = plan.room().bottomMm() + 0.4;
    double room = StripLayout.ENDS_MM - 1.5;
    String left = Fonts.fit(words.end(false), Lettering.PLAIN, room);
    String right = Fonts.fit(words.end(true), Lettering.PLAIN, room);
    double width = Fonts.widthMm(left, Lettering.PLAIN);
    return List.of(
        new Text(new PaperPoint(plan.room().leftMm() - 1.2 - width, base), left, Lettering.PLAIN),
        new Text(new PaperPoint(plan.room().rightMm() + 1.2, base), right, Lettering.PLAIN));
  }

  /** Words that the load line would cross get a white ground. */
  private List<Mark> onWhite(List<Mark> marks) {
    if (leg.line().isEmpty()) {
      return marks;
    }
    double x = layout.window().xMm(leg.line().get().acrossMm());
    List<Mark> on = new ArrayList<>();
    for (Mark mark : marks) {
      if (mark instanceof Text text) {
        Box box = text.box();
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
    return LegSentences.strip(strip, landmarks, leg.view().plane(), wording);
  }

  private String alternative() {
    List<String> sentences = new ArrayList<>();
    sentences.add(wording.word(leg.view().key("TITLE")) + ".");
    leg.line().ifPresent(line -> sentences.add(LegSentences.line(line, wording)));
    layout.strips().forEach(strip -> sentences.add(says(strip)));
    return String.join(" ", sentences);
  }
}
