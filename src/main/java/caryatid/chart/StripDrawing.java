package caryatid.chart;

import caryatid.alignment.AlignmentState;
import caryatid.alignment.EarlierState;
import caryatid.chart.StripLayout.Stack;
import caryatid.chart.StripLayout.StripRow;
import caryatid.chart.leg.Leg;
import caryatid.chart.leg.LegView;
import caryatid.chart.leg.Strip;
import caryatid.chart.leg.StripPlan;
import caryatid.chart.leg.StripWindow;
import caryatid.chart.mark.Drawing;
import caryatid.chart.mark.Drawing.Part;
import caryatid.chart.mark.Mark;
import caryatid.chart.mark.Mark.Fill;
import caryatid.chart.mark.Style.Ink;
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

/**
 * Plans the main picture of one leg in one plane: a strip for each target at true size, stacked by
 * height, with the load line as one vertical through all of them.
 */
public final class StripDrawing {
  private final Leg leg;
  private final Wording wording;
  private final double widthMm;
  private final LandmarkWords landmarks;
  private final StripWords words;
  private final StripLayout layout;
  private final StripMarks marks;

  private StripDrawing(
      AlignmentState state,
      Optional<EarlierState> before,
      LegView view,
      Wording wording,
      double widthMm) {
    this.leg = Leg.of(state, before, view);
    this.wording = wording;
    this.widthMm = widthMm;
    this.landmarks = new LandmarkWords(wording, state.trial());
    this.words = new StripWords(leg, landmarks, wording, widthMm - StripLayout.HEAD_MM);
    this.layout = new StripLayout(leg, words, widthMm);
    this.marks = new StripMarks(leg, words, layout.window(), wording, widthMm);
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
      Optional<EarlierState> before,
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
      AlignmentState state, Optional<EarlierState> before, LegView view, double widthMm) {
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
    parts.add(Part.background(marks.title()));
    parts.add(Part.background(marks.sketch(stack)));
    List<StripPlan> plans = stack.rows().stream().map(StripRow::plan).toList();
    List<List<Mark>> charts = plans.stream().map(marks::chart).toList();
    parts.add(
        Part.background(
            charts.stream().flatMap(List::stream).filter(StripDrawing::isInterval).toList()));
    leg.line()
        .ifPresent(
            line ->
                parts.add(
                    Part.saying(LegSentences.line(line, wording), marks.vertical(line, plans))));
    for (int i = 0; i < plans.size(); i++) {
      List<Mark> strip =
          charts.get(i).stream()
              .filter(mark -> !isInterval(mark))
              .collect(Collectors.toCollection(ArrayList::new));
      strip.addAll(marks.around(stack.rows().get(i)));
      parts.add(Part.saying(says(plans.get(i).strip()), marks.onWhite(strip)));
    }
    return parts;
  }

  private static boolean isInterval(Mark mark) {
    return mark instanceof Fill fill && fill.ink() == Ink.PALE_BLUE;
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
