package caryatid.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import caryatid.alignment.AlignmentState;
import caryatid.alignment.StateOffset;
import caryatid.chart.mark.Box;
import caryatid.chart.mark.Drawing;
import caryatid.chart.mark.Drawing.Part;
import caryatid.chart.mark.Mark.Fill;
import caryatid.chart.mark.Mark.Stroke;
import caryatid.chart.mark.Mark.Text;
import caryatid.chart.mark.PaperPoint;
import caryatid.chart.mark.Style.Ink;
import caryatid.chart.mark.Style.Pen;
import caryatid.demo.Demo;
import caryatid.demo.Numbered;
import caryatid.geometry.Plane;
import caryatid.geometry.Side;
import caryatid.loadline.LandmarkKind;
import caryatid.loadline.Offset;
import caryatid.uncertainty.Estimate;
import caryatid.wording.Wording;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Where strips put load line, zero, interval, tolerance and the state before, read back with a
 * ruler: a millimetre on paper is a millimetre of the person. The numbers are those of a result in
 * which no two are alike; half-widths are worked out by hand as quantile times standard
 * uncertainty: 2.776445 times 4.491102 mm (ankle, 4 degrees of freedom), 1.959964 times 5.933801 mm
 * (knee).
 */
class StripNumbersTest {
  private static final Wording ENGLISH = Wording.in(Locale.ENGLISH);

  /** The chart library keeps some coordinates in hundredths of its unit. */
  private static final double ROUNDING_MM = 1e-4;

  private static Drawing strips(AlignmentState state, Plane plane, Side side) {
    return Strips.plan(state, Optional.of(before()), plane, side, ENGLISH, 1);
  }

  private static Drawing strips(Plane plane) {
    return strips(Numbered.state(), plane, Side.RIGHT);
  }

  /** The previous state: its line ran 30.5 mm anterior of the ankle, 4.5 mm medial of the knee. */
  private static AlignmentState before() {
    AlignmentState state = Numbered.state();
    Offset ankle = state.offsets().get(0).offset();
    Offset knee = state.offsets().get(2).offset();
    return new AlignmentState(
        state.stands(), List.of(at(ankle, 30.5), at(knee, -4.5)), List.of(), List.of(), List.of());
  }

  private static StateOffset at(Offset like, double mm) {
    return new StateOffset(
        new Offset(like.at(), like.of(), like.kind(), Estimate.exact(mm)), 1, Optional.empty());
  }

  private static Part strip(Drawing drawing, String landmark) {
    return drawing.parts().stream()
        .filter(part -> part.says().filter(says -> says.startsWith(landmark)).isPresent())
        .findFirst()
        .orElseThrow();
  }

  private static double lineMm(Drawing drawing) {
    List<Stroke> lines = Ruled.strokes(drawing, Pen.MAIN_LINE);
    assertThat(lines).hasSize(1);
    assertThat(Ruled.isUpright(lines.get(0))).isTrue();
    return Ruled.first(lines.get(0)).rightMm();
  }

  private static PaperPoint zero(Part strip) {
    return Ruled.strokes(Stream.of(strip), Pen.LANDMARK).stream()
        .map(Ruled::middle)
        .findFirst()
        .orElseThrow();
  }

  /** The interval whose foot is on the strip's axis. */
  private static Box interval(Drawing drawing, Part strip) {
    double axis = zero(strip).downMm();
    return drawing.parts().stream()
        .flatMap(part -> part.marks().stream())
        .filter(mark -> mark instanceof Fill fill && fill.ink() == Ink.PALE_BLUE)
        .map(mark -> Ruled.box(new Stroke(((Fill) mark).outline(), Pen.TRACE)))
        .filter(box -> Math.abs(box.bottomMm() - axis) < ROUNDING_MM)
        .findFirst()
        .orElseThrow();
  }

  /** Where the upright strokes of a target are, from the left: an end, the middle one, an end. */
  private static List<Double> target(Part strip) {
    return Ruled.strokes(Stream.of(strip), Pen.TARGET).stream()
        .filter(Ruled::isUpright)
        .map(stroke -> Ruled.first(stroke).rightMm())
        .sorted()
        .toList();
  }

