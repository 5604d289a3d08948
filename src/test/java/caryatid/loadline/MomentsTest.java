package caryatid.loadline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import caryatid.geometry.Plane;
import caryatid.geometry.Side;
import caryatid.remark.BadInput;
import caryatid.remark.Remark;
import caryatid.standing.LoadLineOwner;
import caryatid.standing.Stance;
import caryatid.standing.Standing;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MomentsTest {
  private static final Stance PLATES = new Stance.PlatePerFoot("left", "right");

  /** A left foot of 400 N that leans inward by 0.02, and both feet together by {@code together}. */
  private static LoadLineResult past(
      LandmarkKind kind, double lateralMm, double anteriorMm, double together, boolean prosthetic)
      throws BadInput {
    Standing standing =
        Legs.standing(
            Legs.load(
                LoadLineOwner.LEFT_FOOT, -90 - lateralMm, anteriorMm, 400, 1, Legs.lean(0.02, 0)),
            Legs.load(LoadLineOwner.RIGHT_FOOT, 90, 0, 400, 1, Legs.lean(-0.02, 0)),
            Legs.load(LoadLineOwner.WHOLE_BODY, 0, 0, 800, 1, Legs.lean(together, 0)));
    Landmark joint = Legs.mark(kind, Side.LEFT, -90, 0, 500);
    Side side = prosthetic ? Side.LEFT : Side.RIGHT;
    return LoadLineCheck.evaluate(standing, List.of(joint), Legs.how(PLATES, Legs.NONE, side));
  }

  private static Moment moment(LoadLineResult past, Plane plane, LoadLineMethod kind) {
    return past.moments().stream()
        .filter(m -> m.at().plane() == plane && m.kind() == kind)
        .findFirst()
        .orElseThrow();
  }

  @ParameterizedTest
  @CsvSource({
    "KNEE_CENTRE, 12, true, HOLDS_KNEE_AGAINST_EXTENSION_STOP",
    "KNEE_CENTRE, 12, false, STRAIGHTENS_THE_KNEE",
    "KNEE_CENTRE, -12, true, BENDS_THE_KNEE",
    "KNEE_CENTRE, -12, false, BENDS_THE_KNEE",
    "ANKLE_AXIS, 40, true, DORSIFLEXES_THE_ANKLE",
    "ANKLE_AXIS, -40, true, PLANTARFLEXES_THE_ANKLE",
    "KNEE_CENTRE, 1.9, true, TOO_SMALL_TO_TELL",
    "KNEE_CENTRE, 2.0, true, HOLDS_KNEE_AGAINST_EXTENSION_STOP",
    "KNEE_CENTRE, -1.9, true, TOO_SMALL_TO_TELL"
  })
  void theSenseIsSaidInWords(
      LandmarkKind kind, double anteriorMm, boolean prosthetic, MomentEffect effect)
      throws BadInput {
    LoadLineResult past = past(kind, 0, anteriorMm, 0, prosthetic);
    Moment moment = moment(past, Plane.SAGITTAL, LoadLineMethod.VERTICAL);
    assertThat(moment.newtonMetres().value()).isCloseTo(0.4 * anteriorMm, within(1e-12));
    assertThat(moment.effect()).isEqualTo(effect);
  }

  /** The force leans inward: 0.02 x 500 mm = 10 mm from the vertical at the joint. */
  @ParameterizedTest
  @CsvSource({
    "KNEE_CENTRE, 15, VALGUS",
    "KNEE_CENTRE, 5, VARUS",
    "ANKLE_AXIS, 15, EVERTS_THE_FOOT",
    "ANKLE_AXIS, 5, INVERTS_THE_FOOT"
  })
  void frontalMomentsFollowTheMeasuredForceAlone(
      LandmarkKind kind, double lateralMm, MomentEffect effect) throws BadInput {
    LoadLineResult past = past(kind, lateralMm, 0, 0, true);
    Moment moment = moment(past, Plane.FRONTAL, LoadLineMethod.MEASURED_FORCE);
    assertThat(moment.newtonMetres().value()).isCloseTo(0.4 * (lateralMm - 10), within(1e-12));
    assertThat(moment.effect()).isEqualTo(effect);
    assertThat(past.moments())
        .noneMatch(m -> m.at().plane() == Plane.FRONTAL && m.kind() == LoadLineMethod.VERTICAL);
  }

  /** Both feet bear 800 N, 800 / 9.80665 kg. */
  @Test
  void aMomentForEachKilogramFollowsTheWeightWhereNoMassIsStated() throws BadInput {
    Moment moment =
        moment(
            past(LandmarkKind.KNEE_CENTRE, 0, 12, 0, true),
            Plane.SAGITTAL,
            LoadLineMethod.VERTICAL);
    assertThat(moment.newtonMetresPerKg().orElseThrow().value())
        .isCloseTo(4.8 * 9.80665 / 800, within(1e-12));
  }

  /** Half of 80 kg at a lever of 15 mm: 5.884 N m (computed from g = 9.80665), over 80 kg. */
  @Test
  void aStatedMassIsTakenForMomentsForEachKilogram() throws BadInput {
    Standing standing =
        Legs.standing(
            Legs.load(LoadLineOwner.RIGHT_FOOT, 0, 15, 40 * 9.80665, 1, Optional.empty()));
    Landmark knee = Legs.mark(LandmarkKind.KNEE_CENTRE, Side.RIGHT, 0, 0, 500);
    Moment moment =
        LoadLineCheck.evaluate(standing, List.of(knee), Legs.rightFootOf(80)).moments().get(0);
    assertThat(moment.newtonMetres().value()).isCloseTo(5.884, within(5e-4));
    assertThat(moment.newtonMetresPerKg().orElseThrow().value())
        .isCloseTo(5.884 / 80, within(1e-5));
  }

  /** 0.3 deg, both sides of it. */
  @Test
  void horizontalForceThatDoesNotCancelIsNotTrusted() throws BadInput {
    double limit = Math.toRadians(0.3);
    assertThat(past(LandmarkKind.KNEE_CENTRE, 15, 0, limit, true).remarks()).isEmpty();
    LoadLineResult past = past(LandmarkKind.KNEE_CENTRE, 15, 0, limit + 1e-9, true);
    assertThat(past.moments()).noneMatch(m -> m.at().plane() == Plane.FRONTAL);
    assertThat(past.remarks())
        .extracting(Remark::topic)
        .containsExactly(LoadLineRemark.FRONTAL_MOMENT_UNTRUSTED);
  }

  /** One plate under one foot: nothing shows whether its horizontal force can be trusted. */
  @Test
  void oneFootAloneHasNoFrontalMoment() throws BadInput {
    Standing standing =
        Legs.standing(Legs.load(LoadLineOwner.RIGHT_FOOT, 90, 12, 400, 1, Legs.lean(-0.02, 0)));
    LoadLineResult past =
        LoadLineCheck.evaluate(
            standing,
            List.of(Legs.mark(LandmarkKind.KNEE_CENTRE, Side.RIGHT, 80, 0, 500)),
            Legs.how(new Stance.ProstheticFootOnPlate(Optional.empty()), Legs.NONE, Side.RIGHT));
    assertThat(past.moments()).extracting(m -> m.at().plane()).containsOnly(Plane.SAGITTAL);
    assertThat(past.remarks())
        .extracting(Remark::topic)
        .containsExactly(LoadLineRemark.FRONTAL_MOMENT_UNTRUSTED);
  }

  @Test
  void aHipHasAnOffsetButNoMoment() throws BadInput {
    LoadLineResult past = past(LandmarkKind.HIP, 0, 5, 0, true);
    assertThat(past.offsets()).isNotEmpty();
    assertThat(past.moments()).isEmpty();
  }
}
