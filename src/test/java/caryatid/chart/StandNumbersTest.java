package caryatid.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import caryatid.alignment.Stand;
import caryatid.chart.mark.Box;
import caryatid.chart.mark.Drawing;
import caryatid.chart.mark.Drawing.Part;
import caryatid.chart.mark.Mark.Stroke;
import caryatid.chart.mark.Mark.Text;
import caryatid.chart.mark.PaperPoint;
import caryatid.chart.mark.Scale;
import caryatid.chart.mark.Scale.PersonPoint;
import caryatid.chart.mark.Style.Pen;
import caryatid.demo.Demo;
import caryatid.demo.Numbered;
import caryatid.geometry.Side;
import caryatid.standing.LoadLineOwner;
import caryatid.standing.MeanLoad;
import caryatid.wording.Wording;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Where the drawings of a stand put ellipse, mean, curves and what was left out. */
class StandNumbersTest {
  private static final Wording ENGLISH = Wording.in(Locale.ENGLISH);

  /** Where the panels over time begin. */
  private static final double LEFT_MM = 11;

  /**
   * Validation: every point of the ellipse has the same Mahalanobis distance from the mean, r2 = A2
   * / (pi2 det S), and the ellipse of covariance S and that distance has the area A. The numbers
   * are the unfiltered sway's of {@link Numbered}.
   */
  @ParameterizedTest
  @CsvSource({
    "0, LEFT_FOOT, -91.3, 33.1, 8.1, 11.3, 11.2, 533",
    "0, WHOLE_BODY, 4.2, 40.4, 8.7, 11.9, 12.0, 567",
    "1, RIGHT_FOOT, 85.1, 50.2, 9.3, 12.5, 12.8, 601"
  })
  void theEllipseIsThatOfItsOwnSway(
      int stand,
      LoadLineOwner of,
      double right,
      double anterior,
      double sdRight,
      double sdAnterior,
      double covariance,
      double area) {
    Stand stood = Numbered.state().stands().get(stand);
    List<PersonPoint> outline = Ellipse.of(stood.standing(), of).orElseThrow();
    double determinant = sdRight * sdRight * sdAnterior * sdAnterior - covariance * covariance;
    double squared = area / (Math.PI * Math.sqrt(determinant));
    squared *= squared;
    for (PersonPoint place : outline) {
      double x = place.acrossMm() - right;
      double y = place.heightMm() - anterior;
      double distance =
          (x * x * sdAnterior * sdAnterior - 2 * x * y * covariance + y * y * sdRight * sdRight)
              / determinant;
      assertThat(distance * distance).isCloseTo(squared, within(1e-9 * squared));
    }
  }

  /** At one to one, where across 0 and anterior 0 are at the paper's corner. */
  @Test
  void theMeanIsWhereItsOwnLoadIs() {
    Stand stand = demo().get(0);
    FootTracks.Track track = FootTracks.of(stand, Demo.transtibial(Side.RIGHT).recording()).get(0);
    MeanLoad load = stand.standing().load(track.of()).orElseThrow();
    PathMarks marks = new PathMarks(stand, track);
    assertThat(marks.mean())
        .contains(
            new PersonPoint(load.copRightMm().orElseThrow().value(), load.copAnteriorMm().value()));
    assertThat(
            Ruled.strokes(
                Stream.of(Part.background(marks.at(new Scale(1, new PaperPoint(0, 0))))),
                Pen.TARGET))
        .hasSize(2)
        .extracting(Ruled::middle)
        .allSatisfy(
            at -> {
              assertThat(at.rightMm())
                  .isCloseTo(load.copRightMm().orElseThrow().value(), within(1e-9));
              assertThat(at.downMm()).isCloseTo(-load.copAnteriorMm().value(), within(1e-9));
            });
  }

  private static List<Stand> demo() {
    return Demo.transtibial(Side.RIGHT).state(0).stands();
  }

  private static Drawing over(double widthMm) {
    return TimeDrawing.plan(
        demo(),
        List.of(Demo.transtibial(Side.RIGHT).recording()),
        0,
        Side.RIGHT,
        ENGLISH,
        widthMm,
        70);
  }

