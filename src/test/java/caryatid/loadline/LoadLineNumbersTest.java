package caryatid.loadline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import caryatid.demo.Sways;
import caryatid.geometry.Plane;
import caryatid.geometry.Side;
import caryatid.remark.BadInput;
import caryatid.remark.Remark;
import caryatid.standing.LoadLineOwner;
import caryatid.standing.MeanLoad;
import caryatid.standing.QuietStretch;
import caryatid.standing.Stance;
import caryatid.standing.Standing;
import caryatid.standing.Sway;
import caryatid.uncertainty.Cause;
import caryatid.uncertainty.Conformity;
import caryatid.uncertainty.Contribution;
import caryatid.uncertainty.Estimate;
import caryatid.wording.Wording;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Numbers that depend on which line, landmark or plane is looked at, each with one of its own. */
class LoadLineNumbersTest {
  private static final Wording ENGLISH = Wording.in(Locale.ENGLISH);
  private static final Stance PLATES = new Stance.PlatePerFoot("left", "right");

  /** The wearer's turn alone is doubted: 0.01 rad; levers of 30 mm (foot) and 70 mm (body). */
  private static final AssumedUncertainties TURN =
      new AssumedUncertainties(0, 0.01, 30, 70, 1e12, 0, 0, 1);

  private static Landmark sagittalOnly() {
    Landmark marked = Legs.mark(LandmarkKind.KNEE_CENTRE, Side.LEFT, 0, 5, 500);
    return new Landmark(
        marked.name(),
        marked.kind(),
        marked.side(),
        Optional.empty(),
        marked.anteriorMm(),
        marked.heightMm(),
        Optional.empty());
  }

  private static double turn(Offset offset) {
    return offset.mm().contributions().stream()
        .filter(c -> c.source().cause() == Cause.YAW)
        .mapToDouble(Contribution::amount)
        .sum();
  }

  private static Standing both() {
    return Legs.standing(
        Legs.load(LoadLineOwner.LEFT_FOOT, -95, 12, 400, 1, Optional.empty()),
        Legs.load(LoadLineOwner.RIGHT_FOOT, 90, 14, 400, 1, Optional.empty()),
        Legs.load(LoadLineOwner.WHOLE_BODY, -2, 13, 800, 1, Optional.empty()));
  }

  @Test
  void withoutAMarkSidewaysEachLineTakesItsOwnLever() {
    List<Offset> offsets = Offsets.of(both(), List.of(sagittalOnly()), TURN);
    assertThat(offsets)
        .extracting(Offset::of)
        .containsExactly(LoadLineOwner.LEFT_FOOT, LoadLineOwner.WHOLE_BODY);
    assertThat(turn(offsets.get(0))).isCloseTo(-0.3, within(1e-12));
    assertThat(turn(offsets.get(1))).isCloseTo(-0.7, within(1e-12));
  }

  /**
   * The left foot's point lies 12 - 5 mm anterior and 95 - 60 mm lateral of the mark. Turned to the
   * left, what lies to the left goes back, and what lies ahead goes to the left, which is lateral.
   */
  @Test
  void aTurnMovesTheTwoPlanesTogether() {
    Landmark knee = Legs.mark(LandmarkKind.KNEE_CENTRE, Side.LEFT, -60, 5, 500);
    List<Offset> offsets = Offsets.of(both(), List.of(knee), TURN);
    for (Offset offset : offsets) {
      if (offset.of() == LoadLineOwner.LEFT_FOOT) {
        double expected = offset.plane() == Plane.SAGITTAL ? 0.35 : -0.07;
        assertThat(turn(offset)).as(offset.plane().name()).isCloseTo(expected, within(1e-12));
      }
    }
  }

  private static Finding finding(TargetComparison judged, String landmark) {
    return judged.findings().stream()
        .filter(f -> f.target().landmark().equals(landmark))
        .findFirst()
        .orElseThrow();
  }

