package caryatid.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import caryatid.alignment.AlignmentState;
import caryatid.alignment.StateOffset;
import caryatid.chart.Mark.Stroke;
import caryatid.chart.Mark.Text;
import caryatid.chart.Style.Pen;
import caryatid.demo.Numbered;
import caryatid.geometry.Plane;
import caryatid.geometry.Side;
import caryatid.loadline.Offset;
import caryatid.uncertainty.Estimate;
import caryatid.wording.Wording;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;

/**
 * Where a leg's drawing puts lines, intervals and tolerances, read back from the paper by the
 * landmarks it marks, from a result in which no two numbers are alike. Millimetres of the person;
 * half-widths worked out by hand as in {@code ReportNumbersTest}, of the line without the parts of
 * the landmark: 2.77645 times 3.50999 mm (ankle), 1.95996 times 4.73181 mm (knee, frontal).
 */
class LegNumbersTest {
  private static final Wording ENGLISH = Wording.in(Locale.ENGLISH);

  /** Half-widths are given to so many digits. */
  private static final double ROUNDING = 1e-5;

  private static Drawing small() {
    SmallLeg.Titled titled = new SmallLeg.Titled("n", "title", "under", Numbered.state());
    return SmallLeg.plan(List.of(titled), Side.RIGHT, ENGLISH).get(0);
  }

  private static Drawing leg(AlignmentState state, Plane plane) {
    return LegDrawing.plan(state, Optional.of(before()), plane, Side.RIGHT, ENGLISH, 88, 110);
  }

  /** The state before: its line ran 30.5 mm anterior of the ankle, 4.5 mm medial of the knee. */
  private static AlignmentState before() {
    AlignmentState state = Numbered.state();
    Offset ankle = state.offsets().get(0).offset();
    Offset knee = state.offsets().get(2).offset();
    return new AlignmentState(
        state.stands(), List.of(at(ankle, 30.5), at(knee, -4.5)), List.of(), List.of(), List.of());
  }

  private static StateOffset at(Offset like, double mm) {
    return new StateOffset(
        new Offset(
            like.plane(), like.side(), like.landmark(), like.of(), like.kind(), Estimate.exact(mm)),
        1,
        Optional.empty());
  }

  /** Each landmark is a ring, from the ankle's up to the hip's; the key may have one below. */
  private static List<Spot> rings(Drawing drawing) {
    List<Spot> rings = allRings(drawing);
    return rings.subList(rings.size() - 3, rings.size());
  }

  private static List<Spot> allRings(Drawing drawing) {
    return Ruled.strokes(drawing, Pen.LANDMARK).stream()
        .filter(stroke -> stroke.along().size() > 20)
        .map(Ruled::middle)
        .sorted(java.util.Comparator.comparingDouble(Spot::downMm).reversed())
        .toList();
  }

  /** From a place across the paper to mm of the person, from where the ankle is. */
  private static DoubleUnaryOperator across(Drawing drawing, double ankleMm) {
    Spot ankle = rings(drawing).get(0);
    Spot hip = rings(drawing).get(2);
    double scale = (905 - 81) / (ankle.downMm() - hip.downMm());
    return at -> ankleMm + (at - ankle.rightMm()) * scale;
  }

  private static List<Stroke> only(Drawing drawing, Pen pen, Predicate<Stroke> of) {
    return Ruled.strokes(drawing, pen).stream().filter(of).toList();
  }

  private static void assertAcross(DoubleUnaryOperator across, double paperMm, double mm) {
    assertThat(across.applyAsDouble(paperMm)).isCloseTo(mm, within(ROUNDING));
  }

