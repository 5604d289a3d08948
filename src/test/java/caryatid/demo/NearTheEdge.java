package caryatid.demo;

import caryatid.alignment.AlignmentState;
import caryatid.geometry.Plane;
import caryatid.geometry.Side;
import caryatid.loadline.Finding;
import caryatid.loadline.LandmarkInPlane;
import caryatid.loadline.LoadLineMethod;
import caryatid.loadline.Offset;
import caryatid.loadline.Target;
import caryatid.loadline.Verdict;
import caryatid.standing.LoadLineOwner;
import caryatid.uncertainty.Cause;
import caryatid.uncertainty.Contribution;
import caryatid.uncertainty.Estimate;
import caryatid.uncertainty.Source;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * An invented state of two stands with undecided findings. Each tolerance is 10 mm to both sides;
 * marking adds 4 mm, the scatter of the two stands 3 mm, both with infinite degrees of freedom.
 *
 * <p>Five stands then have u = (16 + 9 x 2 / 5)^0.5 = 4.43 mm, and 2.76 mm with landmarks marked
 * twice as well. "Met" takes 1.645 u to the nearer edge: 7.3 and 4.5 mm.
 */
public final class NearTheEdge {
  private static final List<String> NAMES = List.of("ankle axis", "knee centre", "hip");

  private NearTheEdge() {}

  /** The state, a finding for each distance of the line from the tolerance's middle, mm. */
  public static AlignmentState state(double... fromMiddleMm) {
    List<Finding> findings = new ArrayList<>();
    for (double mm : fromMiddleMm) {
      findings.add(finding(NAMES.get(findings.size()), mm));
    }
    return new AlignmentState(Numbered.state().stands(), List.of(), findings, List.of(), List.of());
  }

  private static Finding finding(String landmark, double mm) {
    LandmarkInPlane at = new LandmarkInPlane(Plane.SAGITTAL, Side.RIGHT, landmark);
    Estimate measured =
        Estimate.exact(mm).with(part(Cause.MARKING, 4)).with(part(Cause.REPEATABILITY, 3));
    return new Finding(
        new Offset(at, LoadLineOwner.RIGHT_FOOT, LoadLineMethod.VERTICAL, measured),
        new Target(
            at, 0, 10, 10, "leaflet", Target.MeantFor.FOOT, Optional.empty(), Optional.empty()),
        0.8,
        true,
        Math.abs(mm) <= 10 ? Verdict.INSIDE_TOO_CLOSE : Verdict.OUTSIDE_TOO_CLOSE);
  }

  private static Contribution part(Cause cause, double mm) {
    return new Contribution(new Source(cause, "it"), mm, 1, Double.POSITIVE_INFINITY);
  }
}
