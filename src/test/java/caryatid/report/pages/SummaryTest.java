package caryatid.report.pages;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.alignment.AlignmentState;
import caryatid.demo.Numbered;
import caryatid.geometry.Plane;
import caryatid.geometry.Side;
import caryatid.loadline.Finding;
import caryatid.loadline.LandmarkInPlane;
import caryatid.loadline.LoadLineMethod;
import caryatid.loadline.LoadLineRemark;
import caryatid.loadline.Offset;
import caryatid.loadline.Target;
import caryatid.loadline.UnjudgedTarget;
import caryatid.loadline.Verdict;
import caryatid.remark.Argument;
import caryatid.remark.Remark;
import caryatid.standing.LoadLineOwner;
import caryatid.uncertainty.Estimate;
import caryatid.wording.Wording;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What leads page one: what to do, and the sentence of each plane with its distances. */
class SummaryTest {
  private static final Wording ENGLISH = Wording.in(Locale.ENGLISH);
  private static final AlignmentState STATE = Numbered.state();

  /** Recommended 20, tolerance 15 below and 10 above: 5 to 30 mm. */
  private static Finding finding(
      Plane plane, String landmark, double mm, double probability, Verdict verdict) {
    LandmarkInPlane at = new LandmarkInPlane(plane, Side.RIGHT, landmark);
    return new Finding(
        new Offset(at, LoadLineOwner.RIGHT_FOOT, LoadLineMethod.VERTICAL, Estimate.exact(mm)),
        new Target(
            at, 20, 15, 10, "leaflet", Target.MeantFor.FOOT, Optional.empty(), Optional.empty()),
        probability,
        true,
        verdict);
  }

  private static final Finding MET = finding(Plane.SAGITTAL, "knee", 24, 0.97, Verdict.WITHIN);
  private static final Finding SPARE =
      finding(Plane.SAGITTAL, "ankle", 26, 0.7, Verdict.INSIDE_TOO_CLOSE);
  private static final Finding OVER =
      finding(Plane.FRONTAL, "knee", 33, 0.3, Verdict.OUTSIDE_TOO_CLOSE);
  private static final Finding NOT_MET = finding(Plane.FRONTAL, "ankle", -9, 0.01, Verdict.OUTSIDE);

  private static Summary summary(List<UnjudgedTarget> withheld, Finding... findings) {
    return new Summary(state(withheld, List.of(), findings), ENGLISH);
  }

  private static AlignmentState state(
      List<UnjudgedTarget> withheld, List<Remark> remarks, Finding... findings) {
    return new AlignmentState(
        STATE.stands(), STATE.offsets(), List.of(findings), withheld, remarks);
  }

  @Test
  void whatIsNotMetComesBeforeWhatIsUndecidedAndThatBeforeWhatIsMet() {
    assertThat(summary(List.of(), MET, SPARE, OVER, NOT_MET).next())
        .contains(
            "× Tolerance not met: ankle (frontal). Undecided: ankle (sagittal), knee (frontal)."
                + " Change one thing, then measure again.");
    assertThat(summary(List.of(), MET, SPARE, OVER).next())
        .contains("○ Undecided: ankle (sagittal), knee (frontal). Measure again before changing.");
    assertThat(summary(List.of(), MET).next()).contains("● All tolerances met. Walking is next.");
  }

  /** Two are named, three are counted; one landmark twice in a plane is named once. */
  @Test
  void manyAreCountedInsteadOfNamed() {
    Finding third = finding(Plane.FRONTAL, "thigh", 40, 0.02, Verdict.OUTSIDE);
    Finding other = finding(Plane.SAGITTAL, "thigh", 41, 0.03, Verdict.OUTSIDE);
    assertThat(summary(List.of(), NOT_MET, third, NOT_MET, MET).next())
        .contains(
            "× Tolerance not met: ankle (frontal), thigh (frontal). Change one thing, then measure"
                + " again.");
    assertThat(summary(List.of(), NOT_MET, third, other, MET).next())
        .contains("× Tolerance not met: 3 of 4 results. Change one thing, then measure again.");
  }

  @Test
  void whatWasNotJudgedIsNotCalledMet() {
    List<UnjudgedTarget> withheld = STATE.withheld();
    assertThat(summary(withheld, MET).next())
        .contains("● Tolerances met as far as there are results; see the remarks.");
    assertThat(summary(withheld).next())
        .contains("No recommendation could be compared; see the remarks.");
    assertThat(summary(List.of()).next())
        .contains("No recommendation entered: the load line alone.");
  }

  /** A knee that may bend has a sentence of its own; nothing then asks to change or measure. */
  @Test
  void nothingIsToBeDoneBeforeWhatIsUnsafe() {
    Remark bends = Remark.of(LoadLineRemark.LINE_BEHIND_KNEE, Argument.term(Side.RIGHT));
    assertThat(new Summary(state(List.of(), List.of(bends), NOT_MET), ENGLISH).next()).isEmpty();
  }

  /** The sentence is of the result furthest from met: by the result, then by its probability. */
  @Test
  void eachPlaneSaysHowFarItsWorstOffsetIsFromEdgeAndRecommendation() {
    Finding likelier = finding(Plane.FRONTAL, "thigh", 35, 0.04, Verdict.OUTSIDE);
    assertThat(planes(summary(List.of(), MET, SPARE, OVER, likelier, NOT_MET)))
        .containsExactly(
            "Sagittal, ankle: load line 6 mm anterior to the recommendation.",
            "Frontal, ankle: load line 14 mm too far medial, 29 mm from the recommendation.");
    assertThat(planes(summary(List.of(), OVER)))
        .containsExactly(
            "Frontal, knee: load line 3 mm too far lateral, 13 mm from the recommendation.");
    assertThat(planes(summary(List.of(), MET)))
        .containsExactly(
            "Sagittal, knee: load line 4 mm anterior to the recommendation, 6 mm to spare.");
    assertThat(planes(summary(List.of()))).isEmpty();
  }

  /** In a wide tolerance the likelier of two may be the one beyond the edge. */
  @Test
  void theResultComesBeforeItsProbability() {
    Finding inside = finding(Plane.FRONTAL, "hip", 29, 0.31, Verdict.INSIDE_TOO_CLOSE);
    Finding beyond = finding(Plane.FRONTAL, "knee", 33, 0.44, Verdict.OUTSIDE_TOO_CLOSE);
    assertThat(planes(summary(List.of(), inside, beyond)))
        .containsExactly(
            "Frontal, knee: load line 3 mm too far lateral, 13 mm from the recommendation.");
  }

  private static List<String> planes(Summary summary) {
    return summary.planes().stream().map(said -> said.replace('\u00a0', ' ')).toList();
  }
}
