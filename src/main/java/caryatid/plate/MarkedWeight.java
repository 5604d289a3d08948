package caryatid.plate;

/**
 * A weight on a marked place, and where the plate shows it.
 *
 * @param rightMm the place, to the right of the zero as a standing person sees it, mm
 * @param anteriorMm the place, anterior to the zero, mm
 * @param kg its mass, kg, above 0
 * @param shown where the plate shows it
 */
public record MarkedWeight(double rightMm, double anteriorMm, double kg, ShownLoad shown) {
  /**
   * @throws IllegalArgumentException if a number is out of its range
   */
  public MarkedWeight {
    if (!Double.isFinite(rightMm + anteriorMm) || !(kg > 0)) {
      throw new IllegalArgumentException(rightMm + ", " + anteriorMm + " mm, " + kg + " kg");
    }
  }
}
