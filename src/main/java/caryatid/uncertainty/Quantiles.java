package caryatid.uncertainty;

import org.apache.commons.statistics.distribution.FDistribution;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.apache.commons.statistics.distribution.TDistribution;

/** Quantiles and probabilities of Student's t, with the normal distribution as its limit. */
public final class Quantiles {
  private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);

  /**
   * The last quantiles found, each at the place of its hash: a few are asked for again and again.
   * Several threads may use it: each item is complete, and says what it is of.
   */
  private static final StudentsT[] FOUND = new StudentsT[1 << 10];

  private Quantiles() {}

  private record StudentsT(double probability, double degreesOfFreedom, double quantile) {
    static StudentsT of(double probability, double degreesOfFreedom) {
      return new StudentsT(
          probability,
          degreesOfFreedom,
          Double.isInfinite(degreesOfFreedom)
              ? NORMAL.inverseCumulativeProbability(probability)
              : TDistribution.of(degreesOfFreedom).inverseCumulativeProbability(probability));
    }

    boolean isOf(double otherProbability, double otherDegrees) {
      return probability == otherProbability && degreesOfFreedom == otherDegrees;
    }
  }

  /**
   * The quantile of Student's t.
   *
   * @param probability between 0 and 1
   * @param degreesOfFreedom above 0; infinite for the normal distribution
   */
  public static double t(double probability, double degreesOfFreedom) {
    int hash = 31 * Double.hashCode(probability) + Double.hashCode(degreesOfFreedom);
    int place = (hash ^ hash >>> 10 ^ hash >>> 20) & FOUND.length - 1;
    StudentsT found = FOUND[place];
    if (found == null || !found.isOf(probability, degreesOfFreedom)) {
      found = StudentsT.of(probability, degreesOfFreedom);
      FOUND[place] = found;
    }
    return found.quantile();
  }

  /**
   * The quantile of Fisher's F, the ratio of two estimates of one variance.
   *
   * @param probability between 0 and 1
   * @param above degrees of freedom of the estimate above the line, above 0
   * @param below of the one below it, above 0
   */
  public static double f(double probability, double above, double below) {
    return FDistribution.of(above, below).inverseCumulativeProbability(probability);
  }

  /**
   * The probability that Student's t is at most a value.
   *
   * @param degreesOfFreedom above 0; infinite for the normal distribution
   */
  public static double below(double value, double degreesOfFreedom) {
    return Double.isInfinite(degreesOfFreedom)
        ? NORMAL.cumulativeProbability(value)
        : TDistribution.of(degreesOfFreedom).cumulativeProbability(value);
  }
}
