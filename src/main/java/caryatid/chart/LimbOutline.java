package caryatid.chart;

import caryatid.chart.mark.Scale.PersonPoint;
import java.util.ArrayList;
import java.util.List;

/** A part of a limb: two circles about its joints and the tangents that join them. */
final class LimbOutline {
  private static final int STEPS = 16;
  private static final int ROUNDING = 5;

  private LimbOutline() {}

  static List<PersonPoint> between(
      PersonPoint low, double lowHalfMm, PersonPoint high, double highHalfMm) {
    double across = high.acrossMm() - low.acrossMm();
    double up = high.heightMm() - low.heightMm();
    double length = Math.hypot(across, up);
    double axis = StrictMath.atan2(up, across);
    double widening = Math.max(-1, Math.min(1, (highHalfMm - lowHalfMm) / Math.max(length, 1)));
    double tangent = Math.PI / 2 + StrictMath.asin(widening);
    List<PersonPoint> outline = new ArrayList<>();
    arc(outline, high, highHalfMm, axis - tangent, axis + tangent);
    arc(outline, low, lowHalfMm, axis + tangent, axis + 2 * Math.PI - tangent);
    return outline;
  }

  /** A closed outline through points, its corners rounded (a Catmull-Rom curve). */
  static List<PersonPoint> rounded(List<PersonPoint> points) {
    List<PersonPoint> outline = new ArrayList<>();
    int count = points.size();
    for (int i = 0; i < count; i++) {
      PersonPoint before = points.get((i + count - 1) % count);
      PersonPoint from = points.get(i);
      PersonPoint to = points.get((i + 1) % count);
      PersonPoint after = points.get((i + 2) % count);
      for (int step = 0; step < ROUNDING; step++) {
        double t = (double) step / ROUNDING;
        outline.add(
            new PersonPoint(
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

  private static void arc(
      List<PersonPoint> to, PersonPoint centre, double radius, double from, double until) {
    for (int i = 0; i <= STEPS; i++) {
      double angle = from + (until - from) * i / STEPS;
      to.add(
          new PersonPoint(
              centre.acrossMm() + radius * StrictMath.cos(angle),
              Math.max(0, centre.heightMm() + radius * StrictMath.sin(angle))));
    }
  }
}