  @Test
  void everyLandmarkIsAtItsOwnPlaceAndHasItsOwnInterval() {
    Drawing drawing = small();
    DoubleUnaryOperator across = across(drawing, 1.5);
    double[] places = {1.5, 41, 63};
    double[] halves = {2.5 * 1.959964, 3.5 * 1.959964, 4.5 * 1.959964};
    for (int i = 0; i < 3; i++) {
      Spot ring = rings(drawing).get(i);
      assertAcross(across, ring.rightMm(), places[i]);
      Box bar =
          Ruled.box(
              only(
                      drawing,
                      Pen.LANDMARK,
                      s -> Ruled.isLevel(s) && Ruled.first(s).downMm() == ring.downMm())
                  .get(0));
      assertAcross(across, bar.leftMm(), places[i] - halves[i]);
      assertAcross(across, bar.rightMm(), places[i] + halves[i]);
      double[] ends =
          only(
                  drawing,
                  Pen.LANDMARK,
                  s ->
                      Ruled.isUpright(s)
                          && Math.abs(Ruled.middle(s).downMm() - ring.downMm()) < 0.1)
              .stream()
              .mapToDouble(s -> Ruled.first(s).rightMm())
              .sorted()
              .toArray();
      assertThat(ends).hasSize(2);
      assertAcross(across, ends[0], places[i] - halves[i]);
      assertAcross(across, ends[1], places[i] + halves[i]);
    }
  }

  /** Mean of 48.8 and 50.2 mm. */
  @Test
  void theLineRunsWhereItsStandsSayInItsOwnInterval() {
    Drawing drawing = small();
    DoubleUnaryOperator across = across(drawing, 1.5);
    Stroke line = only(drawing, Pen.LOAD_LINE, Ruled::isUpright).get(0);
    assertAcross(across, Ruled.first(line).rightMm(), 49.5);
    Box interval = Ruled.box(Ruled.strokes(drawing, Pen.INTERVAL_EDGE).get(0));
    assertAcross(across, interval.leftMm(), 49.5 - 9.745283);
    assertAcross(across, interval.rightMm(), 49.5 + 9.745283);
  }

  /** From the ankle at 1.5 mm and the knee at 41 mm. */
  @Test
  void everyToleranceReachesFromItsLowestToItsHighest() {
    Drawing drawing = small();
    DoubleUnaryOperator across = across(drawing, 1.5);
    double[][] expected = {{41 - 9, 41 - 4, 41 + 5}, {1.5 + 37, 1.5 + 44, 1.5 + 55}};
    List<Stroke> brackets = only(drawing, Pen.TARGET, s -> s.along().size() == 4);
    List<Stroke> recommended = only(drawing, Pen.TARGET, Ruled::isUpright);
    assertThat(brackets).hasSize(4);
    for (int i = 0; i < 2; i++) {
      assertAcross(across, brackets.get(2 * i).along().get(1).rightMm(), expected[i][0]);
      assertAcross(across, Ruled.first(recommended.get(i)).rightMm(), expected[i][1]);
      assertAcross(across, brackets.get(2 * i + 1).along().get(1).rightMm(), expected[i][2]);
      double lip = Ruled.first(brackets.get(2 * i)).rightMm();
      assertThat(across.applyAsDouble(lip)).isBetween(expected[i][0], expected[i][2]);
    }
  }

  @Test
  void everyDimensionReachesFromItsLandmarkToTheLine() {
    Drawing drawing = small();
    DoubleUnaryOperator across = across(drawing, 1.5);
    List<Stroke> dimensions = only(drawing, Pen.DIMENSION, Ruled::isLevel);
    double[] landmarks = {63, 41, 1.5};
    for (int i = 0; i < 3; i++) {
      assertAcross(across, Ruled.first(dimensions.get(i)).rightMm(), landmarks[i]);
      assertAcross(across, Ruled.last(dimensions.get(i)).rightMm(), 49.5);
    }
  }

  @Test
  void theSmallLegSaysTheTopmostFinding() {
    assertThat(small().texts())
        .extracting(text -> text.words().replace('\u00a0', ' '))
        .containsExactly("title", "under", "−12.6 ± 12.7 mm", "outside");
  }

