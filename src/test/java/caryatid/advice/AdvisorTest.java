package caryatid.advice;

import static caryatid.advice.AdvisedLeg.ANKLE;
import static caryatid.advice.AdvisedLeg.ANKLE_SIDE;
import static caryatid.advice.AdvisedLeg.FLEXION;
import static caryatid.advice.AdvisedLeg.FORWARD;
import static caryatid.advice.AdvisedLeg.KNEE;
import static caryatid.advice.AdvisedLeg.KNEE_FRONT;
import static caryatid.advice.AdvisedLeg.ONCE_FORWARD;
import static caryatid.advice.AdvisedLeg.SOCKET_ONCE_BACK;
import static caryatid.advice.AdvisedLeg.offset;
import static caryatid.advice.AdvisedLeg.target;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import caryatid.advice.Situation.Circumstance;
import caryatid.geometry.Plane;
import caryatid.geometry.Side;
import caryatid.loadline.Landmark;
import caryatid.loadline.LandmarkInPlane;
import caryatid.loadline.LoadLineMethod;
import caryatid.loadline.Offset;
import caryatid.remark.Remark;
import caryatid.remark.Topic;
import caryatid.standing.LoadLineOwner;
import caryatid.uncertainty.Cause;
import caryatid.uncertainty.Contribution;
import caryatid.uncertainty.Estimate;
import caryatid.uncertainty.Source;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class AdvisorTest {
  private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);

  private static MeasuredState state(int name, double plantarflexion, double kneeMm) {
    return AdvisedLeg.state(name, plantarflexion, kneeMm);
  }

  private static List<Topic> topics(Advice advice) {
    return advice.remarks().stream().map(Remark::topic).toList();
  }

  private static double firstBy(Advice advice) {
    return advice.proposals().get(0).first().by();
  }

  @Test
  void aLineTooFarBackIsBroughtForwardByPlantarflexion() {
    Advice advice = new AdvisedLeg().kneeAt(-10).advice();
    assertThat(advice.outcome()).isEqualTo(AdviceOutcome.CHANGE);
    Proposal first = advice.proposals().get(0);
    assertThat(first.first().of().kind()).isEqualTo(ChangeKind.PLANTARFLEXION);
    assertThat(first.first().by()).isBetween(2.0, 4.0);
    assertThat(first.probability()).isGreaterThan(advice.probabilityNow().orElseThrow());
    assertThat(first.offsets().get(0).lowMm()).isLessThan(first.offsets().get(0).mm());
    assertThat(topics(advice)).contains(AdviceRemark.FROM_GEOMETRY);
  }

  /** What is said with every advice, and also where none is given. */
  @Test
  void whatIsSaidAlwaysIsSaidLast() {
    List<Advice> all =
        List.of(
            new AdvisedLeg().kneeAt(-10).advice(),
            new AdvisedLeg().kneeAt(15).advice(),
            new AdvisedLeg().advice(),
            new AdvisedLeg().kneeAt(-10).holds(Circumstance.LOCKED).advice());
    for (Advice advice : all) {
      List<Topic> said = topics(advice);
      assertThat(said.subList(said.size() - 2, said.size()))
          .containsExactly(AdviceRemark.ONE_AT_A_TIME, AdviceRemark.WALKING_DECIDES);
    }
  }

  /** Geometry says 7.5 mm for a degree; this wearer shows 3, and outweighs it. */
  @Test
  void theWearersOwnAnswerOutweighsGeometry() {
    AdvisedLeg of = new AdvisedLeg();
    of.states.add(state(1, 0, -20));
    of.states.add(state(2, 3, -11));
    of.states.add(state(3, 5, -5));
    of.can(new Adjustment(ChangeKind.PLANTARFLEXION, 5, -8, 20, 0.5, OptionalDouble.empty()));
    Advice advice = of.advice();
    Learnt.Answer answer = advice.learnt().answers().get(0);
    assertThat(answer.geometryMm().orElseThrow()).isCloseTo(7.51, within(0.01));
    assertThat(answer.mm()).isCloseTo(3, within(0.5));
    assertThat(answer.highMm()).isLessThan(7.51);
    assertThat(advice.proposals().get(0).offsets().get(0).mm()).isBetween(5.0, 20.0);
    assertThat(firstBy(advice)).isBetween(4.0, 8.0);
    assertThat(topics(advice)).doesNotContain(AdviceRemark.FROM_GEOMETRY);
  }

  /** Twice at one setting, 40 mm apart, where 2 mm of scatter are stated. */
  @Test
  void statesThatContradictAreShownAndWidenWhatIsExpected() {
    Advice apart = new AdvisedLeg().kneeAt(-30, 10).advice();
    assertThat(apart.learnt().contradicting()).containsExactly(2);
    assertThat(topics(apart)).contains(AdviceRemark.CONTRADICTS);
    Advice alike = new AdvisedLeg().kneeAt(-10, -10).advice();
    assertThat(alike.learnt().contradicting()).isEmpty();
    double wide = apart.present().get(0).highMm() - apart.present().get(0).lowMm();
    double narrow = alike.present().get(0).highMm() - alike.present().get(0).lowMm();
    assertThat(wide).isGreaterThan(4 * narrow);
  }

  @Test
  void whereEverythingIsWithinNothingIsToBeChanged() {
    Advice advice = new AdvisedLeg().kneeAt(15, 15).advice();
    assertThat(advice.outcome()).isEqualTo(AdviceOutcome.NOTHING_TO_CHANGE);
    assertThat(advice.proposals()).isEmpty();
    assertThat(topics(advice)).contains(AdviceRemark.ALL_WITHIN);
  }

  @Test
  void whereTheMeasurementIsWhatIsUncertainItIsToBeRepeated() {
    AdvisedLeg of = new AdvisedLeg();
    of.states.add(
        new MeasuredState(
            1,
            "plate",
            true,
            Map.of(ChangeKind.PLANTARFLEXION, 0.0),
            List.of(offset(KNEE, 15, 7))));
    Advice advice = of.holds(Circumstance.ONE_UNDECIDED_STAND).advice();
    assertThat(advice.outcome()).isEqualTo(AdviceOutcome.MEASURE_AGAIN);
    assertThat(topics(advice))
        .contains(AdviceRemark.MEASURE_AGAIN, AdviceRemark.ONE_UNDECIDED_STAND);
  }

  @ParameterizedTest
  @CsvSource({
    "REFUSED, REFUSED",
    "LOCKED, LOCKED",
    "HAND_HELD, HAND_HELD",
    "CHANGED_SINCE, CHANGED_SINCE",
    "AXIS_NOT_NAMED, AXIS_NOT_NAMED"
  })
  void someStandsGiveNoAdvice(Circumstance circumstance, AdviceRemark said) {
    Advice advice = new AdvisedLeg().kneeAt(-10).holds(circumstance).advice();
    assertThat(advice.outcome()).isEqualTo(AdviceOutcome.NOT_GIVEN);
    assertThat(advice.proposals()).isEmpty();
    assertThat(topics(advice).get(0)).isEqualTo(said);
  }

  @Test
  void withoutStandTargetOrAdjustmentNothingIsAdvised() {
    assertThat(topics(new AdvisedLeg().advice())).contains(AdviceRemark.NO_STAND);
    AdvisedLeg noTarget = new AdvisedLeg().kneeAt(-10);
    noTarget.targets = List.of();
    assertThat(topics(noTarget.advice())).contains(AdviceRemark.NO_TARGET);
    assertThat(topics(new AdvisedLeg().kneeAt(-10).can().advice()))
        .contains(AdviceRemark.NO_ADJUSTMENT);
    assertThat(topics(new AdvisedLeg().kneeAt(-10).can(FLEXION).advice()))
        .contains(AdviceRemark.NO_ADJUSTMENT);
  }

  @Test
  void unknownGeometryGivesNoAdviceUntilTheWearerHasShownAnAnswer() {
    AdvisedLeg of = new AdvisedLeg().kneeAt(-10);
    assertThat(topics(of.ankleNotMarked().advice())).contains(AdviceRemark.GEOMETRY_UNKNOWN);
    of.states.add(state(2, 2, 0));
    of.can(new Adjustment(ChangeKind.PLANTARFLEXION, 2, -8, 8, 0.5, OptionalDouble.empty()));
    assertThat(of.advice().outcome()).isEqualTo(AdviceOutcome.CHANGE);
  }

  @Test
  void plainCausesComeFirst() {
    AdvisedLeg of = new AdvisedLeg().kneeAt(-10);
    Advice advice = of.after(Remark.of(AdviceRemark.NO_STAND)).advice();
    assertThat(advice.outcome()).isEqualTo(AdviceOutcome.CAUSES_FIRST);
    assertThat(topics(advice).get(0)).isEqualTo(AdviceRemark.CAUSES_FIRST);
    assertThat(advice.proposals()).isEmpty();
  }

  /** Flexion would bring the line there as well; it is not among the proposals. */
  @Test
  void socketFlexionIsNeverProposed() {
    Advice advice = new AdvisedLeg().kneeAt(-10).can(FLEXION, ANKLE, FORWARD).advice();
    assertThat(advice.proposals())
        .flatExtracting(Proposal::changes)
        .extracting(change -> change.of().kind())
        .doesNotContain(ChangeKind.SOCKET_FLEXION);
  }

  @Test
  void onlySomeKindsAreEverProposed() {
    assertThat(ChangeKind.values())
        .filteredOn(ChangeKind::isProposed)
        .containsExactly(
            ChangeKind.PLANTARFLEXION,
            ChangeKind.INVERSION,
            ChangeKind.FOOT_ROTATION,
            ChangeKind.FOOT_FORWARD,
            ChangeKind.FOOT_LATERAL,
            ChangeKind.SOCKET_FORWARD,
            ChangeKind.SOCKET_LATERAL,
            ChangeKind.SOCKET_ADDUCTION);
  }

  /** The line far in front of a prosthetic knee whose target lies near its axis. */
  @Test
  void nothingMakesItMoreProbableThanFivePercentThatTheLineRunsBehindAProstheticKnee() {
    AdvisedLeg of = new AdvisedLeg().prosthetic().kneeAt(60);
    of.targets = List.of(target(KNEE, 3, 6));
    Advice advice = of.advice();
    assertThat(advice.proposals()).isNotEmpty();
    assertThat(advice.proposals())
        .allSatisfy(p -> assertThat(p.kneeBehind().orElseThrow()).isLessThanOrEqualTo(0.05));
    assertThat(topics(advice)).contains(AdviceRemark.KNEE_KEPT);
    AdvisedLeg own = new AdvisedLeg().kneeAt(60);
    own.targets = of.targets;
    assertThat(own.advice().proposals())
        .anySatisfy(p -> assertThat(p.kneeBehind().orElseThrow()).isGreaterThan(0.05));
  }

  @Test
  void whileTheKneesWarningIsOpenOnlyWhatMakesItLessProbableIsProposed() {
    AdvisedLeg of = new AdvisedLeg().prosthetic().kneeAt(2).holds(Circumstance.KNEE_WARNING);
    of.targets = List.of(target(KNEE, -10, 6));
    Advice back = of.advice();
    assertThat(topics(back).get(0)).isEqualTo(AdviceRemark.KNEE_WARNING);
    assertThat(back.proposals()).allSatisfy(p -> assertThat(p.first().by()).isPositive());
    of.targets = List.of(target(KNEE, 15, 10));
    assertThat(firstBy(of.advice())).isPositive();
  }

  /**
   * The ankle asks the line backward, the knee forward: more plantarflexion, and then the foot
   * back, would meet both, but the second change takes back what the first one gained.
   */
  @Test
  void whileTheKneesWarningIsOpenASecondChangeTakesNothingBack() {
    AdvisedLeg of =
        new AdvisedLeg().prosthetic().can(ANKLE, FORWARD).holds(Circumstance.KNEE_WARNING);
    of.states.add(
        new MeasuredState(
            1, "plate", true, Map.of(), List.of(offset(KNEE, -2, 2), offset(ANKLE_SIDE, 80, 2))));
    of.targets = List.of(target(KNEE, 15, 10), target(ANKLE_SIDE, 60, 10));
    assertThat(of.advice().proposals())
        .isNotEmpty()
        .allSatisfy(
            p -> {
              Proposal.PredictedOffset first = p.afterFirst().get(0);
              double sd = (first.highMm() - first.mm()) / 1.6448536;
              assertThat(p.kneeBehind().orElseThrow())
                  .isLessThanOrEqualTo(NORMAL.cumulativeProbability(-first.mm() / sd) + 1e-6);
            });
  }

  /** With the knee alone to meet, the foot forward and the socket back come out the same. */
  @Test
  void whatIsEquallyProbableComesInTheOrderOfTheAdjustments() {
    AdvisedLeg of = new AdvisedLeg().kneeAt(2);
    assertThat(of.can(ONCE_FORWARD, SOCKET_ONCE_BACK).advice().proposals().get(0).first().of())
        .isEqualTo(ONCE_FORWARD);
    assertThat(of.can(SOCKET_ONCE_BACK, ONCE_FORWARD).advice().proposals().get(0).first().of())
        .isEqualTo(SOCKET_ONCE_BACK);
  }

  /** Within by its target, yet the knee may bend: never "measure again", never "nothing". */
  @Test
  void aWarningIsNeverAnsweredByMeasuringAgain() {
    AdvisedLeg of =
        new AdvisedLeg()
            .prosthetic()
            .kneeAt(3)
            .holds(Circumstance.KNEE_WARNING, Circumstance.ONE_UNDECIDED_STAND);
    of.targets = List.of(target(KNEE, 3, 10));
    Advice advice = of.advice();
    assertThat(advice.outcome()).isEqualTo(AdviceOutcome.CHANGE);
    assertThat(topics(advice))
        .doesNotContain(AdviceRemark.MEASURE_AGAIN, AdviceRemark.ONE_UNDECIDED_STAND);
  }

  @Test
  void aProstheticKneeThatWasNotMarkedGivesNoAdvice() {
    AdvisedLeg of = new AdvisedLeg().prosthetic();
    of.states.add(
        new MeasuredState(1, "plate", true, Map.of(), List.of(offset(KNEE_FRONT, 20, 2))));
    of.targets = List.of(target(KNEE_FRONT, 0, 5));
    of.can(new Adjustment(ChangeKind.INVERSION, 0, -8, 8, 0.5, OptionalDouble.empty()));
    assertThat(topics(of.advice())).contains(AdviceRemark.KNEE_NOT_MARKED);
  }

  /** Below the knee the advice goes on, and says that nothing guards it. */
  @Test
  void theWearersOwnKneeThatWasNotMarkedFromTheSideGoesUnguardedAndThatIsSaid() {
    AdvisedLeg of =
        new AdvisedLeg()
            .stands(offset(KNEE_FRONT, 20, 2))
            .asks(target(KNEE_FRONT, 0, 5))
            .can(new Adjustment(ChangeKind.INVERSION, 0, -8, 8, 0.5, OptionalDouble.empty()));
    Advice advice = of.advice();
    assertThat(advice.outcome()).isEqualTo(AdviceOutcome.CHANGE);
    assertThat(topics(advice))
        .contains(AdviceRemark.OWN_KNEE_NOT_MARKED)
        .doesNotContain(AdviceRemark.OWN_KNEE_KEPT);
    assertThat(topics(new AdvisedLeg().kneeAt(-10).advice()))
        .doesNotContain(AdviceRemark.OWN_KNEE_NOT_MARKED);
  }

  /**
   * The warning is open at 30 % (0.524 standard deviations in front), 8 % and 2 %: what is left
   * must be 5 points less, or from 10 % down half.
   */
  @ParameterizedTest
  @CsvSource({"0.30, 0.25", "0.08, 0.04", "0.02, 0.01"})
  void aTinyFallDoesNotSufficeWhileTheKneesWarningIsOpen(double now, double most) {
    KneeGuard guard =
        KneeGuard.of(true, true, -2 * NORMAL.inverseCumulativeProbability(now), 2, 25);
    assertThat(guard.allows(-2 * NORMAL.inverseCumulativeProbability(most * 0.99), 2)).isTrue();
    assertThat(guard.allows(-2 * NORMAL.inverseCumulativeProbability(most * 1.01), 2)).isFalse();
  }

  /** One step of a fifth of a degree lowers it by less than 5 points, and nothing else is there. */
  @Test
  void whereNoChangeSteadiesTheKneeThatIsSaid() {
    AdvisedLeg of = new AdvisedLeg().prosthetic().kneeAt(-1).holds(Circumstance.KNEE_WARNING);
    Adjustment little =
        new Adjustment(ChangeKind.PLANTARFLEXION, 0, 0, 0.02, 0.02, OptionalDouble.empty());
    Advice advice = of.can(little).advice();
    assertThat(advice.outcome()).isEqualTo(AdviceOutcome.NO_CHANGE_HELPS);
    assertThat(advice.proposals()).isEmpty();
    assertThat(topics(advice))
        .startsWith(AdviceRemark.KNEE_WARNING, AdviceRemark.NO_CHANGE_STEADIES_KNEE)
        .doesNotContain(AdviceRemark.NO_CHANGE_HELPS);
    assertThat(of.can(ANKLE).advice().outcome()).isEqualTo(AdviceOutcome.CHANGE);
  }

  /** While it is open more than 5 % may be left, so that the sentence would not be true. */
  @Test
  void thatTheKneeIsKeptToFivePercentIsNotSaidWhileItsWarningIsOpen() {
    AdvisedLeg of = new AdvisedLeg().prosthetic().kneeAt(12);
    assertThat(topics(of.can(FORWARD).asks(target(KNEE, 30, 10)).advice()))
        .contains(AdviceRemark.KNEE_KEPT);
    Advice warned = of.holds(Circumstance.KNEE_WARNING).advice();
    assertThat(warned.outcome()).isEqualTo(AdviceOutcome.CHANGE);
    assertThat(topics(warned)).doesNotContain(AdviceRemark.KNEE_KEPT);
  }

  /**
   * The same point under two names: its two offsets share every source of doubt. It is a little
   * less probable that both are within, as each departs from geometry by a tenth for itself.
   */
  @Test
  void twoTargetsThatAreTheSameLineAreAdvisedOn() {
    LandmarkInPlane twin = new LandmarkInPlane(Plane.SAGITTAL, Side.RIGHT, "twin");
    Landmark knee = of(KinematicsTest.leg(false, Side.RIGHT), KinematicsTest.KNEE);
    AdvisedLeg of = new AdvisedLeg().asks(target(KNEE, 15, 10), target(twin, 15, 10));
    of.leg =
        new LegChain(
            Side.RIGHT,
            false,
            Stream.concat(
                    of.leg.landmarks().stream(),
                    Stream.of(
                        new Landmark(
                            "twin",
                            knee.kind(),
                            knee.side(),
                            knee.rightMm(),
                            knee.anteriorMm(),
                            knee.heightMm(),
                            knee.definition())))
                .toList());
    Contribution shared =
        new Contribution(new Source(Cause.SWAY, "stand"), 2, 1, Double.POSITIVE_INFINITY);
    Offset one = shared(KNEE, -10, shared);
    Advice twice = of.stands(one, shared(twin, -10, shared)).advice();
    Advice once = new AdvisedLeg().stands(one).advice();
    assertThat(twice.outcome()).isEqualTo(AdviceOutcome.CHANGE);
    assertThat(twice.proposals().get(0).first()).isEqualTo(once.proposals().get(0).first());
    assertThat(twice.proposals().get(0).probability())
        .isCloseTo(once.proposals().get(0).probability(), within(0.06));
    Advice again = of.stands(one, shared(twin, -10, shared)).advice();
    assertThat(again.learnt().contradicting()).isEmpty();
  }

  private static Offset shared(LandmarkInPlane at, double mm, Contribution doubt) {
    return new Offset(
        at,
        LoadLineOwner.foot(Side.RIGHT),
        LoadLineMethod.VERTICAL,
        new Estimate(mm, List.of(doubt)));
  }

  private static Landmark of(LegChain leg, String name) {
    return leg.landmarks().stream().filter(l -> l.name().equals(name)).findFirst().orElseThrow();
  }

  /** The knee has no target, but its axis is guarded all the same. */
  @Test
  void aKneeWithoutATargetIsGuardedToo() {
    AdvisedLeg of = new AdvisedLeg().prosthetic();
    of.states.add(
        new MeasuredState(
            1, "plate", true, Map.of(), List.of(offset(ANKLE_SIDE, 90, 2), offset(KNEE, 12, 2))));
    of.targets = List.of(target(ANKLE_SIDE, 60, 10));
    Advice advice = of.can(FORWARD).advice();
    assertThat(advice.proposals())
        .allSatisfy(p -> assertThat(p.kneeBehind().orElseThrow()).isLessThanOrEqualTo(0.05));
  }

  @Test
  void theWearersOwnKneeIsKeptFromBucklingAndHyperextension() {
    KneeGuard guard = KneeGuard.of(false, false, 20, 5, 25);
    assertThat(guard.allows(5, 5)).isTrue();
    assertThat(guard.allows(4, 5)).isFalse();
    assertThat(guard.allows(45, 5)).isTrue();
    assertThat(guard.allows(46, 5)).isFalse();
    assertThat(topics(new AdvisedLeg().kneeAt(-10).advice())).contains(AdviceRemark.OWN_KNEE_KEPT);
  }

  @Test
  void nothingGoesPastTravelAndNothingBesideItsSteps() {
    Adjustment little =
        new Adjustment(ChangeKind.PLANTARFLEXION, 1, 0, 2, 0.5, OptionalDouble.empty());
    AdvisedLeg of = new AdvisedLeg();
    of.states.add(state(1, 1, -30));
    Advice advice = of.can(little).advice();
    assertThat(advice.proposals()).allSatisfy(p -> assertThat(p.first().to()).isBetween(0.0, 2.0));
    assertThat(little.amounts()).containsExactly(-1, -0.5, 0.5, 1);
    assertThat(topics(of.can(atItsEnd()).advice())).contains(AdviceRemark.NO_CHANGE_HELPS);
  }

  private static Adjustment atItsEnd() {
    return new Adjustment(ChangeKind.PLANTARFLEXION, 1, 1, 1, 0.5, OptionalDouble.empty());
  }

  /** A contracture of 5 deg in a socket at 6 deg leaves one degree to extend. */
  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void noChangeTakesAwayFullExtension(boolean prosthetic) {
    Extension one = new Extension(OptionalDouble.of(5), OptionalDouble.of(6));
    double asks = prosthetic ? -1 : 1;
    assertThat(one.allows(ChangeKind.PLANTARFLEXION, asks, prosthetic)).isTrue();
    assertThat(one.allows(ChangeKind.PLANTARFLEXION, 1.5 * asks, prosthetic)).isFalse();
    assertThat(one.allows(ChangeKind.PLANTARFLEXION, -3 * asks, prosthetic)).isTrue();
    assertThat(one.allows(ChangeKind.FOOT_FORWARD, 20, prosthetic)).isTrue();
    assertThat(Extension.UNKNOWN.allows(ChangeKind.PLANTARFLEXION, 9, prosthetic)).isTrue();
    Extension unknownSocket = new Extension(OptionalDouble.of(5), OptionalDouble.empty());
    assertThat(unknownSocket.allows(ChangeKind.PLANTARFLEXION, asks, prosthetic)).isFalse();
  }

  @Test
  void aContractureLimitsWhatIsProposedAndIsSaid() {
    AdvisedLeg of = new AdvisedLeg().kneeAt(-10);
    assertThat(topics(of.advice())).contains(AdviceRemark.CONTRACTURE_NOT_NOTED);
    of.contracture(5, 6);
    Advice advice = of.advice();
    assertThat(firstBy(advice)).isLessThanOrEqualTo(1);
    assertThat(topics(advice)).contains(AdviceRemark.EXTENSION_KEPT);
    assertThat(of.extension.takenUpBy(5)).isTrue();
    assertThat(of.extension.takenUpBy(4.5)).isFalse();
  }

  /** By hand: 3 deg at 2 deg a turn are one and a half turns; a shift has none. */
  @Test
  void degreesAreTurnsOfAScrewWhereTheAdapterSaysHowMany() {
    assertThat(ANKLE.turns(-3)).hasValue(1.5);
    assertThat(FORWARD.turns(4)).isEmpty();
    assertThat(atItsEnd().turns(1)).isEmpty();
  }

  /** The foot forward and the socket back do the same: what is about as probable is called so. */
  @Test
  void closeProbabilitiesAreCalledAboutEqual() {
    Advice advice = new AdvisedLeg().kneeAt(2).can(ONCE_FORWARD, SOCKET_ONCE_BACK).advice();
    assertThat(advice.proposals().get(0).aboutEqual()).isFalse();
    assertThat(advice.proposals())
        .filteredOn(Proposal::aboutEqual)
        .allSatisfy(
            p ->
                assertThat(p.probability())
                    .isCloseTo(advice.proposals().get(0).probability(), within(0.05)))
        .isNotEmpty();
  }
}
