package caryatid.chart;

import caryatid.chart.Scale.Place;
import java.util.ArrayList;
import java.util.List;

/** A part of a limb: two circles about its joints and the tangents that join them. */
final class Limb {
  private static final int STEPS = 16;

  private Limb() {}

  static List<Place> between(Place low, double lowHalfMm, Place high, double highHalfMm) {
    double across = high.acrossMm() - low.acrossMm();
    double up = high.heightMm() - low.heightMm();
    double length = Math.hypot(across, up);
    double axis = StrictMath.atan2(up, across);
    double widening = Math.max(-1, Math.min(1, (highHalfMm - lowHalfMm) / Math.max(length, 1)));
    double tangent = Math.PI / 2 + StrictMath.asin(widening);
    List<Place> outline = new ArrayList<>();
    arc(outline, high, highHalfMm, axis - tangent, axis + tangent);
    arc(outline, low, lowHalfMm, axis + tangent, axis + 2 * Math.PI - tangent);
    return outline;
  }

  private static void arc(List<Place> to, Place centre, double radius, double from, double until) {
    for (int i = 0; i <= STEPS; i++) {
      double angle = from + (until - from) * i / STEPS;
      to.add(
          new Place(
              centre.acrossMm() + radius * StrictMath.cos(angle),
              Math.max(0, centre.heightMm() + radius * StrictMath.sin(angle))));
    }
  }
}
