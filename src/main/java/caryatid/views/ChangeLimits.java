package caryatid.views;

/** By how much stands of one record may differ before it is asked why, each with its source. */
final class ChangeLimits {
  /**
   * Between stands of one alignment offsets differ by less, however uncertain they are, mm (common
   * practice, no source).
   */
  static final double UNEXPLAINED_MM = 30;

  /**
   * What was changed moves a line by no more than so many times its plain geometry (common
   * practice, no source).
   */
  static final double TIMES_GEOMETRY = 1.5;

  /** From heel to ball, mm (common practice, no source). */
  static final double HEEL_TO_BALL_MM = 170;

  /** Heights of a landmark that differ by less are the same, mm: half a unit of a ruler. */
  static final double SAME_HEIGHT_MM = 0.5;

  /** A wearer's mass changes by less from stand to stand, as a fraction (no source). */
  static final double MASS_CHANGES = 0.1;

  private ChangeLimits() {}
}
