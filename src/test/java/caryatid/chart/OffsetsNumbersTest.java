package caryatid.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import caryatid.alignment.OffsetChange;
import caryatid.chart.mark.Box;
import caryatid.chart.mark.Drawing;
import caryatid.chart.mark.Drawing.Part;
import caryatid.chart.mark.Mark;
import caryatid.chart.mark.Mark.Stroke;
import caryatid.chart.mark.Mark.Text;
import caryatid.chart.mark.PaperPoint;
import caryatid.chart.mark.Style;
import caryatid.chart.mark.Style.Pen;
import caryatid.geometry.Plane;
import caryatid.geometry.Side;
import caryatid.loadline.LandmarkInPlane;
import caryatid.loadline.Verdict;
import caryatid.standing.LoadLineOwner;
import caryatid.uncertainty.Cause;
import caryatid.uncertainty.Contribution;
import caryatid.uncertainty.Estimate;
import caryatid.uncertainty.Source;
import caryatid.views.OffsetSeries;
import caryatid.views.OffsetSeries.Measured;
import caryatid.views.StandChange;
import caryatid.views.StateChange;
import caryatid.wording.LandmarkWords;
import caryatid.wording.Wording;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Where the drawing of one offset from stand to stand puts each interval and tolerance, read back
 * from the paper by the axis's own ticks.
 */
class OffsetsNumbersTest {
  private static final OffsetDateTime AT = OffsetDateTime.parse("2026-03-04T10:15:00+01:00");

  /** Of adding up steps in floating point. */
  private static final double ROUNDING = 1e-9;

  /** The chart library measures letters in whole units of its canvas, of 0.01 mm. */
  private static final double OF_LETTERS_MM = 0.01;

  private static Drawing drawing() {
    List<Measured> measured =
        List.of(
            measured(3, 0, -12.6, 7.3, -9, -4, 5, Verdict.INSIDE_TOO_CLOSE),
            measured(5, 20, 16.2, 4.1, 11.5, 15, 28.25, Verdict.WITHIN),
            measured(8, 40, 41.9, 5.7, 12.5, 17, 21, Verdict.OUTSIDE));
    OffsetSeries series =
        new OffsetSeries(new LandmarkInPlane(Plane.SAGITTAL, Side.RIGHT, "knee centre"), measured);
    return OffsetsDrawing.plan(
        series,
        List.of(change("a", 5, 20), change("b", 8, 40)),
        List.of(judged(3, 5, 2, 2), judged(5, 8, 2, 9), judged(3, 8, 1, 1)),
        new LandmarkWords(Wording.in(Locale.ENGLISH), false),
        Wording.in(Locale.ENGLISH),
        186);
  }

  private static Measured measured(
      int entry,
      int minutes,
      double mm,
      double expanded,
      double lowest,
      double recommended,
      double highest,
      Verdict verdict) {
    return new Measured(
        entry,
        false,
        AT.plusMinutes(minutes),
        mm,
        expanded,
        lowest,
        recommended,
        highest,
        verdict,
        "leaflet",
        Optional.empty(),
        Optional.empty());
  }

  private static StandChange change(String name, int stand, int minutes) {
    return new StandChange(
        name,
        1,
        stand,
        AT.plusMinutes(minutes),
        List.of(),
        Optional.empty(),
        Optional.of("moved"),
        Optional.empty());
  }

  /**
   * A change by 10 mm, known to so many mm (standard uncertainty) if the marks stayed, and if not.
   */
  private static StateChange judged(int before, int after, double stayedMm, double anewMm) {
    return new StateChange(
        before,
        after,
        List.of(
            new OffsetChange(
                new LandmarkInPlane(Plane.SAGITTAL, Side.RIGHT, "Knee centre"),
                LoadLineOwner.RIGHT_FOOT,
                0,
                10,
                tenMm(stayedMm),
                tenMm(anewMm),
                1)));
  }

  private static Estimate tenMm(double u) {
    return new Estimate(
        10,
        List.of(
            new Contribution(new Source(Cause.REPEATABILITY, ""), u, 1, Double.POSITIVE_INFINITY)));
  }

  /** From a tenth of the way to nine tenths: -9.72 to 13.32 mm, and 18.77 to 39.33 mm. */
  @Test
  void aLineJoinsStandsThatDifferAndADashedOneThoseThatMay() {
    Drawing drawing = drawing();
    DoubleUnaryOperator at = axis(drawing);
    for (Pen pen : new Pen[] {Pen.DIMENSION, Pen.ELLIPSE}) {
      List<Stroke> lines = Ruled.strokes(drawing, pen);
      assertThat(lines).hasSize(1);
      Box box = Ruled.box(lines.get(0));
      boolean surely = pen == Pen.DIMENSION;
      assertThat(at.applyAsDouble(box.bottomMm()))
          .isCloseTo(surely ? -9.72 : 18.77, within(OF_LETTERS_MM));
      assertThat(at.applyAsDouble(box.topMm()))
          .isCloseTo(surely ? 13.32 : 39.33, within(OF_LETTERS_MM));
    }
  }

