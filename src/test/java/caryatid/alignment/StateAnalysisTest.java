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
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
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
  void oneStandCarriesWhatIsUsualBetweenStandsItsSwayIncluded() throws BadInput {
    Estimate mm = sagittal(state(REPEAT_ONLY, 14));
    assertThat(mm.value()).isEqualTo(14);
    assertThat(mm.standardUncertainty()).isCloseTo(5, within(1e-9));
    assertThat(mm.degreesOfFreedom()).isEqualTo(4);
    assertThat(u(mm, Cause.REPEATABILITY)).isEqualTo(5);
    assertThat(u(mm, Cause.SWAY)).isZero();
  }

  /** Sway of 1.5 mm alone, where nothing is usual between stands. */
  @Test
  void theScatterIsNeverTakenForLessThanTheSwayWithinTheStands() throws BadInput {
    AssumedUncertainties steady = new AssumedUncertainties(0, 0, 0, 0, 1e12, 1, 1, 4);
    assertThat(sagittal(state(steady, 14)).standardUncertainty()).isCloseTo(1.5, within(1e-12));
    assertThat(sagittal(state(steady, 14, 14)).standardUncertainty())
        .isCloseTo(1.5 / Math.sqrt(2), within(1e-12));
  }

  /** Mean 14 mm, standard deviation 2 mm: (4 * 25 + 2 * 4) / 6 is 18, over three stands 6. */
  @Test
  void threeStandsArePooledWithWhatIsUsual() throws BadInput {
    Estimate mm = sagittal(state(REPEAT_ONLY, 12, 14, 16));
    assertThat(mm.value()).isCloseTo(14, within(1e-12));
    assertThat(mm.standardUncertainty()).isCloseTo(Math.sqrt(6), within(1e-9));
    assertThat(mm.degreesOfFreedom()).isCloseTo(6, within(1e-9));
    assertThat(u(mm, Cause.SWAY)).isZero();
  }

  /** One difference is pooled with the default: (4 * 25 + 8) / 5 over two stands, five degrees. */
  @Test
  void twoStandsArePooledWithWhatIsUsual() throws BadInput {
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

  /** t(6) 0.975 is 2.446912; times root 2 times root 6. */
  @Test
  void theSmallestDifferenceThatCountsDoublesWhatStatesDoNotShare() throws BadInput {
    StateOffset offset = state(REPEAT_ONLY, 12, 14, 16).offsets().get(0);
    assertThat(offset.smallestDifferenceMm()).isCloseTo(2.446912 * Math.sqrt(12), within(1e-5));
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

  private static EarlierState before(int stands, double spreadMm) {
    OptionalDouble spread = stands == 1 ? OptionalDouble.empty() : OptionalDouble.of(spreadMm);
    return new EarlierState(
        "0",
        "T0",
        OffsetDateTime.parse("2025-12-01T00:00Z"),
        "barefoot",
        0,
        stands,
        List.of(
            new EarlierState.EarlierOffset(
                KNEE.at(Plane.FRONTAL), LoadLineOwner.RIGHT_FOOT, 40, OptionalDouble.empty()),
            new EarlierState.EarlierOffset(
                Legs.mark(LandmarkKind.ANKLE_AXIS, Side.RIGHT, 80, 0, 80).at(Plane.SAGITTAL),
                LoadLineOwner.RIGHT_FOOT,
                90,
                spread)),
        false);
  }

  private static Estimate sagittal(List<EarlierState> before, double... anteriorMm)
      throws BadInput {
    return sagittal(StateAnalysis.of(state(REPEAT_ONLY, anteriorMm).stands(), REPEAT_ONLY, before));
  }

  /** (4 * 25 + 2 * 64 + 1 * 8) / 7 over two stands; where the states' means lie does not count. */
  @Test
  void earlierStatesOfSeveralStandsTellTheScatterOfTheSameLine() throws BadInput {
    Estimate mm = sagittal(List.of(before(3, 8), before(1, 0)), 12, 16);
    assertThat(mm.standardUncertainty()).isCloseTo(Math.sqrt(236.0 / 7 / 2), within(1e-9));
    assertThat(mm.degreesOfFreedom()).isCloseTo(7, within(1e-9));
    assertThat(sagittal(List.of(before(1, 0)), 12, 16)).isEqualTo(sagittal(List.of(), 12, 16));
    Estimate one = sagittal(List.of(before(3, 8)), 14);
    assertThat(one.standardUncertainty()).isCloseTo(Math.sqrt(228.0 / 6), within(1e-9));
    assertThat(one.degreesOfFreedom()).isCloseTo(6, within(1e-9));
  }

  @Test
  void noMoreThanTwelveDegreesAreBelieved() throws BadInput {
    assertThat(degrees(before(9, 5))).isEqualTo(12);
    assertThat(degrees(before(8, 5))).isEqualTo(11);
    assertThat(degrees(before(20, 5))).isEqualTo(12);
  }

  private static double degrees(EarlierState before) throws BadInput {
    return sagittal(List.of(before), 14).contributions().stream()
        .filter(c -> c.source().cause() == Cause.REPEATABILITY)
        .findFirst()
        .orElseThrow()
        .degreesOfFreedom();
  }

  /** F(2, 4) 0.90 is 4.3246, so a standard deviation of three stands above 10.398 mm. */
  @Test
  void aWearerWhoScattersMoreThanNineOfTenIsToldToNeedFiveStands() throws BadInput {
    assertThat(restless(before(3, 10.39), 14)).isEmpty();
    assertThat(restless(before(3, 10.41), 14)).hasSize(1);
    assertThat(restless(before(3, 10.41), 4, 9, 14, 19, 24)).isEmpty();
    assertThat(Wording.in(Locale.ENGLISH).say(restless(before(3, 10.41), 14).get(0)))
        .isEqualTo(
            "This wearer's stands scatter more than usual (sagittal, KNEE_CENTRE (right): standard"
                + " deviation 10.4\u00a0mm over all states, usual 5.0\u00a0mm). Make five stands of"
                + " each state, stepping off between.");
  }

  private static List<Remark> restless(EarlierState before, double... anteriorMm) throws BadInput {
    AlignmentState state =
        StateAnalysis.of(state(REPEAT_ONLY, anteriorMm).stands(), REPEAT_ONLY, List.of(before));
    return state.remarks().stream().filter(r -> r.topic() == StateRemark.FIVE_STANDS).toList();
  }

  private static List<Topic> topics(AlignmentState state) {
    return state.remarks().stream().map(Remark::topic).toList();
  }

  @Test
  void adviceNamesWhatDominatesAndWhatHelpsMost() throws BadInput {
    PrecisionHint one = state(REPEAT_ONLY, 14).offsets().get(0).hint().orElseThrow();
    assertThat(one.dominant()).isEqualTo(Cause.REPEATABILITY);
    assertThat(one.dominantShare()).isCloseTo(1, within(1e-9));
    assertThat(one.remedy()).isEqualTo(PrecisionHint.Remedy.REPEAT);
    AssumedUncertainties tilted = new AssumedUncertainties(0.05, 0, 0, 0, 1e12, 5, 3.5, 4);
    PrecisionHint level = state(tilted, 14, 14.1, 13.9).offsets().get(0).hint().orElseThrow();
    assertThat(level.dominant()).isEqualTo(Cause.LEVEL);
    assertThat(level.remedy()).isEqualTo(PrecisionHint.Remedy.LEVEL_PLATE);
    double levelMm = 2.306004 * 0.05 * 490;
    assertThat(level.halfWidthThenMm())
        .isCloseTo(
            Math.sqrt(Math.pow(level.halfWidthMm(), 2) - 0.75 * levelMm * levelMm), within(1e-4));
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
                + " 13.9\u00a0mm). What would help most: repeat the stand, stepping off between, to"
                + " about 7.1\u00a0mm.");
  }

  @Test
  void threeLikeStandsDecide() throws BadInput {
    AlignmentState state = state(REPEAT_ONLY, 14, 15, 16);
    assertThat(state.remarks())
        .extracting(Remark::topic)
        .containsExactly(StateRemark.LANDMARKS_SHARED, StateRemark.SMALLEST_DIFFERENCE);
    assertThat(Wording.in(Locale.ENGLISH).say(state.remarks().get(1)))
        .isEqualTo(
            "Measured in the same way after a change, the sagittal offset at KNEE_CENTRE (right)"
                + " must differ by at least 8.2\u00a0mm to count as changed.");
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
