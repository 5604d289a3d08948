package caryatid.loadline;

/**
 * Limits beyond which a stand cannot be used. Those by which it is remarked or asked about are
 * constants.
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

  /** In standing no joint is further from its own foot's line (common practice, no source). */
  static final double FAR_SAGITTAL_MM = 150;

  static final double FAR_FRONTAL_MM = 100;

  /**
   * A distance between the feet that differs by more from the stated one is asked about, mm: the
   * centre of pressure lies some way from the heel's midline, more so with the toes turned out
   * (common practice, no source).
   */
  static final double WIDTH_DIFFERS_MM = 60;

  /**
   * Marks lie within 45 mm of their foot's line; plates that were exchanged move both feet, each by
   * half of this or more (common practice, no source).
   */
  static final double MARKS_TELL_MM = 90;

  /**
   * What part of the body's swing fore and aft one foot's centre of pressure shows (common
   * practice, no source; the sound foot and the load that moves between the feet take the rest).
   */
  static final double SHOWS = 0.7;

  /**
   * Relative standard uncertainty of the body's swing fore and aft where one foot alone shows it: a
   * foot may follow the body's sway more or less (standard deviation of the logarithm of their
   * ratio, 22 persons without a prosthesis on two plates, computed).
   */
  static final double FOLLOWS = 0.26;

  /**
   * The same of the body's swing sideways, taken from one foot's fore and aft. The ratio of the two
   * standard deviations scatters by 0.37 (standard deviation of its logarithm in the first 20 s of
   * 60 real stands of the open data set of Santos and Duarte 2016, PeerJ 4:e2648), of which 0.29 is
   * how badly a stand of 20 s shows its two standard deviations, with 11 to 12 degrees of freedom
   * each: persons differ by 0.23. The foot follows more or less, by 0.26. Together 0.35.
   */
  static final double FOLLOWS_SIDEWAYS = 0.35;

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
