package caryatid.geometry;

/**
 * A point in the person's frame.
 *
 * @param xMm to the person's right, mm
 * @param yMm anterior, mm
 * @param zMm up from the plate's top surface, mm
 */
public record Point(double xMm, double yMm, double zMm) {
  /**
   * @throws IllegalArgumentException if a coordinate is not finite
   */
  public Point {
    if (!Double.isFinite(xMm) || !Double.isFinite(yMm) || !Double.isFinite(zMm)) {
      throw new IllegalArgumentException(
          "coordinates must be finite: " + xMm + ", " + yMm + ", " + zMm);
    }
  }
}