  /** By the ticks beside the plot, the lowest first. */
  private static DoubleUnaryOperator axis(Drawing drawing) {
    List<Text> figures = figures(drawing);
    double[] ticks = ticks(drawing);
    int last = ticks.length - 1;
    return Ruled.through(
        ticks[0], Ruled.number(figures.get(0)), ticks[last], Ruled.number(figures.get(last)));
  }

  private static double[] ticks(Drawing drawing) {
    return Ruled.strokes(Stream.of(drawing.parts().get(1)), Pen.TICK).stream()
        .filter(s -> Ruled.isLevel(s) && Ruled.box(s).widthMm() < 2)
        .mapToDouble(s -> Ruled.first(s).downMm())
        .toArray();
  }

  private static List<Text> figures(Drawing drawing) {
    return drawing.parts().get(1).marks().stream()
        .filter(Text.class::isInstance)
        .map(Text.class::cast)
        .filter(text -> text.box().rightMm() < 12)
        .toList();
  }

  private static Part stand(Drawing drawing, int number) {
    return drawing.parts().stream().filter(p -> p.says().isPresent()).toList().get(number);
  }

  @ParameterizedTest
  @CsvSource({
    "0, -12.6, 7.3, -9, -4, 5",
    "1, 16.2, 4.1, 11.5, 15, 28.25",
    "2, 41.9, 5.7, 12.5, 17, 21"
  })
  void everyStandHasItsOwnIntervalAndTolerance(
      int number, double mm, double expanded, double lowest, double recommended, double highest) {
    Drawing drawing = drawing();
    DoubleUnaryOperator at = axis(drawing);
    Part part = stand(drawing, number);
    List<Stroke> line = Ruled.strokes(Stream.of(part), Pen.LOAD_LINE);
    Box interval = Ruled.box(line.stream().filter(Ruled::isUpright).findFirst().orElseThrow());
    assertThat(at.applyAsDouble(interval.bottomMm())).isCloseTo(mm - expanded, within(ROUNDING));
    assertThat(at.applyAsDouble(interval.topMm())).isCloseTo(mm + expanded, within(ROUNDING));
    double[] whiskers = levels(line, at);
    assertThat(whiskers)
        .containsExactly(new double[] {mm - expanded, mm + expanded}, within(ROUNDING));
    double[] target = levels(Ruled.strokes(Stream.of(part), Pen.TARGET), at);
    assertThat(target)
        .containsExactly(new double[] {lowest, recommended, highest}, within(ROUNDING));
    PaperPoint result = Ruled.middle(line.get(line.size() - 1));
    assertThat(at.applyAsDouble(result.downMm())).isCloseTo(mm, within(ROUNDING));
    assertThat(result.rightMm()).isCloseTo(interval.leftMm(), within(ROUNDING));
    for (Stroke hatch : Ruled.strokes(Stream.of(part), Pen.HATCH)) {
      assertThat(at.applyAsDouble(Ruled.box(hatch).bottomMm()))
          .isGreaterThanOrEqualTo(lowest - ROUNDING);
      assertThat(at.applyAsDouble(Ruled.box(hatch).topMm()))
          .isLessThanOrEqualTo(highest + ROUNDING);
    }
  }

  private static double[] levels(List<Stroke> strokes, DoubleUnaryOperator at) {
    return strokes.stream()
        .filter(Ruled::isLevel)
        .mapToDouble(s -> at.applyAsDouble(Ruled.first(s).downMm()))
        .sorted()
        .toArray();
  }

  /** A ring, filled only within; a cross outside. */
  @Test
  void everyResultHasItsOwnSign() {
    Drawing drawing = drawing();
    assertThat(fill(stand(drawing, 0))).contains(Style.Ink.WHITE);
    assertThat(fill(stand(drawing, 1))).contains(Style.Ink.BLUE);
    assertThat(fill(stand(drawing, 2))).isEmpty();
    assertThat(Ruled.strokes(Stream.of(stand(drawing, 2)), Pen.LOAD_LINE)).hasSize(3 + 2);
  }

  private static Optional<Style.Ink> fill(Part part) {
    return part.marks().stream()
        .filter(Mark.Fill.class::isInstance)
        .map(mark -> ((Mark.Fill) mark).ink())
        .findFirst();
  }

  @Test
  void everyTickIsAtItsOwnFigure() {
    Drawing drawing = drawing();
    DoubleUnaryOperator at = axis(drawing);
    List<Text> figures = figures(drawing);
    double[] ticks = ticks(drawing);
    assertThat(DoubleStream.of(ticks).map(at))
        .containsExactly(figures.stream().map(Ruled::number).toArray(Double[]::new));
    for (int i = 0; i < ticks.length; i++) {
      double belowTick = figures.get(i).at().downMm() - ticks[i];
      assertThat(belowTick).isCloseTo(1, within(0.1));
    }
    double[] zero =
        Ruled.strokes(Stream.of(drawing.parts().get(1)), Pen.TICK).stream()
            .filter(s -> Ruled.isLevel(s) && Ruled.box(s).widthMm() > 100)
            .mapToDouble(s -> at.applyAsDouble(Ruled.first(s).downMm()))
            .toArray();
    assertThat(zero).containsExactly(new double[] {0}, within(ROUNDING));
  }