  private static void assertPlace(double paperMm, double expectedMm) {
    assertThat(paperMm).isCloseTo(expectedMm, within(ROUNDING_MM));
  }

  @Test
  void everyZeroIsAsFarFromTheOneLoadLineAsItsOffsetSays() {
    Drawing sagittal = strips(Plane.SAGITTAL);
    double line = lineMm(sagittal);
    assertPlace(zero(strip(sagittal, "ankle axis")).rightMm(), line - 47.3);
    assertPlace(zero(strip(sagittal, "prosthetic knee axis")).rightMm(), line + 12.6);
    assertPlace(zero(strip(sagittal, "greater trochanter")).rightMm(), line + 23.4);
    Drawing frontal = strips(Plane.FRONTAL);
    double knee = zero(strip(frontal, "prosthetic knee axis")).rightMm();
    assertPlace(knee, lineMm(frontal) + 5.8);
  }

  @Test
  void theIntervalReachesItsHalfWidthToEachSideOfTheLine() {
    Drawing sagittal = strips(Plane.SAGITTAL);
    Box ankle = interval(sagittal, strip(sagittal, "ankle axis"));
    double half = 2.776445 * 4.491102;
    assertPlace(ankle.leftMm(), lineMm(sagittal) - half);
    assertPlace(ankle.rightMm(), lineMm(sagittal) + half);
    Drawing frontal = strips(Plane.FRONTAL);
    Box knee = interval(frontal, strip(frontal, "prosthetic knee axis"));
    assertPlace(knee.leftMm(), lineMm(frontal) - 1.959964 * 5.933801);
    assertPlace(knee.rightMm(), lineMm(frontal) + 1.959964 * 5.933801);
  }

  @Test
  void theTolerancesEndsAndWhatIsRecommendedAreTheirDistanceFromTheZero() {
    Drawing sagittal = strips(Plane.SAGITTAL);
    Part ankle = strip(sagittal, "ankle axis");
    double zero = zero(ankle).rightMm();
    assertPlace(target(ankle).get(0), zero + 37);
    assertPlace(target(ankle).get(1), zero + 44);
    assertPlace(target(ankle).get(2), zero + 55);
    Part knee = strip(strips(Plane.FRONTAL), "prosthetic knee axis");
    double lateral = zero(knee).rightMm();
    assertPlace(target(knee).get(0), lateral - 10);
    assertPlace(target(knee).get(1), lateral - 2);
    assertPlace(target(knee).get(2), lateral + 1);
  }

  @Test
  void theStateBeforeIsAnOpenMarkOnTheScale() {
    Part ankle = strip(strips(Plane.SAGITTAL), "ankle axis");
    Stroke mark = Ruled.strokes(Stream.of(ankle), Pen.EARLIER).get(0);
    assertPlace(Ruled.middle(mark).rightMm(), zero(ankle).rightMm() + 30.5);
    Part knee = strip(strips(Plane.FRONTAL), "prosthetic knee axis");
    mark = Ruled.strokes(Stream.of(knee), Pen.EARLIER).get(0);
    assertPlace(Ruled.middle(mark).rightMm(), zero(knee).rightMm() + 4.5);
  }

  /** By the scale's numbers alone, as a reader takes them from the page. */
  @ParameterizedTest
  @EnumSource(Side.class)
  void theScaleSaysTheSameAsTheMarksOnIt(Side side) {
    Demo demo = Demo.transtibial(side).line(80, 60);
    for (Plane plane : Plane.values()) {
      Drawing drawing = Strips.plan(demo.state(0), Optional.empty(), plane, side, ENGLISH, 1);
      Part knee = strip(drawing, "knee centre");
      List<Text> numbers =
          knee.marks().stream()
              .filter(Text.class::isInstance)
              .map(Text.class::cast)
              .filter(text -> text.words().matches("[+−]?[0-9]+"))
              .sorted(Comparator.comparingDouble(Ruled::number))
              .toList();
      Text low = numbers.get(0);
      Text high = numbers.get(numbers.size() - 1);
      DoubleUnaryOperator offset =
          Ruled.through(middle(low), Ruled.number(low), middle(high), Ruled.number(high));
      double expected = plane == Plane.SAGITTAL ? 60 - 42 : 80 - 85;
      double widthsMm = 0.05;
      assertThat(offset.applyAsDouble(lineMm(drawing))).isCloseTo(expected, within(widthsMm));
      assertThat(offset.applyAsDouble(zero(knee).rightMm())).isCloseTo(0, within(widthsMm));
      assertEnds(knee, plane, middle(high) > middle(low));
    }
  }

