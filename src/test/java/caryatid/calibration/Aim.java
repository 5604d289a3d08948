package caryatid.calibration;

import caryatid.geometry.Plane;
import caryatid.loadline.Target;
import caryatid.samples.Noise;
import java.util.List;

/**
 * Where a fitting's true offset lies among its targets: exactly on the upper edge of one tolerance,
 * on the lower edge of another, at a place drawn by chance in a third, and in the middle of a
 * fourth.
 *
 * @param plane the plane
 * @param trueMm the true offset, mm
 * @param beyondMm how far the true offset is from the third target, mm
 */
record Aim(Plane plane, double trueMm, double beyondMm) {
  /** Tolerance of the targets to either side, mm. */
  static final double TOLERANCE_MM = 20;

  /** Standard deviation of true offsets about their target, mm. */
  static final double SPREAD_MM = 20;

  static Aim at(Plane plane, double trueMm, Noise noise) {
    return new Aim(plane, trueMm, SPREAD_MM * noise.normal());
  }

  /** The four targets in order. */
  List<Target> targets() {
    return List.of(
        Sheet.target(plane, trueMm - TOLERANCE_MM, TOLERANCE_MM),
        Sheet.target(plane, trueMm + TOLERANCE_MM, TOLERANCE_MM),
        Sheet.target(plane, trueMm - beyondMm, TOLERANCE_MM),
        Sheet.target(plane, trueMm, TOLERANCE_MM));
  }

  /** Whether the true offset is within the third target's tolerance. */
  boolean trulyWithin() {
    return StrictMath.abs(beyondMm) <= TOLERANCE_MM;
  }
}