  /** Seen from the front, the person's right is to the left: across is less than nothing. */
  @Test
  void theFrontalLineItsStandsAndTheForceRunWhereTheySay() {
    Drawing drawing = leg(Numbered.state(), Plane.FRONTAL);
    DoubleUnaryOperator across = across(drawing, -92);
    Stroke line = only(drawing, Pen.LOAD_LINE, s -> Ruled.box(s).heightMm() > 20).get(0);
    assertAcross(across, Ruled.first(line).rightMm(), -(87.6 + 85.1) / 2);
    Box interval = Ruled.box(Ruled.strokes(drawing, Pen.INTERVAL_EDGE).get(0));
    assertAcross(across, interval.leftMm(), -86.35 - 9.274172);
    assertAcross(across, interval.rightMm(), -86.35 + 9.274172);
    Stroke force = Ruled.strokes(drawing, Pen.MEASURED_FORCE).get(0);
    Box slope = Ruled.box(force);
    assertAcross(across, Ruled.first(force).rightMm(), -86.35);
    assertThat(Ruled.last(force).rightMm()).isLessThan(Ruled.first(force).rightMm());
    assertThat(slope.widthMm() / slope.heightMm()).isCloseTo((0.012 + 0.015) / 2, within(1e-9));
    double floor = Ruled.first(line).downMm();
    double[] stands =
        only(
                drawing,
                Pen.LANDMARK,
                s -> Ruled.isUpright(s) && Math.abs(Ruled.first(s).downMm() - floor) < 1e-9)
            .stream()
            .mapToDouble(s -> Ruled.first(s).rightMm())
            .toArray();
    assertThat(stands).hasSize(2);
    assertAcross(across, stands[0], -87.6);
    assertAcross(across, stands[1], -85.1);
  }

  @Test
  void theLineOfTheStateBeforeRunsPastTheLowestLandmarkAsItDid() {
    Drawing sagittal = leg(Numbered.state(), Plane.SAGITTAL);
    Stroke line = Ruled.strokes(sagittal, Pen.EARLIER_LINE).get(0);
    assertAcross(across(sagittal, 1.5), Ruled.first(line).rightMm(), 1.5 + 30.5);
    Drawing frontal = leg(Numbered.state(), Plane.FRONTAL);
    line = Ruled.strokes(frontal, Pen.EARLIER_LINE).get(0);
    assertAcross(across(frontal, -92), Ruled.first(line).rightMm(), -84 + 4.5);
  }

  /** One stand's line is as sure as its own centre of pressure: 1.95996 times 2.3 and 0.6 mm. */
  @Test
  void theLineOfOneStandHasThatStandsOwnInterval() {
    AlignmentState two = Numbered.state();
    AlignmentState one =
        new AlignmentState(
            two.stands().subList(0, 1), two.offsets(), two.findings(), List.of(), List.of());
    LoadLine sagittal = LoadLine.of(one, new View(Plane.SAGITTAL, Side.RIGHT)).orElseThrow();
    assertThat(sagittal.acrossMm()).isEqualTo(48.8);
    assertThat(sagittal.halfMm()).isCloseTo(4.507917, within(ROUNDING));
    LoadLine frontal = LoadLine.of(one, new View(Plane.FRONTAL, Side.RIGHT)).orElseThrow();
    assertThat(frontal.acrossMm()).isEqualTo(-87.6);
    assertThat(frontal.halfMm()).isCloseTo(1.175978, within(ROUNDING));
  }

  @Test
  void theLabelsSayOffsetOffsetBeforeAndTarget() {
    assertThat(leg(Numbered.state(), Plane.SAGITTAL).texts())
        .extracting(Text::words)
        .map(words -> words.replace('\u00a0', ' '))
        .contains(
            "47 mm anterior",
            "before: +31 mm",
            "target +44 (+37 to +55)",
            "13 mm posterior",
            "target −4 (−9 to +5)",
            "23 mm posterior");
  }

