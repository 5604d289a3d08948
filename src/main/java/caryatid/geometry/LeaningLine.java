package caryatid.geometry;

/**
 * A line that is not horizontal, in the person's frame: through a point, with its lean.
 *
 * @param foot a point of the line
 * @param rightPerUp how far the line runs to the right for each unit of height, dimensionless
 * @param anteriorPerUp how far the line runs anteriorly for each unit of height, dimensionless
 */
public record LeaningLine(Point foot, double rightPerUp, double anteriorPerUp) {
  /**
   * @throws IllegalArgumentException if a lean is not finite
   */
  public LeaningLine {
    if (!Double.isFinite(rightPerUp) || !Double.isFinite(anteriorPerUp)) {
      throw new IllegalArgumentException(
          "leans must be finite: " + rightPerUp + ", " + anteriorPerUp);
    }
  }

  /** The vertical through a point. */
  public static LeaningLine vertical(Point foot) {
    return new LeaningLine(foot, 0, 0);
  }

  /**
   * The line through two points.
   *
   * @throws IllegalArgumentException if both lie at the same height
   */
  public static LeaningLine through(Point low, Point high) {
    double rise = high.zMm() - low.zMm();
    if (rise == 0) {
      throw new IllegalArgumentException("both points lie at height " + low.zMm() + " mm");
    }
    return new LeaningLine(low, (high.xMm() - low.xMm()) / rise, (high.yMm() - low.yMm()) / rise);
  }

  /** The line's point at a height above the plate's top, mm. */
  public Point at(double zMm) {
    double rise = zMm - foot.zMm();
    return new Point(foot.xMm() + rightPerUp * rise, foot.yMm() + anteriorPerUp * rise, zMm);
  }
}
