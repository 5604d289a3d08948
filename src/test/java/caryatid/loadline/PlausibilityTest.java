package caryatid.loadline;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.geometry.Plane;
import caryatid.geometry.Side;
import caryatid.remark.Remark;
import caryatid.standing.LoadLineOwner;
import caryatid.uncertainty.Estimate;
import java.util.List;
import org.junit.jupiter.api.Test;

class PlausibilityTest {
  private static Offset past(Plane plane, LoadLineOwner of, double mm) {
    return new Offset(
        new LandmarkInPlane(plane, Side.LEFT, "knee"),
        of,
        LoadLineMethod.VERTICAL,
        Estimate.exact(mm));
  }

  private static List<Remark> remarks(Offset offset) {
    return LoadLineCheck.Plausibility.of(List.of(offset));
  }

  @Test
  void anOwnLineFurtherThanAnyJointIsRemarked() {
    assertThat(remarks(past(Plane.SAGITTAL, LoadLineOwner.LEFT_FOOT, -150.1))).hasSize(1);
    assertThat(remarks(past(Plane.SAGITTAL, LoadLineOwner.LEFT_FOOT, -150))).isEmpty();
    assertThat(remarks(past(Plane.FRONTAL, LoadLineOwner.LEFT_FOOT, 100.1))).hasSize(1);
    assertThat(remarks(past(Plane.FRONTAL, LoadLineOwner.LEFT_FOOT, 100))).isEmpty();
  }

  @Test
  void theWholeBodysLineMayBeFar() {
    assertThat(remarks(past(Plane.FRONTAL, LoadLineOwner.WHOLE_BODY, 140))).isEmpty();
  }
}
