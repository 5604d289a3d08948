package caryatid.recording.c3d;

import java.util.List;
import java.util.Optional;

/**
 * A plate's axes in the laboratory, from its corners. They are numbered by the quadrants of the
 * plate's axes: +x +y, -x +y, -x -y, +x -y (c3d.org, {@code FORCE_PLATFORM:CORNERS}); its z axis is
 * x cross y.
 *
 * @param corners mm
 * @param centre mm
 * @param x unit vector
 * @param y unit vector
 * @param z unit vector
 * @param halfXmm half its extent along x
 * @param halfYmm half its extent along y
 */
record PlateFrame(
    List<LabVector> corners,
    LabVector centre,
    LabVector x,
    LabVector y,
    LabVector z,
    double halfXmm,
    double halfYmm) {
  /** Sides that differ from a right angle by more are no plate's: sine of 3 degrees. */
  private static final double MOST_SKEW = Math.sin(Math.toRadians(3));

  /** How far opposite sides may differ, as a part of the side (common practice, no source). */
  private static final double MOST_UNEQUAL = 0.03;

  PlateFrame {
    corners = List.copyOf(corners);
  }

  /** The plate of four corners; empty where they make no rectangle. */
  static Optional<PlateFrame> of(List<LabVector> corners) {
    LabVector one = corners.get(0);
    LabVector two = corners.get(1);
    LabVector three = corners.get(2);
    LabVector four = corners.get(3);
    LabVector alongX = one.plus(four).minus(two).minus(three).times(0.25);
    LabVector alongY = one.plus(two).minus(three).minus(four).times(0.25);
    double unequal = one.minus(two).plus(three).minus(four).length() / 2;
    double sizes = alongX.length() * alongY.length();
    double least = Math.min(alongX.length(), alongY.length());
    if (!(least > 0) || Math.abs(alongX.dot(alongY)) > MOST_SKEW * sizes) {
      return Optional.empty();
    }
    LabVector x = alongX.unit();
    LabVector y = alongY.minus(x.times(alongY.dot(x))).unit();
    PlateFrame frame =
        new PlateFrame(
            corners,
            one.plus(two).plus(three).plus(four).times(0.25),
            x,
            y,
            x.cross(y),
            alongX.length(),
            alongY.length());
    return unequal <= MOST_UNEQUAL * 2 * least ? Optional.of(frame) : Optional.empty();
  }

  /** A vector of the plate's axes in the laboratory's. */
  LabVector toLab(double alongX, double alongY, double alongZ) {
    return x.times(alongX).plus(y.times(alongY)).plus(z.times(alongZ));
  }

  /** Whether a point lies above or below the plate, or beside it by a margin at the most. */
  boolean covers(LabVector point, double marginMm) {
    LabVector from = point.minus(centre);
    return Math.abs(from.dot(x)) <= halfXmm + marginMm
        && Math.abs(from.dot(y)) <= halfYmm + marginMm;
  }

  /** The same plate by another unit of length. */
  Optional<PlateFrame> times(double factor) {
    return of(corners.stream().map(corner -> corner.times(factor)).toList());
  }
}