  /**
   * The curve ends 3.2 standard uncertainties to each side; at one of them it has the height of
   * Student's density with 4 degrees of freedom, (1 + 1/4) to the power of -5/2, or of the normal
   * one, exp(-1/2).
   */
  @Test
  void theCloseUpOfAFindingIsTrueToScale() {
    assertCloseUp(0, Plane.SAGITTAL, 4.491102, new double[] {47.3, 37, 44, 55}, 0.572433);
    assertCloseUp(2, Plane.FRONTAL, 5.933801, new double[] {5.8, -1, 2, 10}, 0.606531);
  }

  private static void assertCloseUp(
      int finding, Plane plane, double u, double[] mm, double heightAtOne) {
    View view = new View(plane, Side.RIGHT);
    int sign = plane == Plane.SAGITTAL ? 1 : -1;
    Leg.Level level =
        Leg.of(Numbered.state(), Optional.empty(), view).levels().stream()
            .filter(l -> l.finding().equals(Optional.of(Numbered.state().findings().get(finding))))
            .findFirst()
            .orElseThrow();
    int oneTo = 2;
    List<Mark> marks = CloseUp.marks(level, view, oneTo, new Box(10, 20, 60, 28));
    Drawing drawing =
        new Drawing("n", 70, 40, "", List.of(new Drawing.Part(Optional.empty(), marks)));
    double line = Ruled.first(Ruled.strokes(drawing, Pen.LOAD_LINE).get(0)).rightMm();
    DoubleUnaryOperator at = x -> mm[0] + sign * (x - line) * oneTo;
    Stroke curve = Ruled.strokes(drawing, Pen.TRACE).get(0);
    assertAcross(at, Ruled.first(curve).rightMm(), mm[0] - 3.2 * u);
    assertAcross(at, Ruled.last(curve).rightMm(), mm[0] + 3.2 * u);
    List<Stroke> brackets = only(drawing, Pen.TARGET, s -> s.along().size() == 4);
    double[] edges =
        brackets.stream()
            .mapToDouble(s -> at.applyAsDouble(s.along().get(1).rightMm()))
            .sorted()
            .toArray();
    assertThat(edges[0]).isCloseTo(mm[1], within(ROUNDING));
    assertThat(edges[1]).isCloseTo(mm[3], within(ROUNDING));
    Stroke recommended = only(drawing, Pen.TARGET, Ruled::isUpright).get(0);
    assertAcross(at, Ruled.first(recommended).rightMm(), mm[2]);
    double base = Ruled.first(curve).downMm();
    double peak = Ruled.box(curve).topMm();
    assertThat(base).isGreaterThan(peak);
    assertThat(heightAt(curve, at, mm[0] + u) / 4.2).isCloseTo(heightAtOne, within(0.003));
    Box fill =
        Ruled.box(
            new Stroke(
                marks.stream()
                    .filter(Mark.Fill.class::isInstance)
                    .map(m -> ((Mark.Fill) m).outline())
                    .findFirst()
                    .orElseThrow(),
                Pen.TRACE));
    double from = Math.max(mm[1], mm[0] - 3.2 * u);
    double until = Math.min(mm[3], mm[0] + 3.2 * u);
    assertAcross(at, sign > 0 ? fill.leftMm() : fill.rightMm(), from);
    assertAcross(at, sign > 0 ? fill.rightMm() : fill.leftMm(), until);
  }

  /** The curve's height over its zero, 4.8 mm below the room's top, between two of its points. */
  private static double heightAt(Stroke curve, DoubleUnaryOperator at, double mm) {
    List<Spot> along = curve.along();
    for (int i = 1; i < along.size(); i++) {
      double one = at.applyAsDouble(along.get(i - 1).rightMm());
      double other = at.applyAsDouble(along.get(i).rightMm());
      if (one <= mm && mm <= other) {
        double part = (mm - one) / (other - one);
        double down =
            along.get(i - 1).downMm() + part * (along.get(i).downMm() - along.get(i - 1).downMm());
        return 20 + 4.8 - down;
      }
    }
    throw new IllegalArgumentException("not on the curve: " + mm);
  }
}
