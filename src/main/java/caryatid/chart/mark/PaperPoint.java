package caryatid.chart.mark;

/**
 * A point on paper.
 *
 * @param rightMm from the drawing's left edge, mm
 * @param downMm from the drawing's top edge, mm
 */
public record PaperPoint(double rightMm, double downMm) {
  /**
   * @throws IllegalArgumentException if a coordinate is not finite
   */
  public PaperPoint {
    if (!Double.isFinite(rightMm) || !Double.isFinite(downMm)) {
      throw new IllegalArgumentException(rightMm + ", " + downMm);
    }
  }

  public double distanceMm(PaperPoint other) {
    return Math.hypot(rightMm - other.rightMm, downMm - other.downMm);
  }

  public PaperPoint moved(double rightwardMm, double downwardMm) {
    return new PaperPoint(rightMm + rightwardMm, downMm + downwardMm);
  }
}
