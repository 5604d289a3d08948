package caryatid.loadline;

/**
 * Limits beyond which a stand cannot be used.
 *
 * @param levelFeetMm feet that differ in height by more are remarked, mm, not negative; a floor
 *     that differs by more from the plate's top gives no result
 * @param mostUnlevelMm feet that differ by more give no result, mm, not below {@code levelFeetMm}
 * @param trustedLean largest horizontal over vertical force of both feet together at which the
 *     horizontal force is trusted, not negative; in standing it is about zero
 */
public record UseLimits(double levelFeetMm, double mostUnlevelMm, double trustedLean) {
  /**
   * The usual limits: 3 mm and 10 mm (common practice, no source); 0.3 deg, the smallest offset
   * seen in real recordings under both feet.
   */
  public static final UseLimits USUAL = new UseLimits(3, 10, Math.toRadians(0.3));

  /**
   * @throws IllegalArgumentException if a number is out of its range
   */
  public UseLimits {
    if (!(levelFeetMm >= 0 && mostUnlevelMm >= levelFeetMm && trustedLean >= 0)) {
      throw new IllegalArgumentException(
          levelFeetMm + " mm, " + mostUnlevelMm + " mm, " + trustedLean);
    }
  }
}
