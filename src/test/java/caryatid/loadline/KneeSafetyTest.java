package caryatid.loadline;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.geometry.Plane;
import caryatid.geometry.Side;
import caryatid.remark.Remark;
import caryatid.remark.Weight;
import caryatid.standing.LineOf;
import caryatid.uncertainty.Cause;
import caryatid.uncertainty.Contribution;
import caryatid.uncertainty.Estimate;
import caryatid.uncertainty.Source;
import caryatid.wording.Wording;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class KneeSafetyTest {
  private static final List<Landmark> KNEE =
      List.of(Legs.mark(LandmarkKind.KNEE_CENTRE, Side.RIGHT, 0, 0, 490));

  private static Offset past(LineOf of, double mm) {
    return past(of, LineKind.VERTICAL, mm);
  }

  private static Offset past(LineOf of, LineKind kind, double mm) {
    Estimate estimate =
        Estimate.exact(mm)
            .with(new Contribution(new Source(Cause.SWAY, ""), 2, 1, Double.POSITIVE_INFINITY));
    return new Offset(
        Plane.SAGITTAL, Side.RIGHT, LandmarkKind.KNEE_CENTRE.name(), of, kind, estimate);
  }

  private static List<Remark> warnings(Offset... offsets) {
    return KneeSafety.of(List.of(offsets), KNEE, List.of(Side.RIGHT));
  }

  @Test
  void aLineBehindTheKneeIsSaidInPlainWords() {
    List<Remark> warnings = warnings(past(LineOf.RIGHT_FOOT, -0.3));
    assertThat(warnings.get(0).topic().weight()).isEqualTo(Weight.SAFETY);
    assertThat(Wording.in(Locale.ENGLISH).say(warnings.get(0)))
        .isEqualTo(
            "The load line (right foot's line) runs 0.3\u00a0mm behind the right prosthetic knee's"
                + " axis: the ground reaction bends the knee, and it may give way. Secure the wearer"
                + " before anything else, and follow the maker's instructions for the knee.");
  }

  /** u = 2 mm: the 95 % interval reaches 1.96 u = 3.92 mm. */
  @Test
  void aLineThatMayBeBehindTheKneeIsSaidToo() {
    assertThat(warnings(past(LineOf.RIGHT_FOOT, 3.91)))
        .extracting(Remark::topic)
        .containsExactly(LoadLineRemark.LINE_MAY_BE_BEHIND_KNEE);
    assertThat(warnings(past(LineOf.RIGHT_FOOT, 3.93))).isEmpty();
  }

  @Test
  void theWholeBodysLineCountsOnlyWhereTheFootsOwnIsUnknown() {
    assertThat(warnings(past(LineOf.WHOLE_BODY, -9), past(LineOf.RIGHT_FOOT, 20))).isEmpty();
    assertThat(warnings(past(LineOf.WHOLE_BODY, -9)))
        .extracting(Remark::topic)
        .containsExactly(LoadLineRemark.LINE_BEHIND_KNEE, LoadLineRemark.OWN_LINE_OF_KNEE_UNKNOWN);
  }

  @Test
  void aKneeOfFleshIsNotWarnedOf() {
    Offset behind = past(LineOf.RIGHT_FOOT, -9);
    assertThat(KneeSafety.of(List.of(behind), KNEE, List.of())).isEmpty();
  }

  @Test
  void aProstheticKneeThatWasNotMarkedIsWarnedOf() {
    Offset other = past(LineOf.RIGHT_FOOT, 9);
    assertThat(KneeSafety.of(List.of(other), KNEE, List.of(Side.LEFT)))
        .extracting(Remark::topic)
        .containsExactly(LoadLineRemark.KNEE_NOT_MARKED);
  }

  @Test
  void aMeasuredForceBehindTheKneeIsWarnedOfAlthoughTheVerticalRunsInFront() {
    Offset vertical = past(LineOf.RIGHT_FOOT, 20);
    assertThat(warnings(vertical, past(LineOf.RIGHT_FOOT, LineKind.MEASURED_FORCE, -0.1)))
        .extracting(Remark::topic)
        .containsExactly(LoadLineRemark.MEASURED_LINE_BEHIND_KNEE);
    assertThat(warnings(vertical, past(LineOf.RIGHT_FOOT, LineKind.MEASURED_FORCE, 0.1))).isEmpty();
  }
}
