package caryatid.chart.mark;

/**
 * A point on paper.
 *
 * @param rightMm from the drawing's left edge, mm
 * @param downMm from the drawing's top edge, mm
 */
public record Spot(double rightMm, double downMm) {
  /**
   * @throws IllegalArgumentException if a coordinate is not finite
   */
  public Spot {
    if (!Double.isFinite(rightMm) || !Double.isFinite(downMm)) {
      throw new IllegalArgumentException(rightMm + ", " + downMm);
    }
  }

  public double distanceMm(Spot other) {
    return Math.hypot(rightMm - other.rightMm, downMm - other.downMm);
  }

  public Spot moved(double rightwardMm, double downwardMm) {
    return new Spot(rightMm + rightwardMm, downMm + downwardMm);
  }
}
