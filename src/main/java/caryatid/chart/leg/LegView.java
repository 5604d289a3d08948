package caryatid.chart.leg;

import caryatid.geometry.Plane;
import caryatid.geometry.Side;

/**
 * The direction from which a leg is viewed: in the sagittal plane from its own outer side, in the
 * frontal plane from the front. "Across" is to the viewer's right, mm.
 */
public record LegView(Plane plane, Side side) {

  /** Where a coordinate of the person's frame, anterior or to the right, lies across the view. */
  double across(double personMm) {
    return plane == Plane.SAGITTAL ? personMm * side.lateral() : -personMm;
  }

  /** +1 where positive offsets (anterior, lateral) lie to the viewer's right, else -1. */
  public int sign() {
    return plane == Plane.SAGITTAL ? side.lateral() : -side.lateral();
  }

  /** A key of this view's own sentences. */
  public String key(String of) {
    return "View." + of + "." + plane.lastPart() + "." + side.lastPart();
  }
}
