package caryatid.recording.track;

/**
 * How far the centre of pressure from forces and moments lies from the exported one.
 *
 * @param rightMm to the right, on average, mm
 * @param anteriorMm anterior, on average, mm
 * @param rmsMm root mean square of the distance, mm; it also shows differences that cancel on
 *     average, as those of a wrong sign do
 */
record CopAgreement(double rightMm, double anteriorMm, double rmsMm) {
  /**
   * Twice the assumed accuracy of a plate's centre of pressure would show (common practice, no
   * source).
   */
  static final double WITHIN_MM = 2;

  /**
   * Further apart, one of the two is wrong: no plate is so inaccurate, and a tolerance for a load
   * line is narrower (common practice, no source).
   */
  static final double CONTRADICTORY_MM = 20;

  boolean close() {
    return rmsMm <= WITHIN_MM;
  }

  boolean contradictory() {
    return rmsMm > CONTRADICTORY_MM;
  }
}
