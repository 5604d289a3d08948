package caryatid.loadline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import caryatid.geometry.Plane;
import caryatid.geometry.Side;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Remark;
import caryatid.standing.LoadLineOwner;
import caryatid.standing.Stance;
import caryatid.standing.Standing;
import caryatid.wording.Wording;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LoadLineCheckTest {
  private static final Wording WORDS = Wording.in(Locale.ENGLISH);
  private static final Stance PLATES = new Stance.PlatePerFoot("left", "right");

  private static double mm(
      LoadLineResult past, LandmarkKind kind, Plane plane, LoadLineMethod line) {
    return past.offsets().stream()
        .filter(o -> o.landmark().equals(kind.name()) && o.plane() == plane && o.kind() == line)
        .findFirst()
        .orElseThrow()
        .mm()
        .value();
  }

  /**
   * Woodhull, Maltrud and Mello 1985, Eur J Appl Physiol 54:109-115 (abstract): line 52 mm anterior
   * to the ankle; knee 38 mm and hip 62 mm anterior to the ankle; so the line runs 14 mm anterior
   * of the knee and 10 mm posterior of the hip.
   */
  @Test
  void validation_theStandingGeometryOfWoodhull() throws BadInput {
    Standing standing =
        Legs.standing(Legs.load(LoadLineOwner.RIGHT_FOOT, 100, 252, 350, 0, Optional.empty()));
    List<Landmark> joints =
        List.of(
            Legs.mark(LandmarkKind.ANKLE_AXIS, Side.RIGHT, 100, 200, 70),
            Legs.mark(LandmarkKind.KNEE_CENTRE, Side.RIGHT, 100, 238, 490),
            Legs.mark(LandmarkKind.HIP, Side.RIGHT, 100, 262, 900));
    LoadLineResult past = LoadLineCheck.evaluate(standing, joints, Legs.rightFoot(Legs.NONE));
    assertThat(mm(past, LandmarkKind.ANKLE_AXIS, Plane.SAGITTAL, LoadLineMethod.VERTICAL))
        .isEqualTo(52);
    assertThat(mm(past, LandmarkKind.KNEE_CENTRE, Plane.SAGITTAL, LoadLineMethod.VERTICAL))
        .isEqualTo(14);
    assertThat(mm(past, LandmarkKind.HIP, Plane.SAGITTAL, LoadLineMethod.VERTICAL)).isEqualTo(-10);
  }

  /**
   * 3 % of body weight medio-lateral on a leg that carries half of it tilts the line by 3.434 deg;
   * at ankle, knee and hip of a person of 1.75 m it lies 4.10, 29.93 and 55.65 mm from the vertical
   * (heights .039, .285 and .530 of stature, Drillis and Contini 1966; computed independently).
   */
  @ParameterizedTest
  @CsvSource({"0.039, 4.10", "0.285, 29.93", "0.530, 55.65"})
  void validation_theMeasuredForcesLineAtTheHeightsOfDrillisAndContini(double height, double mm)
      throws BadInput {
    double lean = 0.03 / 0.5;
    assertThat(Math.toDegrees(Math.atan(lean))).isCloseTo(3.434, within(5e-4));
    Standing standing =
        Legs.standing(Legs.load(LoadLineOwner.LEFT_FOOT, -90, 0, 400, 0, Legs.lean(-lean, 0)));
    Landmark joint = Legs.mark(LandmarkKind.OTHER, Side.LEFT, -90, 0, 1750 * height);
    LoadLineResult past =
        LoadLineCheck.evaluate(standing, List.of(joint), Legs.how(PLATES, Legs.NONE, Side.LEFT));
    assertThat(mm(past, LandmarkKind.OTHER, Plane.FRONTAL, LoadLineMethod.VERTICAL)).isZero();
    assertThat(mm(past, LandmarkKind.OTHER, Plane.FRONTAL, LoadLineMethod.MEASURED_FORCE))
        .isCloseTo(mm, within(0.0051));
  }

  /** 80 kg, half the load, g = 9.80665: levers of 10, 15 and 30 mm, computed independently. */
  @ParameterizedTest
  @CsvSource({"10, 3.923", "15, 5.884", "30, 11.768"})
  void validation_momentsOfHalfTheWeightOf80Kg(double leverMm, double newtonMetres)
      throws BadInput {
    Standing standing =
        Legs.standing(
            Legs.load(LoadLineOwner.RIGHT_FOOT, 90, leverMm, 40 * 9.80665, 0.1, Optional.empty()));
    Landmark knee = Legs.mark(LandmarkKind.KNEE_CENTRE, Side.RIGHT, 90, 0, 490);
    Moment moment =
        LoadLineCheck.evaluate(standing, List.of(knee), Legs.rightFoot(Legs.NONE)).moments().get(0);
    assertThat(moment.newtonMetres().value()).isCloseTo(newtonMetres, within(5e-4));
    assertThat(moment.effect()).isEqualTo(MomentEffect.HOLDS_KNEE_AGAINST_EXTENSION_STOP);
    assertThat(moment.newtonMetres().standardUncertainty())
        .isCloseTo(40 * 9.80665 * 1e-4, within(1e-12));
  }

  @Test
  void leftAndRightMirrorExactly() throws BadInput {
    Standing right =
        Legs.standing(
            Legs.load(LoadLineOwner.LEFT_FOOT, -81.3, 12, 380, 1.7, Legs.lean(0.021, -0.004)),
            Legs.load(LoadLineOwner.RIGHT_FOOT, 93.1, 17, 410, 1.3, Legs.lean(-0.02, 0.004)),
            Legs.load(LoadLineOwner.WHOLE_BODY, 9.2, 14.6, 790, 1.1, Legs.lean(0.0001, 0.0002)));
    Standing left =
        Legs.standing(
            Legs.load(LoadLineOwner.LEFT_FOOT, -93.1, 17, 410, 1.3, Legs.lean(0.02, 0.004)),
            Legs.load(LoadLineOwner.RIGHT_FOOT, 81.3, 12, 380, 1.7, Legs.lean(-0.021, -0.004)),
            Legs.load(LoadLineOwner.WHOLE_BODY, -9.2, 14.6, 790, 1.1, Legs.lean(-0.0001, 0.0002)));
    LoadLineResult a =
        LoadLineCheck.evaluate(
            right,
            List.of(Legs.mark(LandmarkKind.KNEE_CENTRE, Side.RIGHT, 71, 5, 480)),
            Legs.how(PLATES, AssumedUncertainties.ASSUMED, Side.RIGHT));
    LoadLineResult b =
        LoadLineCheck.evaluate(
            left,
            List.of(Legs.mark(LandmarkKind.KNEE_CENTRE, Side.LEFT, -71, 5, 480)),
            Legs.how(PLATES, AssumedUncertainties.ASSUMED, Side.LEFT));
    assertThat(a.offsets()).hasSize(6).hasSameSizeAs(b.offsets());
    for (int i = 0; i < 6; i++) {
      assertThat(b.offsets().get(i).mm().value()).isEqualTo(a.offsets().get(i).mm().value());
      assertThat(b.offsets().get(i).mm().standardUncertainty())
          .isEqualTo(a.offsets().get(i).mm().standardUncertainty());
    }
    assertThat(a.moments()).hasSize(3);
    for (int i = 0; i < 3; i++) {
      assertThat(b.moments().get(i).newtonMetres().value())
          .isEqualTo(a.moments().get(i).newtonMetres().value());
      assertThat(b.moments().get(i).effect()).isEqualTo(a.moments().get(i).effect());
    }
  }

  @Test
  void theOffsetMovesOneToOneWithTheLandmark() throws BadInput {
    Standing standing =
        Legs.standing(Legs.load(LoadLineOwner.LEFT_FOOT, -81, 12, 380, 1.7, Optional.empty()));
    Landmark here = Legs.mark(LandmarkKind.KNEE_CENTRE, Side.LEFT, -64, 2, 480);
    Landmark there = Legs.mark(LandmarkKind.KNEE_CENTRE, Side.LEFT, -74, 9, 480);
    StanceConditions how = Legs.how(PLATES, AssumedUncertainties.ASSUMED, Side.LEFT);
    LoadLineResult a = LoadLineCheck.evaluate(standing, List.of(here), how);
    LoadLineResult b = LoadLineCheck.evaluate(standing, List.of(there), how);
    LandmarkKind knee = LandmarkKind.KNEE_CENTRE;
    assertThat(mm(a, knee, Plane.SAGITTAL, LoadLineMethod.VERTICAL)).isEqualTo(10);
    assertThat(mm(b, knee, Plane.SAGITTAL, LoadLineMethod.VERTICAL)).isEqualTo(3);
    assertThat(mm(a, knee, Plane.FRONTAL, LoadLineMethod.VERTICAL)).isEqualTo(17);
    assertThat(mm(b, knee, Plane.FRONTAL, LoadLineMethod.VERTICAL)).isEqualTo(7);
  }

  @Test
  void withBothFeetOnOnePlateThereIsNoFrontalOffset() throws BadInput {
    Standing standing =
        Legs.standing(Legs.load(LoadLineOwner.WHOLE_BODY, 0, 12, 800, 1.7, Optional.empty()));
    Stance both = new Stance.BothFeetOnOnePlate(Optional.empty());
    LoadLineResult past =
        LoadLineCheck.evaluate(
            standing,
            List.of(Legs.mark(LandmarkKind.KNEE_CENTRE, Side.LEFT, -64, 2, 480)),
            Legs.how(both, Legs.NONE, Side.LEFT));
    assertThat(past.offsets()).extracting(Offset::plane).containsExactly(Plane.SAGITTAL);
    assertThat(past.moments()).isEmpty();
    assertThat(past.remarks().get(0).topic()).isEqualTo(LoadLineRemark.WHOLE_BODY_LINE);
  }

  @Test
  void aHandThatHoldsGivesNoResult() {
    refused(
        handsAndFeet(true, false, 0),
        "sheet.yaml: no result: a hand holds on, and the plate does not show what it bears. If the"
            + " wearer needs the support, keep it: align by the instructions and by walking, and"
            + " note it with `record add CODE walking`. If a light touch is enough, record again"
            + " with hands: touching, between the rails and with help at hand.");
  }

  @Test
  void aFloorBelowThePlateGivesNoResult() {
    refused(
        handsAndFeet(false, true, -3.1),
        "sheet.yaml: expected the other foot within 3.0\u00a0mm of the plate's height, found it on"
            + " a floor 3.1\u00a0mm off. Put a block of the plate's height under it, or set the"
            + " plate flush with the floor, and record again.");
  }

  @Test
  void feetFarFromLevelGiveNoResult() {
    refused(
        handsAndFeet(false, false, 10.1),
        "sheet.yaml: expected both feet level within 10.0\u00a0mm, found one 10.1\u00a0mm higher."
            + " Put a block of the right height under the lower foot and record again.");
  }

  @Test
  void feetUpTo3MmApartPassAndUpTo10MmAreRemarked() throws BadInput {
    assertThat(remarks(handsAndFeet(false, true, -3))).isEmpty();
    assertThat(remarks(handsAndFeet(false, false, 3.1)))
        .containsExactly(LoadLineRemark.FEET_NOT_LEVEL);
    assertThat(remarks(handsAndFeet(false, false, -10)))
        .containsExactly(LoadLineRemark.FEET_NOT_LEVEL);
  }

  private static StanceConditions handsAndFeet(boolean holds, boolean floor, double higherMm) {
    return new StanceConditions(
        Place.of("sheet.yaml"),
        new Stance.ProstheticFootOnPlate(Optional.empty()),
        List.of(Side.RIGHT),
        false,
        false,
        false,
        holds,
        floor,
        OptionalDouble.of(higherMm),
        OptionalDouble.empty(),
        Legs.NONE,
        UseLimits.USUAL);
  }

  private static List<Object> remarks(StanceConditions how) throws BadInput {
    Standing standing =
        Legs.standing(Legs.load(LoadLineOwner.RIGHT_FOOT, 0, 12, 800, 1.7, Optional.empty()));
    return LoadLineCheck.evaluate(standing, List.of(), how).remarks().stream()
        .<Object>map(Remark::topic)
        .toList();
  }

  private static void refused(StanceConditions how, String sentence) {
    assertThatThrownBy(() -> remarks(how))
        .isInstanceOfSatisfying(
            BadInput.class,
            bad -> assertThat(WORDS.say(bad.problems().get(0))).isEqualTo(sentence));
  }
}
