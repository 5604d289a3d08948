package caryatid.recording;

/**
 * How far the centre of pressure from forces and moments lies from the exported one, on average.
 *
 * @param rightMm to the right, mm
 * @param anteriorMm anterior, mm
 */
record Agreement(double rightMm, double anteriorMm) {
  /**
   * Twice the assumed accuracy of a plate's centre of pressure would show (common practice, no
   * source).
   */
  static final double WITHIN_MM = 2;

  double distanceMm() {
    return Math.hypot(rightMm, anteriorMm);
  }

  boolean close() {
    return distanceMm() <= WITHIN_MM;
  }
}
