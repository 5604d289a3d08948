package caryatid.loadline;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.geometry.Plane;
import caryatid.geometry.Side;
import caryatid.remark.Remark;
import caryatid.remark.Topic;
import caryatid.standing.LoadLineOwner;
import caryatid.standing.MeanLoad;
import caryatid.standing.Stance;
import caryatid.uncertainty.Cause;
import caryatid.uncertainty.Contribution;
import caryatid.uncertainty.Estimate;
import caryatid.uncertainty.Source;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TargetComparisonTest {
  private static final Stance ONE_FOOT = new Stance.ProstheticFootOnPlate(Optional.empty());
  private static final Stance BOTH = new Stance.BothFeetOnOnePlate(Optional.empty());

  private static Offset offset(LoadLineOwner of, Plane plane, double mm, double u, double degrees) {
    Estimate estimate =
        Estimate.exact(mm).with(new Contribution(new Source(Cause.SWAY, ""), u, 1, degrees));
    return new Offset(
        new LandmarkInPlane(plane, Side.RIGHT, LandmarkKind.KNEE_CENTRE.name()),
        of,
        LoadLineMethod.VERTICAL,
        estimate);
  }

  private static Target sagittal(double mm, double below, double above) {
    return Legs.target(Plane.SAGITTAL, LandmarkKind.KNEE_CENTRE, mm, below, above);
  }

  private static Finding judge(double mm, double u, double degrees, DecisionRule rule) {
    Offset offset = offset(LoadLineOwner.RIGHT_FOOT, Plane.SAGITTAL, mm, u, degrees);
    return TargetComparison.of(
            List.of(offset), List.of(sagittal(15, 10, 10)), ONE_FOOT, List.of(), rule)
        .findings()
        .get(0);
  }

  /**
   * Tolerance 5 to 25 mm, u = 2 mm known: the one-sided 95 % point lies 1.645 u = 3.290 mm inside.
   */
  @ParameterizedTest
  @CsvSource({
    "15, WITHIN", "8.3, WITHIN", "8.28, INSIDE_TOO_CLOSE", "5, INSIDE_TOO_CLOSE",
    "4.99, OUTSIDE_TOO_CLOSE", "1.72, OUTSIDE_TOO_CLOSE", "1.70, OUTSIDE",
        "28.28, OUTSIDE_TOO_CLOSE",
    "28.30, OUTSIDE", "-90, OUTSIDE"
  })
  void theFourResultsFollowTheProbability(double mm, Verdict verdict) {
    assertThat(judge(mm, 2, Double.POSITIVE_INFINITY, DecisionRule.USUAL).verdict())
        .isEqualTo(verdict);
  }

  @Test
  void theSimpleRuleKnowsInsideAndOutsideOnly() {
    assertThat(judge(5, 2, 3, DecisionRule.SIMPLE).verdict()).isEqualTo(Verdict.WITHIN);
    assertThat(judge(4.99, 2, 3, DecisionRule.SIMPLE).verdict()).isEqualTo(Verdict.OUTSIDE);
  }

  @ParameterizedTest
  @ValueSource(doubles = {-400, -20, 0, 5, 15, 24, 26, 60, 500})
  void aHopelesslyWideUncertaintyDecidesNothing(double mm) {
    Finding finding = judge(mm, 1e4, Double.POSITIVE_INFINITY, DecisionRule.USUAL);
    assertThat(finding.decidable()).isFalse();
    assertThat(finding.probabilityWithin()).isLessThan(0.05);
    assertThat(finding.verdict()).isIn(Verdict.INSIDE_TOO_CLOSE, Verdict.OUTSIDE_TOO_CLOSE);
  }

  /** At fixed degrees of freedom more uncertainty never makes a result firmer. */
  @ParameterizedTest
  @ValueSource(doubles = {1, 2, 4.5, 30, Double.POSITIVE_INFINITY})
  void moreUncertaintyNeverMakesAResultFirmer(double degrees) {
    for (double mm = -20; mm <= 50; mm += 0.5) {
      boolean firm = true;
      for (double u = 0.1; u < 40; u *= 1.1) {
        Verdict verdict = judge(mm, u, degrees, DecisionRule.USUAL).verdict();
        boolean now = verdict == Verdict.WITHIN || verdict == Verdict.OUTSIDE;
        assertThat(firm || !now).as("%s mm, u %s, %s", mm, u, verdict).isTrue();
        firm = now;
      }
      assertThat(firm).isFalse();
    }
  }

  /** The probability changes without a jump as the offset crosses the tolerance. */
  @Test
  void theProbabilityIsContinuous() {
    double last = judge(-20, 2, 4, DecisionRule.USUAL).probabilityWithin();
    for (double mm = -20; mm <= 50; mm += 0.01) {
      double now = judge(mm, 2, 4, DecisionRule.USUAL).probabilityWithin();
      // At most the density of t with four degrees of freedom at its middle, 0.375, times 0.01 / 2.
      assertThat(Math.abs(now - last)).isLessThan(0.002);
      last = now;
    }
  }

  @Test
  void aTargetForAFootIsNotComparedWithTheWholeBodysLine() {
    Offset whole = offset(LoadLineOwner.WHOLE_BODY, Plane.SAGITTAL, 15, 1, 9);
    withheld(whole, sagittal(15, 10, 10), BOTH, LoadLineRemark.OWN_LINE_UNKNOWN);
    withheld(whole, meantForBody(Plane.FRONTAL), BOTH, LoadLineRemark.FRONTAL_OF_WHOLE_BODY);
    Target frontal = Legs.target(Plane.FRONTAL, LandmarkKind.KNEE_CENTRE, 0, 5, 5);
    withheld(whole, frontal, BOTH, LoadLineRemark.FRONTAL_OF_WHOLE_BODY);
    assertThat(
            TargetComparison.of(
                    List.of(whole),
                    List.of(meantForBody(Plane.SAGITTAL)),
                    BOTH,
                    List.of(),
                    DecisionRule.USUAL)
                .findings())
        .hasSize(1);
  }

  @Test
  void aTargetWithoutItsLineOrMarkIsWithheldWithTheReason() {
    Offset own = offset(LoadLineOwner.RIGHT_FOOT, Plane.SAGITTAL, 15, 1, 9);
    withheld(own, meantForBody(Plane.SAGITTAL), ONE_FOOT, LoadLineRemark.WHOLE_BODY_LINE_UNKNOWN);
    Target frontal = Legs.target(Plane.FRONTAL, LandmarkKind.KNEE_CENTRE, 0, 5, 5);
    withheld(own, frontal, ONE_FOOT, LoadLineRemark.NOT_MARKED);
  }

  private static Target meantForBody(Plane plane) {
    return new Target(
        new LandmarkInPlane(plane, Side.RIGHT, LandmarkKind.KNEE_CENTRE.name()),
        15,
        10,
        10,
        "invented",
        Target.MeantFor.WHOLE_BODY,
        Optional.empty(),
        Optional.empty());
  }

  private static void withheld(Offset offset, Target target, Stance stance, LoadLineRemark reason) {
    TargetComparison judged =
        TargetComparison.of(
            List.of(offset), List.of(target), stance, List.of(), DecisionRule.USUAL);
    assertThat(judged.findings()).isEmpty();
    assertThat(judged.withheld())
        .extracting(UnjudgedTarget::reason)
        .extracting(Remark::topic)
        .containsExactly(reason);
  }

  @Test
  void aTargetInAPlaneThatWasNotMeasuredIsWithheld() {
    MeanLoad both = Legs.load(LoadLineOwner.RIGHT_FOOT, 10, 20, 400, 1, Optional.empty());
    MeanLoad alone =
        new MeanLoad(both.of(), Optional.empty(), both.copAnteriorMm(), both.upN(), both.lean());
    Target frontal = Legs.target(Plane.FRONTAL, LandmarkKind.KNEE_CENTRE, 0, 5, 5);
    for (Stance stance : List.of(ONE_FOOT, new Stance.PlatePerFoot("left", "right"))) {
      assertThat(reasons(frontal, stance, alone)).containsExactly(LoadLineRemark.NOT_MEASURED);
      assertThat(reasons(frontal, stance, both)).containsExactly(LoadLineRemark.NOT_MARKED);
      assertThat(reasons(sagittal(15, 10, 10), stance, alone))
          .containsExactly(LoadLineRemark.NOT_MARKED);
    }
    assertThat(reasons(frontal, BOTH, alone)).containsExactly(LoadLineRemark.FRONTAL_OF_WHOLE_BODY);
  }

  private static List<Topic> reasons(Target target, Stance stance, MeanLoad load) {
    return TargetComparison.of(
            List.of(), List.of(target), stance, List.of(load), DecisionRule.USUAL)
        .withheld()
        .stream()
        .map(withheld -> withheld.reason().topic())
        .toList();
  }
}
