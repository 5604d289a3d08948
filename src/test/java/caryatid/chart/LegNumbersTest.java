package caryatid.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import caryatid.alignment.AlignmentState;
import caryatid.chart.leg.LegView;
import caryatid.chart.leg.LoadLine;
import caryatid.chart.mark.Box;
import caryatid.chart.mark.Drawing;
import caryatid.chart.mark.Mark.Stroke;
import caryatid.chart.mark.PaperPoint;
import caryatid.chart.mark.Style.Pen;
import caryatid.demo.Numbered;
import caryatid.geometry.Plane;
import caryatid.geometry.Side;
import caryatid.wording.Wording;
import java.util.List;
import java.util.Locale;
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

  /** Each landmark is a ring, from the ankle's up to the hip's; the key may have one below. */
  private static List<PaperPoint> rings(Drawing drawing) {
    List<PaperPoint> rings = allRings(drawing);
    return rings.subList(rings.size() - 3, rings.size());
  }

  private static List<PaperPoint> allRings(Drawing drawing) {
    return Ruled.strokes(drawing, Pen.LANDMARK).stream()
        .filter(stroke -> stroke.along().size() > 20)
        .map(Ruled::middle)
        .sorted(java.util.Comparator.comparingDouble(PaperPoint::downMm).reversed())
        .toList();
  }

  /** From a place across the paper to mm of the person, from where the ankle is. */
  private static DoubleUnaryOperator across(Drawing drawing, double ankleMm) {
    PaperPoint ankle = rings(drawing).get(0);
    PaperPoint hip = rings(drawing).get(2);
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
      PaperPoint ring = rings(drawing).get(i);
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
        .containsExactly("title", "under", "−12.6 ± 12.7 mm", "× tolerance not met");
  }

  /** One stand's line is as sure as its own centre of pressure: 1.95996 times 2.3 and 0.6 mm. */
  @Test
  void theLineOfOneStandHasThatStandsOwnInterval() {
    AlignmentState two = Numbered.state();
    AlignmentState one =
        new AlignmentState(
            two.stands().subList(0, 1), two.offsets(), two.findings(), List.of(), List.of());
    LoadLine sagittal = LoadLine.of(one, new LegView(Plane.SAGITTAL, Side.RIGHT)).orElseThrow();
    assertThat(sagittal.acrossMm()).isEqualTo(48.8);
    assertThat(sagittal.halfMm()).isCloseTo(4.507917, within(ROUNDING));
    LoadLine frontal = LoadLine.of(one, new LegView(Plane.FRONTAL, Side.RIGHT)).orElseThrow();
    assertThat(frontal.acrossMm()).isEqualTo(-87.6);
    assertThat(frontal.halfMm()).isCloseTo(1.175978, within(ROUNDING));
  }
}
