package caryatid.uncertainty;

/**
 * How probable it is that a true value lies within a tolerance, given its estimate (JCGM 106:2012,
 * clause 7; by the same quantiles as the intervals that are stated, see {@link Estimate#expanded}).
 *
 * @param below probability that the true value lies below the tolerance, 0 to 1
 * @param within probability that it lies within, 0 to 1
 * @param above probability that it lies above, 0 to 1
 */
public record Conformity(double below, double within, double above) {

  /**
   * The probabilities for a tolerance.
   *
   * @param estimate the estimate, in the tolerance's unit
   * @param lowest smallest value within; negative infinity for none
   * @param highest largest value within, not below {@code lowest}; positive infinity for none
   * @throws IllegalArgumentException if the limits are not in order
   */
  public static Conformity of(Estimate estimate, double lowest, double highest) {
    if (!(highest >= lowest)) {
      throw new IllegalArgumentException("tolerance from " + lowest + " to " + highest);
    }
    double below = outside(estimate, estimate.value() - lowest);
    double above = outside(estimate, highest - estimate.value());
    return new Conformity(below, Math.max(0, 1 - below - above), above);
  }

  /**
   * Whether an estimate of this uncertainty in the tolerance's middle would be within with at least
   * a probability: whether the measurement can decide for the tolerance at all.
   *
   * @param probability between 0 and 1, for example 0.95
   */
  public static boolean decidable(
      Estimate estimate, double lowest, double highest, double probability) {
    return (highest - lowest) / 2 >= estimate.expanded(probability);
  }

  /** The probability that the true value lies beyond a limit, by how far inside it was measured. */
  private static double outside(Estimate estimate, double inside) {
    double u = estimate.standardUncertainty();
    if (u == 0 || Double.isInfinite(inside)) {
      return inside < 0 ? 1 : 0;
    }
    return estimate.beyond(inside);
  }
}
