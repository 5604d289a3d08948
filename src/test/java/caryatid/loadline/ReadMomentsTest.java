package caryatid.loadline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import caryatid.geometry.Plane;
import caryatid.geometry.Side;
import caryatid.remark.BadInput;
import caryatid.standing.Leaning;
import caryatid.standing.LoadLineOwner;
import caryatid.standing.Standing;
import caryatid.uncertainty.Cause;
import caryatid.uncertainty.Contribution;
import caryatid.uncertainty.Estimate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A knee 500 mm up, half of the pendulum's 1,000 mm, marked 80 mm to the right and 30 mm ahead. */
class ReadMomentsTest {
  private static final AssumedUncertainties DOUBTS =
      new AssumedUncertainties(0, 0, 0, 0, 1000, 0, 0, 1);

  private static Landmark knee(Side side) {
    return Legs.mark(LandmarkKind.KNEE_CENTRE, side, 80, 30, 500);
  }

  private static Leaning leaning(LoadLineOwner of) {
    return new Leaning(of, 4, 10, 0.3, 0.6);
  }

  private static double uOf(Coordinate at) {
    return new Estimate(at.mm(), at.doubts()).standardUncertainty();
  }

  /**
   * The body leaned 10 mm to the front and 4 mm to the right: the knee swung half of it. A fifth of
   * that is doubted for the pendulum, and half of the spread about the moment.
   */
  @Test
  void theWholeBodysSwingIsTakenOffInBothPlanes() {
    Landmark knee =
        ReadMoments.swungBack(knee(Side.RIGHT), leaning(LoadLineOwner.WHOLE_BODY), DOUBTS);
    assertThat(knee.anteriorMm().orElseThrow().mm()).isCloseTo(25, within(1e-12));
    assertThat(knee.rightMm().orElseThrow().mm()).isCloseTo(78, within(1e-12));
    assertThat(uOf(knee.anteriorMm().orElseThrow()))
        .isCloseTo(Math.hypot(0.2 * 5, 0.3), within(1e-12));
    assertThat(uOf(knee.rightMm().orElseThrow()))
        .isCloseTo(Math.hypot(0.2 * 2, 0.15), within(1e-12));
  }

  /** One foot shows 0.7 of the swing fore and aft, to 26 %, and none of it sideways. */
  @Test
  void ofOneFootTheSwingIsTakenOffForeAndAftAlone() {
    Landmark read = knee(Side.RIGHT);
    Landmark knee = ReadMoments.swungBack(read, leaning(LoadLineOwner.RIGHT_FOOT), DOUBTS);
    double swung = 5 / 0.7;
    assertThat(knee.anteriorMm().orElseThrow().mm()).isCloseTo(30 - swung, within(1e-12));
    assertThat(uOf(knee.anteriorMm().orElseThrow()))
        .isCloseTo(
            Math.sqrt((0.04 + 0.26 * 0.26) * swung * swung + 0.3 * 0.3 / 0.49), within(1e-12));
    assertThat(knee.rightMm()).isEqualTo(read.rightMm());
  }

  private static Estimate sagittal(Landmark landmark) throws BadInput {
    LoadLineOwner foot =
        landmark.side() == Side.RIGHT ? LoadLineOwner.RIGHT_FOOT : LoadLineOwner.LEFT_FOOT;
    Standing standing = Legs.standing(Legs.load(foot, 80, 60, 400, 1, Optional.empty()));
    StanceConditions how =
        Legs.how(
            new caryatid.standing.Stance.ProstheticFootOnPlate(Optional.empty()),
            DOUBTS,
            landmark.side());
    return LoadLineCheck.evaluate(standing, List.of(landmark), how).offsets().stream()
        .filter(offset -> offset.plane() == Plane.SAGITTAL)
        .filter(offset -> offset.kind() == LoadLineMethod.VERTICAL)
        .findFirst()
        .orElseThrow()
        .mm();
  }

  private static List<Contribution> movement(Estimate mm) {
    return mm.contributions().stream()
        .filter(c -> c.source().cause() == Cause.LANDMARK_MOVEMENT)
        .toList();
  }

  /**
   * Nobody knows when: 5 mm of sway over 0.7 times a half are 3.571 mm. Read where the body leaned
   * by 1 mm, the knee swung 0.714 mm, and a root of 0.2^2 + 0.26^2 of that and 0.6 / 0.7 / 2 mm are
   * left: 0.489 mm. Both legs alike.
   */
  @Test
  void theMomentTakesThePlaceOfASwingThatNobodyKnows() throws BadInput {
    for (Side side : Side.values()) {
      LoadLineOwner foot = side == Side.RIGHT ? LoadLineOwner.RIGHT_FOOT : LoadLineOwner.LEFT_FOOT;
      Estimate unknown = sagittal(knee(side));
      Estimate known =
          sagittal(ReadMoments.swungBack(knee(side), new Leaning(foot, 0.4, 1, 0.3, 0.6), DOUBTS));
      assertThat(movement(unknown)).hasSize(1);
      assertThat(movement(known)).hasSize(1);
      assertThat(movement(unknown).get(0).amount()).isCloseTo(3.571, within(0.001));
      assertThat(Math.abs(movement(known).get(0).amount())).isCloseTo(0.489, within(0.001));
      assertThat(movement(known).get(0).degreesOfFreedom()).isEqualTo(8);
      assertThat(known.value() - unknown.value()).isCloseTo(0.5 / 0.7, within(1e-12));
      assertThat(known.expanded(0.95)).isLessThan(0.6 * unknown.expanded(0.95));
    }
  }
}
