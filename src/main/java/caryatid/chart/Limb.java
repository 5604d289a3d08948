package caryatid.chart;

import caryatid.chart.mark.Scale.Place;
import java.util.ArrayList;
import java.util.List;

/** A part of a limb: two circles about its joints and the tangents that join them. */
final class Limb {
  private static final int STEPS = 16;
  private static final int ROUNDING = 5;

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

  /** A closed outline through points, its corners rounded (a Catmull-Rom curve). */
  static List<Place> rounded(List<Place> points) {
    List<Place> outline = new ArrayList<>();
    int count = points.size();
    for (int i = 0; i < count; i++) {
      Place before = points.get((i + count - 1) % count);
      Place from = points.get(i);
      Place to = points.get((i + 1) % count);
      Place after = points.get((i + 2) % count);
      for (int step = 0; step < ROUNDING; step++) {
        double t = (double) step / ROUNDING;
        outline.add(
            new Place(
                between(before.acrossMm(), from.acrossMm(), to.acrossMm(), after.acrossMm(), t),
                between(before.heightMm(), from.heightMm(), to.heightMm(), after.heightMm(), t)));
      }
    }
    return outline;
  }

  private static double between(double before, double from, double to, double after, double t) {
    double slope = (to - before) / 2;
    double nextSlope = (after - from) / 2;
    double rise = to - from;
    return from
        + t * (slope + t * (3 * rise - 2 * slope - nextSlope + t * (slope + nextSlope - 2 * rise)));
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