  /** What stands at the axis of one stand with its interval just as wide as its tolerance. */
  private static List<String> figures(double mm, double half) {
    return figures(drawing(mm, half)).stream().map(Text::words).toList();
  }

  private static Drawing drawing(double mm, double half) {
    return OffsetsDrawing.plan(
        new OffsetSeries(
            new LandmarkInPlane(Plane.SAGITTAL, Side.RIGHT, "knee centre"),
            List.of(measured(3, 0, mm, half, mm - half, mm, mm + half, Verdict.WITHIN))),
        List.of(),
        List.of(),
        new LandmarkWords(Wording.in(Locale.ENGLISH), false),
        Wording.in(Locale.ENGLISH),
        186);
  }

  /** 33 mm of plot hold at most 5 steps of 6 mm: of 1, 2 or 5 times a power of ten. */
  @Test
  void figuresHaveOneDecimalWhereStepsAreSmallerThanAMillimetre() {
    assertThat(figures(3, 1)).containsExactly("+2.0", "+2.5", "+3.0", "+3.5", "+4.0");
    assertThat(figures(-3, 2)).containsExactly("−5", "−4", "−3", "−2", "−1");
    assertThat(figures(0, 5)).containsExactly("−6", "−4", "−2", "0", "+2", "+4", "+6");
    assertThat(figures(30, 25)).containsExactly("0", "+10", "+20", "+30", "+40", "+50", "+60");
  }

  /** From -7 to 11 mm: steps of 5 mm. */
  @Test
  void theAxisHoldsAnIntervalThatIsWiderThanItsTolerance() {
    Drawing drawing =
        OffsetsDrawing.plan(
            new OffsetSeries(
                new LandmarkInPlane(Plane.SAGITTAL, Side.RIGHT, "knee centre"),
                List.of(measured(3, 0, 2, 9, 1, 2, 3, Verdict.INSIDE_TOO_CLOSE))),
            List.of(),
            List.of(),
            new LandmarkWords(Wording.in(Locale.ENGLISH), false),
            Wording.in(Locale.ENGLISH),
            186);
    assertThat(figures(drawing))
        .extracting(Text::words)
        .containsExactly("−10", "−5", "0", "+5", "+10", "+15");
  }

  /** Only where the axis runs to both sides of it: at its end it is the frame. */
  @ParameterizedTest
  @CsvSource({"0, 5, 1", "3, 5, 1", "30, 25, 0", "-30, 25, 0", "5, 5, 0", "-5, 5, 0", "40, 5, 0"})
  void zeroIsDrawnAcrossWhereTheAxisRunsToBothSidesOfIt(double mm, double half, int lines) {
    assertThat(
            Ruled.strokes(Stream.of(drawing(mm, half).parts().get(1)), Pen.TICK).stream()
                .filter(s -> Ruled.isLevel(s) && Ruled.box(s).widthMm() > 100))
        .hasSize(lines);
  }

  /**
   * Each change stands halfway between the stands it lies between, and each entry below its own.
   */
  @Test
  void changesAndEntriesStandWhereTheirStandsDo() {
    Drawing drawing = drawing();
    double[] stands = new double[3];
    for (int i = 0; i < 3; i++) {
      stands[i] =
          Ruled.first(
                  Ruled.strokes(Stream.of(stand(drawing, i)), Pen.LOAD_LINE).stream()
                      .filter(Ruled::isUpright)
                      .findFirst()
                      .orElseThrow())
              .rightMm();
    }
    double[] changes =
        Ruled.strokes(drawing, Pen.LEADER).stream()
            .mapToDouble(s -> Ruled.first(s).rightMm())
            .toArray();
    assertThat(changes)
        .containsExactly(
            new double[] {(stands[0] + stands[1]) / 2, (stands[1] + stands[2]) / 2},
            within(ROUNDING));
    assertThat(middleOf(drawing, "a")).isCloseTo(changes[0], within(OF_LETTERS_MM));
    assertThat(middleOf(drawing, "b")).isCloseTo(changes[1], within(OF_LETTERS_MM));
    assertThat(middleOf(drawing, "3")).isCloseTo(stands[0], within(OF_LETTERS_MM));
    assertThat(middleOf(drawing, "5")).isCloseTo(stands[1], within(OF_LETTERS_MM));
    assertThat(middleOf(drawing, "8")).isCloseTo(stands[2], within(OF_LETTERS_MM));
  }

  private static double middleOf(Drawing drawing, String words) {
    Box box =
        drawing.texts().stream()
            .filter(text -> text.words().equals(words))
            .findFirst()
            .orElseThrow()
            .box();
    return (box.leftMm() + box.rightMm()) / 2;
  }
}