  /** Offsets grow towards the front and towards lateral, and the words at both ends say so. */
  private static void assertEnds(Part strip, Plane plane, boolean growsToTheRight) {
    List<String> up =
        plane == Plane.SAGITTAL ? List.of("back", "front") : List.of("medial", "lateral");
    List<String> fromTheLeft =
        strip.marks().stream()
            .filter(Text.class::isInstance)
            .map(Text.class::cast)
            .filter(text -> up.contains(text.words()))
            .sorted(Comparator.comparingDouble(StripNumbersTest::middle))
            .map(Text::words)
            .toList();
    assertThat(fromTheLeft).isEqualTo(growsToTheRight ? up : List.of(up.get(1), up.get(0)));
  }

  private static double middle(Text text) {
    return (text.box().leftMm() + text.box().rightMm()) / 2;
  }

  @Test
  void whatExceedsThePageIsBeyondABreakAndKeepsItsNumber() {
    Demo demo = Demo.transtibial(Side.RIGHT).line(80, 260);
    Drawing drawing =
        Strips.plan(demo.state(0), Optional.empty(), Plane.SAGITTAL, Side.RIGHT, ENGLISH, 0.5);
    Part ankle = strip(drawing, "ankle axis");
    assertThat(lineMm(drawing) - zero(ankle).rightMm()).isBetween(50.0, 259.0);
    List<Stroke> slanted =
        Ruled.strokes(Stream.of(ankle), Pen.AXIS).stream()
            .filter(s -> !Ruled.isLevel(s) && !Ruled.isUpright(s))
            .toList();
    assertThat(slanted).hasSize(2);
    assertThat(Ruled.middle(slanted.get(0)).rightMm()).isGreaterThan(zero(ankle).rightMm());
    assertThat(drawing.texts()).extracting(Text::words).contains("0");
    Demo near = Demo.transtibial(Side.RIGHT).line(80, 60);
    Part whole =
        strip(
            Strips.plan(near.state(0), Optional.empty(), Plane.SAGITTAL, Side.RIGHT, ENGLISH, 0.5),
            "ankle axis");
    assertThat(Ruled.strokes(Stream.of(whole), Pen.AXIS))
        .allMatch(s -> Ruled.isLevel(s) || Ruled.isUpright(s));
  }

  @Test
  void aStripSaysResultDirectionAndDistances() {
    Drawing drawing = strips(Plane.SAGITTAL);
    assertThat(drawing.texts())
        .extracting(text -> text.words().replace('\u00a0', ' '))
        .contains(
            "prosthetic knee axis",
            "× tolerance not met · 13 mm posterior",
            "load line 4 mm too far posterior, 9 mm from the recommendation · recommended −4 (−9 to"
                + " +5)",
            "○ undecided: 8 mm within the tolerance · 47 mm anterior",
            "23 mm posterior · no recommendation entered",
            "back",
            "front");
  }

  @Test
  void twoTargetsOfOneLandmarkHaveAStripEach() {
    Demo demo =
        Demo.empty(Side.RIGHT)
            .landmark("knee centre", LandmarkKind.KNEE_CENTRE, 42, 85, 490, 4)
            .target(Plane.SAGITTAL, "knee centre", 15, 10, 10)
            .target(Plane.SAGITTAL, "knee centre", 20, 5, 5);
    Drawing drawing =
        Strips.plan(demo.state(0), Optional.empty(), Plane.SAGITTAL, Side.RIGHT, ENGLISH, 1);
    assertThat(drawing.texts()).filteredOn(t -> t.words().equals("knee centre")).hasSize(2);
  }
}