  /** By the ticks below the last panel. */
  private static DoubleUnaryOperator time(Drawing drawing) {
    Part panel = drawing.parts().get(2);
    double[] ticks =
        ticks(panel, Ruled::isUpright).stream()
            .mapToDouble(s -> Ruled.first(s).rightMm())
            .toArray();
    double[] figures =
        texts(panel)
            .filter(text -> text.box().rightMm() > LEFT_MM)
            .filter(text -> text.words().matches("[0-9]+( s)?"))
            .mapToDouble(Ruled::number)
            .toArray();
    int last = figures.length - 1;
    return Ruled.through(ticks[0], figures[0], ticks[last], figures[last]);
  }

  private static List<Stroke> ticks(Part panel, Predicate<Stroke> direction) {
    return Ruled.strokes(Stream.of(panel), Pen.TICK).stream()
        .filter(direction)
        .filter(s -> Math.max(Ruled.box(s).widthMm(), Ruled.box(s).heightMm()) < 2)
        .toList();
  }

  private static Stream<Text> texts(Part panel) {
    return panel.marks().stream().filter(Text.class::isInstance).map(Text.class::cast);
  }

  /** The demo left out 0 to 1.5 s and 19.5 to 20 s, of which 19.99 s were recorded. */
  @Test
  void whatWasLeftOutIsHatchedOverItsOwnTime() {
    Drawing drawing = over(90);
    DoubleUnaryOperator at = time(drawing);
    for (int panel = 1; panel <= 2; panel++) {
      double[] hatched =
          Ruled.strokes(Stream.of(drawing.parts().get(panel)), Pen.LEFT_OUT).stream()
              .flatMap(s -> s.along().stream())
              .mapToDouble(s -> at.applyAsDouble(s.rightMm()))
              .sorted()
              .toArray();
      double[] early = java.util.Arrays.stream(hatched).filter(s -> s < 10).toArray();
      double[] late = java.util.Arrays.stream(hatched).filter(s -> s > 10).toArray();
      double ofFiguresWidths = 1e-6;
      assertThat(early[0]).isCloseTo(0, within(ofFiguresWidths));
      assertThat(early[early.length - 1]).isCloseTo(1.5, within(ofFiguresWidths));
      assertThat(late[0]).isCloseTo(19.5, within(ofFiguresWidths));
      assertThat(late[late.length - 1]).isCloseTo(19.99, within(ofFiguresWidths));
    }
  }

  /** By the ticks beside a panel. */
  private static DoubleUnaryOperator values(Drawing drawing, int panel) {
    Part part = drawing.parts().get(panel);
    double[] ticks =
        ticks(part, Ruled::isLevel).stream().mapToDouble(s -> Ruled.first(s).downMm()).toArray();
    double[] figures =
        texts(part)
            .filter(text -> text.box().rightMm() < LEFT_MM)
            .mapToDouble(Ruled::number)
            .toArray();
    int last = figures.length - 1;
    return Ruled.through(ticks[0], figures[0], ticks[last], figures[last]);
  }

  private static Box drawn(Drawing drawing, int panel, Pen pen) {
    return Ruled.strokes(Stream.of(drawing.parts().get(panel)), pen).stream()
        .filter(s -> s.along().size() > 2)
        .map(Ruled::box)
        .reduce(
            (a, b) ->
                new Box(
                    Math.min(a.leftMm(), b.leftMm()),
                    Math.min(a.topMm(), b.topMm()),
                    Math.max(a.rightMm(), b.rightMm()),
                    Math.max(a.bottomMm(), b.bottomMm())))
        .orElseThrow();
  }

