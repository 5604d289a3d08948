package caryatid.alignment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import caryatid.geometry.Plane;
import caryatid.geometry.Side;
import caryatid.loadline.AssumedUncertainties;
import caryatid.loadline.Landmark;
import caryatid.loadline.LandmarkKind;
import caryatid.loadline.Legs;
import caryatid.loadline.LoadLineRemark;
import caryatid.loadline.Target;
import caryatid.loadline.Verdict;
import caryatid.remark.BadInput;
import caryatid.remark.Remark;
import caryatid.remark.Topic;
import caryatid.standing.LoadLineOwner;
import caryatid.standing.Standing;
import caryatid.uncertainty.Cause;
import caryatid.uncertainty.Contribution;
import caryatid.uncertainty.Estimate;
import caryatid.wording.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class StateAnalysisTest {
  private static final Landmark KNEE = Legs.mark(LandmarkKind.KNEE_CENTRE, Side.RIGHT, 80, 0, 490);
  private static final Target TARGET =
      Legs.target(Plane.SAGITTAL, LandmarkKind.KNEE_CENTRE, 15, 10, 10);
  private static final AssumedUncertainties REPEAT_ONLY =
      new AssumedUncertainties(0, 0, 0, 0, 1e12, 5, 3.5, 4);

  private static Standing standing(double anteriorMm) {
    return Legs.standing(
        Legs.load(LoadLineOwner.RIGHT_FOOT, 85, anteriorMm, 400, 1.5, Optional.empty()));
  }

  private static AlignmentState state(AssumedUncertainties doubts, double... anteriorMm)
      throws BadInput {
    List<Stand> stands = new ArrayList<>();
    for (double mm : anteriorMm) {
      stands.add(Stands.of(standing(mm), KNEE, Legs.rightFoot(doubts), TARGET));
    }
    return StateAnalysis.of(stands, doubts);
  }

  private static Estimate sagittal(AlignmentState state) {
    return state.findings().get(0).offset().mm();
  }

  private static double u(Estimate mm, Cause cause) {
    return mm.contributions().stream()
        .filter(c -> c.source().cause() == cause)
        .mapToDouble(Contribution::amount)
        .sum();
  }

  @Test
  void oneStandCarriesTheAssumedDifferenceBetweenStandsBesideItsSway() throws BadInput {
    Estimate mm = sagittal(state(REPEAT_ONLY, 14));
    assertThat(mm.value()).isEqualTo(14);
    assertThat(mm.standardUncertainty()).isCloseTo(Math.hypot(1.5, 5), within(1e-9));
    assertThat(u(mm, Cause.REPEATABILITY)).isEqualTo(5);
  }

  /** Mean 14 mm, standard deviation 2 mm, so 2 / sqrt 3 with two degrees of freedom. */
  @Test
  void threeStandsShowTheirDifferenceThemselves() throws BadInput {
    Estimate mm = sagittal(state(REPEAT_ONLY, 12, 14, 16));
    assertThat(mm.value()).isCloseTo(14, within(1e-12));
    assertThat(mm.standardUncertainty()).isCloseTo(2 / Math.sqrt(3), within(1e-9));
    assertThat(mm.degreesOfFreedom()).isCloseTo(2, within(1e-9));
    assertThat(u(mm, Cause.SWAY)).isZero();
  }

  /** One difference is pooled with the default: (4 * 25 + 8) / 5 over two stands, five degrees. */
  @Test
  void twoStandsArePooledWithTheDefault() throws BadInput {
    Estimate mm = sagittal(state(REPEAT_ONLY, 12, 16));
    assertThat(mm.standardUncertainty()).isCloseTo(Math.sqrt(108.0 / 5 / 2), within(1e-9));
    assertThat(mm.degreesOfFreedom()).isCloseTo(5, within(1e-6));
  }

  @Test
  void whatAllStandsShareIsNotAveragedAway() throws BadInput {
    AssumedUncertainties level = new AssumedUncertainties(0.004, 0, 0, 0, 1e12, 5, 3.5, 4);
    assertThat(u(sagittal(state(level, 12, 14, 16)), Cause.LEVEL))
        .isCloseTo(0.004 * 490, within(1e-12));
  }

  /** t(2) 0.975 is 4.303; times root 2 times 2 / root 3. */
  @Test
  void theSmallestDifferenceThatCountsDoublesWhatStatesDoNotShare() throws BadInput {
    StateOffset offset = state(REPEAT_ONLY, 12, 14, 16).offsets().get(0);
    assertThat(offset.smallestDifferenceMm())
        .isCloseTo(4.303 * Math.sqrt(2) * 2 / Math.sqrt(3), within(2e-3));
    AssumedUncertainties level = new AssumedUncertainties(0.004, 0, 0, 0, 1e12, 5, 3.5, 4);
    assertThat(state(level, 12, 14, 16).offsets().get(0).smallestDifferenceMm())
        .isEqualTo(offset.smallestDifferenceMm());
  }

  /**
   * Two stands: the variance of the difference against the default's, F(1, 4) 0.95 is 7.709; for a
   * default of 5 mm the standard deviation of two is more than 13.88 mm from 19.63 mm apart on.
   */
  @Test
  void standsThatDifferByMoreThanIsUsualAreRemarked() throws BadInput {
    assertThat(topics(state(REPEAT_ONLY, 12, 12 + 19.6)))
        .doesNotContain(StateRemark.STANDS_DISAGREE);
    assertThat(topics(state(REPEAT_ONLY, 12, 12 + 19.7))).contains(StateRemark.STANDS_DISAGREE);
  }

  private static List<Topic> topics(AlignmentState state) {
    return state.remarks().stream().map(Remark::topic).toList();
  }

  @Test
  void adviceNamesWhatDominatesAndWhatHelpsMost() throws BadInput {
    PrecisionHint one = state(REPEAT_ONLY, 14).offsets().get(0).hint().orElseThrow();
    assertThat(one.dominant()).isEqualTo(Cause.REPEATABILITY);
    assertThat(one.dominantShare()).isCloseTo(25 / 27.25, within(1e-9));
    assertThat(one.remedy()).isEqualTo(PrecisionHint.Remedy.REPEAT);
    AssumedUncertainties tilted = new AssumedUncertainties(0.05, 0, 0, 0, 1e12, 5, 3.5, 4);
    PrecisionHint level = state(tilted, 14, 14.1, 13.9).offsets().get(0).hint().orElseThrow();
    assertThat(level.dominant()).isEqualTo(Cause.LEVEL);
    assertThat(level.remedy()).isEqualTo(PrecisionHint.Remedy.LEVEL_PLATE);
    assertThat(level.halfWidthThenMm()).isCloseTo(level.halfWidthMm() / 2, within(0.1));
  }

  @Test
  void aLineThatMayRunBehindTheProstheticKneeIsTheFirstRemark() throws BadInput {
    AlignmentState state = state(REPEAT_ONLY, 13);
    assertThat(state.remarks())
        .extracting(Remark::topic)
        .containsExactly(
            LoadLineRemark.LINE_MAY_BE_BEHIND_KNEE,
            StateRemark.TOLERANCE_TOO_NARROW,
            StateRemark.ONE_STAND,
            StateRemark.SMALLEST_DIFFERENCE);
    assertThat(state.findings().get(0).verdict()).isEqualTo(Verdict.INSIDE_TOO_CLOSE);
  }

  @Test
  void aToleranceThatCannotBeDecidedSaysWhatWouldDecideIt() throws BadInput {
    Remark remark =
        state(REPEAT_ONLY, 40).remarks().stream()
            .filter(r -> r.topic() == StateRemark.TOLERANCE_TOO_NARROW)
            .findFirst()
            .orElseThrow();
    assertThat(Wording.in(Locale.ENGLISH).say(remark))
        .isEqualTo(
            "The sagittal tolerance at KNEE_CENTRE (right), half-width 10.0\u00a0mm, is narrower"
                + " than this measurement can decide (half-width of its 95 % interval"
                + " 14.0\u00a0mm). What would help most: repeat the stand, stepping off between, to"
                + " about 13.0\u00a0mm.");
  }

  @Test
  void threeLikeStandsDecide() throws BadInput {
    AlignmentState state = state(REPEAT_ONLY, 14, 15, 16);
    assertThat(state.remarks())
        .extracting(Remark::topic)
        .containsExactly(StateRemark.LANDMARKS_SHARED, StateRemark.SMALLEST_DIFFERENCE);
    assertThat(Wording.in(Locale.ENGLISH).say(state.remarks().get(1)))
        .isEqualTo(
            "After a change, the sagittal offset at KNEE_CENTRE (right) counts as different from"
                + " 3.5\u00a0mm on, measured again in the same way.");
    assertThat(state.findings().get(0).verdict()).isEqualTo(Verdict.WITHIN);
  }

  /** Five points are comparable, more are not. */
  @Test
  void standsWithOtherLoadSharesAreNotComparable() throws BadInput {
    assertThat(shares(0.45, 0.50))
        .extracting(Remark::topic)
        .doesNotContain(StateRemark.SHARES_DIFFER);
    assertThat(shares(0.45, 0.5001)).extracting(Remark::topic).contains(StateRemark.SHARES_DIFFER);
  }

  private static List<Remark> shares(double a, double b) throws BadInput {
    List<Stand> stands = new ArrayList<>();
    for (double share : new double[] {a, b, a}) {
      Standing standing = Stands.bearing(standing(40), share);
      stands.add(Stands.of(standing, KNEE, Legs.rightFoot(REPEAT_ONLY)));
    }
    return StateAnalysis.of(stands, REPEAT_ONLY).remarks();
  }

  @Test
  void aStateNeedsAStandAndTheSameLandmarks() throws BadInput {
    assertThatThrownBy(() -> StateAnalysis.of(List.of(), REPEAT_ONLY))
        .hasMessage("a state without a stand");
    Landmark ankle = Legs.mark(LandmarkKind.ANKLE_AXIS, Side.RIGHT, 80, 0, 80);
    Stand a = Stands.of(standing(1), KNEE, Legs.rightFoot(REPEAT_ONLY));
    Stand b = Stands.of(standing(1), ankle, Legs.rightFoot(REPEAT_ONLY));
    assertThatThrownBy(() -> StateAnalysis.of(List.of(a, b), REPEAT_ONLY))
        .hasMessage("stands differ in their landmarks");
  }
}
