package caryatid.advice;

import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * Keeps a change from making a knee less safe. A prosthetic knee: nothing that makes it more
 * probable than 5 % that the line runs behind its axis, and while its warning is open nothing that
 * does not make that clearly less probable: by 5 points, the difference below which probabilities
 * are called about equal, or from 10 % down by half. The wearer's own knee: nothing that makes it
 * more probable than 20 % that the line runs behind it (buckling) or far in front (hyperextension);
 * what is more probable already must not become more so. The probabilities and what counts as far
 * are common practice without a source.
 *
 * @param prosthetic whether the knee belongs to the prosthesis
 * @param warned whether its warning is open
 * @param behindNow probability that the line runs behind it now
 * @param farNow probability that it runs far in front of it now
 * @param farMm from where on it is far in front, mm
 */
record KneeGuard(
    boolean prosthetic, boolean warned, double behindNow, double farNow, double farMm) {
  /** How probable a line behind a prosthetic knee's axis may be (common practice, no source). */
  static final double MOST_BEHIND = 0.05;

  /** What is left of a low probability while the warning is open (common practice, no source). */
  private static final double HALF = 0.5;

  /** The same for the wearer's own knee, behind or far in front (common practice, no source). */
  static final double MOST_OF_OWN_KNEE = 0.2;

  /** From here on a line is far in front of a knee, mm (common practice, no source). */
  static final double FAR_MM = 50;

  private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);

  /**
   * The guard of a knee.
   *
   * @param mm where the line runs now, mm in front of it
   * @param sdMm standard deviation of that, mm
   * @param highestMm the largest offset that its target allows, mm
   */
  static KneeGuard of(
      boolean prosthetic, boolean warned, double mm, double sdMm, double highestMm) {
    double far = Math.max(FAR_MM, highestMm);
    return new KneeGuard(prosthetic, warned, behind(mm, sdMm), beyond(mm, sdMm, far), far);
  }

  static double behind(double mm, double sdMm) {
    return NORMAL.cumulativeProbability(-mm / sdMm);
  }

  private static double beyond(double mm, double sdMm, double far) {
    return NORMAL.cumulativeProbability((mm - far) / sdMm);
  }

  /** Whether an expected offset of the knee is allowed. */
  boolean allows(double mm, double sdMm) {
    double behind = behind(mm, sdMm);
    if (prosthetic) {
      return warned
          ? behind <= clearlyBelow(behindNow)
          : behind <= Math.max(MOST_BEHIND, behindNow);
    }
    return behind <= Math.max(MOST_OF_OWN_KNEE, behindNow)
        && beyond(mm, sdMm, farMm) <= Math.max(MOST_OF_OWN_KNEE, farNow);
  }

  /** Up to where a probability is clearly less than another, so that a tiny fall is none. */
  private static double clearlyBelow(double probability) {
    return Math.max(probability - Advisor.ABOUT_EQUAL, HALF * probability);
  }

  /**
   * Whether a second change is allowed after a first one: while the warning is open it must not
   * take back what the first one gained.
   */
  boolean allowsNext(double behindFirst, double mm, double sdMm) {
    return !(prosthetic && warned) || behind(mm, sdMm) <= behindFirst;
  }
}