  /**
   * The chart library keeps a line's places in single precision. The demo's force is 398 N and a
   * sine of 3 N; its centre of pressure goes about its mean with 4 or 7 mm times the sum of three
   * sines, here worked out once more.
   */
  @Test
  void everyCurveIsTrueToItsOwnScale() {
    Drawing drawing = over(90);
    Box force = drawn(drawing, 1, Pen.TRACE);
    assertThat(values(drawing, 1).applyAsDouble(force.topMm())).isCloseTo(401, within(0.01));
    DoubleUnaryOperator millimetres = values(drawing, 2);
    Box anterior = drawn(drawing, 2, Pen.TRACE);
    Box right = drawn(drawing, 2, Pen.SECOND_TRACE);
    double rounding = 1e-4;
    assertThat(millimetres.applyAsDouble(anterior.topMm()))
        .isCloseTo(most(7, 0.4), within(rounding));
    assertThat(millimetres.applyAsDouble(anterior.bottomMm()))
        .isCloseTo(-most(-7, 0.4), within(rounding));
    assertThat(millimetres.applyAsDouble(right.topMm())).isCloseTo(most(4, 1.3), within(rounding));
    assertThat(millimetres.applyAsDouble(right.bottomMm()))
        .isCloseTo(-most(-4, 1.3), within(rounding));
  }

  /** The largest value while the plate bears more than 40 N. */
  private static double most(double amplitude, double phase) {
    double most = 0;
    for (int i = 0; i < 2000; i++) {
      double t = i / 100.0;
      double upN = 398 * Math.min(1, Math.min(t / 1.2, (20 - t) / 0.4)) + 3 * Math.sin(5.1 * t);
      if (upN > 40) {
        double sines =
            Math.sin(0.9 * t + phase) + Math.sin(2.3 * t + 2 * phase) / 2 + Math.sin(7.7 * t) / 4;
        most = Math.max(most, amplitude * sines);
      }
    }
    return most;
  }

  @Test
  void thePathSaysItsOwnSway() {
    Demo demo = Demo.transtibial(Side.RIGHT);
    Drawing drawing =
        PathDrawing.plan(demo(), List.of(demo.recording()), Side.RIGHT, ENGLISH, 90, 60);
    assertThat(drawing.alternative().replace('\u00a0', ' '))
        .endsWith(
            "standard deviation 3.1 mm across and 5.2 mm fore and aft, 95 % ellipse 301 mm².");
  }

  /** In both pictures: the mean in the middle of the ellipse, the path as wide as its numbers. */
  @Test
  void thePathIsTrueToScale() {
    Demo demo = Demo.transtibial(Side.RIGHT);
    Drawing drawing =
        PathDrawing.plan(demo(), List.of(demo.recording()), Side.RIGHT, ENGLISH, 90, 60);
    List<Stroke> ellipses =
        Ruled.strokes(drawing, Pen.ELLIPSE).stream().filter(s -> s.along().size() > 40).toList();
    List<Stroke> paths =
        Ruled.strokes(drawing, Pen.TRACE).stream().filter(s -> s.along().size() > 2).toList();
    assertThat(ellipses).hasSize(2);
    assertThat(paths).hasSize(2);
    for (int i = 0; i < 2; i++) {
      Box ellipse = Ruled.box(ellipses.get(i));
      Box path = Ruled.box(paths.get(i));
      double determinant = 3.1 * 3.1 * 5.2 * 5.2 - 1.4 * 1.4;
      double radius = Math.sqrt(301.2 / (Math.PI * Math.sqrt(determinant)));
      double scale = 2 * radius * 3.1 / ellipse.widthMm();
      double leastStepOnPaper = 0.03 * scale;
      double wide = mostQuiet(4, 1.3) + mostQuiet(-4, 1.3);
      double high = mostQuiet(7, 0.4) + mostQuiet(-7, 0.4);
      assertThat(path.widthMm() * scale).isCloseTo(wide, within(2 * leastStepOnPaper));
      assertThat(path.heightMm() * scale).isCloseTo(high, within(2 * leastStepOnPaper));
    }
  }

  /** The same over what was used, samples 150 to 1949. */
  private static double mostQuiet(double amplitude, double phase) {
    double most = Double.NEGATIVE_INFINITY;
    for (int i = 150; i < 1950; i++) {
      double t = i / 100.0;
      double sines =
          Math.sin(0.9 * t + phase) + Math.sin(2.3 * t + 2 * phase) / 2 + Math.sin(7.7 * t) / 4;
      most = Math.max(most, amplitude * sines);
    }
    return most;
  }
}
