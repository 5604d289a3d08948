package caryatid.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import caryatid.geometry.Plane;
import caryatid.geometry.Side;
import caryatid.loadline.Coordinate;
import caryatid.loadline.Landmark;
import caryatid.loadline.LandmarkInPlane;
import caryatid.loadline.LandmarkKind;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Rotation;
import org.apache.commons.math3.geometry.euclidean.threed.RotationConvention;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class KinematicsTest {
  static final String KNEE = "knee centre";
  static final String ANKLE = "ankle axis";

  static Landmark landmark(
      String name, LandmarkKind kind, Side side, double lateral, double anterior, double up) {
    return new Landmark(
        name,
        kind,
        side,
        Optional.of(new Coordinate(side.lateral() * lateral, List.of())),
        Optional.of(new Coordinate(anterior, List.of())),
        up,
        Optional.of("axis"));
  }

  static LegChain leg(boolean prostheticKnee, Side side) {
    return new LegChain(
        side,
        prostheticKnee,
        List.of(
            landmark(KNEE, LandmarkKind.KNEE_CENTRE, side, 110, 10, 510.5),
            landmark(ANKLE, LandmarkKind.ANKLE_AXIS, side, 105, -30, 80),
            landmark("socket", LandmarkKind.SOCKET_REFERENCE_POINT, side, 108, 5, 350)));
  }

  private static Kinematics of(LegChain leg) {
    return new Kinematics(leg, Optional.of(new double[] {112, 25}));
  }

  private static double slope(LegChain leg, ChangeKind kind, Plane plane, String landmark) {
    return of(leg).slope(kind, new LandmarkInPlane(plane, leg.side(), landmark)).orElseThrow();
  }

  /**
   * Validation: check-values, section 9: a heel of another height tilts by atan(dh / 170) and moves
   * a knee 430.5 mm above the ankle by these (C). The knee here stands over the ankle.
   */
  @ParameterizedTest
  @CsvSource({"3, 7.60", "5, 12.66", "8, 20.24", "10, 25.28", "20, 50.30"})
  void aHeelOfAnotherHeightTiltsTheLegForward(double heelMm, double kneeMm) {
    Landmark knee = landmark(KNEE, LandmarkKind.KNEE_CENTRE, Side.LEFT, 110, -30, 510.5);
    LegChain leg =
        new LegChain(
            Side.LEFT,
            false,
            List.of(knee, landmark(ANKLE, LandmarkKind.ANKLE_AXIS, Side.LEFT, 105, -30, 80)));
    double[] to = of(leg).moved(ChangeKind.HEEL, heelMm, knee).orElseThrow();
    assertThat(to[1] + 30).isCloseTo(kneeMm, within(0.006));
  }

  /** Validation by hand: 430.5 mm times two sines of half a degree is 7.513 mm. */
  @Test
  void aDegreeOfPlantarflexionBringsTheLineForwardAtTheKneeAndNotAtTheAnkle() {
    LegChain leg = leg(false, Side.RIGHT);
    assertThat(slope(leg, ChangeKind.PLANTARFLEXION, Plane.SAGITTAL, KNEE))
        .isCloseTo(7.5135, within(1e-3));
    assertThat(slope(leg, ChangeKind.PLANTARFLEXION, Plane.SAGITTAL, ANKLE)).isZero();
    assertThat(slope(leg, ChangeKind.INVERSION, Plane.FRONTAL, KNEE))
        .isCloseTo(7.5135, within(1e-3));
  }

  /** By hand: the foot 5 mm forward leaves the leg 5 mm behind its line. */
  @Test
  void shiftsMoveWhatIsAboveThem() {
    LegChain below = leg(false, Side.RIGHT);
    assertThat(slope(below, ChangeKind.FOOT_FORWARD, Plane.SAGITTAL, ANKLE)).isEqualTo(1);
    assertThat(slope(below, ChangeKind.FOOT_FORWARD, Plane.SAGITTAL, KNEE)).isEqualTo(1);
    assertThat(slope(below, ChangeKind.FOOT_LATERAL, Plane.FRONTAL, KNEE)).isEqualTo(1);
    assertThat(slope(below, ChangeKind.SOCKET_FORWARD, Plane.SAGITTAL, KNEE)).isEqualTo(-1);
    assertThat(slope(below, ChangeKind.SOCKET_FORWARD, Plane.SAGITTAL, ANKLE)).isZero();
    LegChain above = leg(true, Side.RIGHT);
    assertThat(slope(above, ChangeKind.SOCKET_FORWARD, Plane.SAGITTAL, KNEE)).isZero();
    assertThat(slope(above, ChangeKind.KNEE_FORWARD, Plane.SAGITTAL, KNEE)).isEqualTo(-1);
  }

  /** Validation: finite rotations by Commons Math, about an axis to the left and one forward. */
  @ParameterizedTest
  @CsvSource({"7.5, 1", "-12, 1", "4, 0", "-9, 0"})
  void tiltsAreTheFiniteRotationsOfCommonsMath(double deg, int axis) {
    double[] from = {110, 10, 510.5};
    double[] about = {105, -30, 80};
    double[] to = Kinematics.tilted(from, about, axis, Math.toRadians(deg));
    Vector3D around = axis == 1 ? Vector3D.PLUS_I : Vector3D.MINUS_J;
    Rotation rotation =
        new Rotation(around, Math.toRadians(deg), RotationConvention.VECTOR_OPERATOR);
    Vector3D expected =
        rotation.applyTo(new Vector3D(from).subtract(new Vector3D(about))).add(new Vector3D(about));
    assertThat(to).containsExactly(expected.toArray(), within(1e-9));
  }

  /** Validation: the foot's turn by Commons Math, about the upright axis through the ankle. */
  @Test
  void aTurnOfTheFootCarriesTheLineAboutTheAnkle() {
    LegChain leg = leg(false, Side.RIGHT);
    Rotation half =
        new Rotation(Vector3D.MINUS_K, Math.toRadians(0.5), RotationConvention.VECTOR_OPERATOR);
    Vector3D line = new Vector3D(7, 55, 0);
    Vector3D turned = half.applyTo(line).subtract(half.applyInverseTo(line));
    assertThat(slope(leg, ChangeKind.FOOT_ROTATION, Plane.FRONTAL, KNEE))
        .isCloseTo(turned.getX(), within(1e-9));
    assertThat(slope(leg, ChangeKind.FOOT_ROTATION, Plane.SAGITTAL, KNEE))
        .isCloseTo(turned.getY(), within(1e-9));
  }

  @ParameterizedTest
  @EnumSource(ChangeKind.class)
  void leftAndRightMirror(ChangeKind kind) {
    for (Plane plane : Plane.values()) {
      assertThat(slope(leg(false, Side.LEFT), kind, plane, KNEE))
          .isEqualTo(slope(leg(false, Side.RIGHT), kind, plane, KNEE));
    }
  }

  @Test
  void whatIsNotMarkedIsNotKnown() {
    LegChain noAnkle =
        new LegChain(
            Side.LEFT,
            false,
            List.of(landmark(KNEE, LandmarkKind.KNEE_CENTRE, Side.LEFT, 110, 10, 510)));
    LandmarkInPlane knee = new LandmarkInPlane(Plane.SAGITTAL, Side.LEFT, KNEE);
    Kinematics geometry = new Kinematics(noAnkle, Optional.empty());
    assertThat(geometry.slope(ChangeKind.PLANTARFLEXION, knee)).isEmpty();
    assertThat(geometry.slope(ChangeKind.SOCKET_FLEXION, knee)).isEmpty();
    assertThat(geometry.slope(ChangeKind.FOOT_ROTATION, knee)).isEmpty();
    assertThat(geometry.slope(ChangeKind.FOOT_FORWARD, knee)).hasValue(1);
  }
}