  private static Offset offset(Plane plane, String landmark, LoadLineMethod kind, double mm) {
    return new Offset(
        new LandmarkInPlane(plane, Side.RIGHT, landmark),
        LoadLineOwner.RIGHT_FOOT,
        kind,
        Estimate.exact(mm));
  }

  @Test
  void everyTargetIsComparedWithItsOwnOffset() {
    Plane plane = Plane.SAGITTAL;
    List<Offset> offsets =
        List.of(
            offset(plane, "HIP", LoadLineMethod.VERTICAL, 1),
            offset(plane, "KNEE_CENTRE", LoadLineMethod.MEASURED_FORCE, 2),
            offset(Plane.FRONTAL, "KNEE_CENTRE", LoadLineMethod.VERTICAL, 3),
            offset(plane, "KNEE_CENTRE", LoadLineMethod.VERTICAL, 4),
            offset(plane, "ANKLE_AXIS", LoadLineMethod.VERTICAL, 5));
    TargetComparison judged =
        TargetComparison.of(
            offsets,
            List.of(
                Legs.target(plane, LandmarkKind.ANKLE_AXIS, 0, 9, 9),
                Legs.target(plane, LandmarkKind.KNEE_CENTRE, 0, 9, 9)),
            PLATES,
            List.of(),
            DecisionRule.USUAL);
    assertThat(finding(judged, "KNEE_CENTRE").offset().mm().value()).isEqualTo(4);
    assertThat(finding(judged, "ANKLE_AXIS").offset().mm().value()).isEqualTo(5);
  }

  /** JCGM 106: from the probability on, and not only above it. */
  @ParameterizedTest
  @CsvSource({
    "0.03, 0.95, 0.02, WITHIN",
    "0.04, 0.94, 0.02, INSIDE_TOO_CLOSE",
    "0.95, 0.03, 0.02, OUTSIDE",
    "0.02, 0.03, 0.95, OUTSIDE",
    "0.94, 0.03, 0.03, INSIDE_TOO_CLOSE"
  })
  void aResultIsFirmFromItsProbabilityOn(
      double below, double within, double above, Verdict verdict) {
    assertThat(DecisionRule.USUAL.verdict(true, new Conformity(below, within, above)))
        .isEqualTo(verdict);
  }

  @Test
  void aRemarkOfAFarLandmarkSaysHowFar() {
    Offset far =
        new Offset(
            new LandmarkInPlane(Plane.FRONTAL, Side.LEFT, "knee"),
            LoadLineOwner.LEFT_FOOT,
            LoadLineMethod.VERTICAL,
            Estimate.exact(-123.4));
    assertThat(ENGLISH.say(LoadLineCheck.Plausibility.of(List.of(far)).get(0)))
        .startsWith("The load line runs 123.4\u00a0mm from knee in the frontal plane, ");
  }

  private static Sway sway(LoadLineOwner of, double right, double anterior) {
    return Sways.of(of, OptionalDouble.empty(), right, anterior, 1, 2, 3, 4, 5, 0, 6, 21, 16);
  }

  @Test
  void everyLineSwingsByItsOwnSway() {
    Standing feet =
        new Standing(
            new QuietStretch(0, 6000, 0, 59.99, false, List.of()),
            100,
            List.of(
                Legs.load(LoadLineOwner.LEFT_FOOT, -90, 0, 400, 1, Optional.empty()),
                Legs.load(LoadLineOwner.RIGHT_FOOT, 90, 0, 400, 1, Optional.empty())),
            List.of(sway(LoadLineOwner.LEFT_FOOT, 3, 5), sway(LoadLineOwner.RIGHT_FOOT, 9, 7)),
            List.of(),
            Map.of(),
            List.of());
    assertThat(BodySway.of(feet, LoadLineOwner.LEFT_FOOT, Plane.SAGITTAL).sdMm())
        .isCloseTo(5 / 0.7, within(1e-12));
    assertThat(BodySway.of(feet, LoadLineOwner.RIGHT_FOOT, Plane.SAGITTAL).sdMm())
        .isCloseTo(7 / 0.7, within(1e-12));
    assertThat(BodySway.of(feet, LoadLineOwner.RIGHT_FOOT, Plane.FRONTAL).sdMm()).isEqualTo(9);
  }

  private static List<Object> topics(MeanLoad load, Stance stance, LandmarkKind kind)
      throws BadInput {
    return LoadLineCheck.evaluate(
            Legs.standing(load),
            List.of(Legs.mark(kind, Side.RIGHT, 80, 0, 500)),
            Legs.how(stance, Legs.NONE, Side.RIGHT))
        .remarks()
        .stream()
        .<Object>map(Remark::topic)
        .toList();
  }

  /** With both feet on one plate the force must cancel too, but says nothing of one leg. */
  @Test
  void onePlateUnderBothFeetGivesNoFrontalMomentEvenWhereItsForceCancels() throws BadInput {
    Stance together = new Stance.BothFeetOnOnePlate(Optional.empty());
    MeanLoad upright = Legs.load(LoadLineOwner.WHOLE_BODY, 0, 12, 800, 1, Legs.lean(0, 0));
    assertThat(topics(upright, together, LandmarkKind.KNEE_CENTRE))
        .contains(LoadLineRemark.FRONTAL_MOMENT_UNTRUSTED);
  }

  /** A hip has no moment, so that nobody misses its frontal one. */
  @Test
  void aFrontalMomentIsMissedOnlyWhereAJointWasMarked() throws BadInput {
    Stance alone = new Stance.ProstheticFootOnPlate(Optional.empty());
    MeanLoad foot = Legs.load(LoadLineOwner.RIGHT_FOOT, 90, 12, 400, 1, Legs.lean(0, 0));
    assertThat(topics(foot, alone, LandmarkKind.KNEE_CENTRE))
        .contains(LoadLineRemark.FRONTAL_MOMENT_UNTRUSTED);
    assertThat(topics(foot, alone, LandmarkKind.HIP))
        .doesNotContain(LoadLineRemark.FRONTAL_MOMENT_UNTRUSTED);
  }

  /** A force that leans back by 0.03 at 500 mm: 15 mm behind the vertical, 12 mm ahead. */
  @Test
  void aMeasuredLineBehindTheKneeIsSaidByHowFar() {
    List<String> said =
        knee(12).stream().map(ENGLISH::say).map(s -> s.replace('\u00a0', ' ')).toList();
    assertThat(said).hasSize(1);
    assertThat(said.get(0)).contains(" 3.0 mm").contains(" 2.0 mm");
  }

  /** Behind by both lines, or on the axis by the vertical, which may be behind by 2.0 mm. */
  @Test
  void aMeasuredLineBehindTheKneeIsSaidUnlessTheVerticalIsBehindAsWell() {
    assertThat(knee(-5)).extracting(Remark::topic).containsExactly(LoadLineRemark.LINE_BEHIND_KNEE);
    assertThat(knee(0))
        .extracting(Remark::topic)
        .containsExactly(
            LoadLineRemark.LINE_MAY_BE_BEHIND_KNEE, LoadLineRemark.MEASURED_LINE_BEHIND_KNEE);
  }

  private static List<Remark> knee(double anteriorMm) {
    MeanLoad foot =
        Legs.load(LoadLineOwner.RIGHT_FOOT, 90, anteriorMm, 400, 1, Legs.lean(0, -0.03));
    List<Landmark> landmarks =
        List.of(
            Legs.mark(LandmarkKind.ANKLE_AXIS, Side.RIGHT, 80, 90, 80),
            Legs.mark(LandmarkKind.KNEE_CENTRE, Side.RIGHT, 140, 0, 500));
    List<Offset> offsets = Offsets.of(Legs.standing(foot), landmarks, Legs.NONE);
    return KneeSafety.of(offsets, landmarks, List.of(Side.RIGHT));
  }
}
