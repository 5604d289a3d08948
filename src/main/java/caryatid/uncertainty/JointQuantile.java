package caryatid.uncertainty;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * Quantiles of a value whose parts are known to different degrees of freedom: each part is expanded
 * by Student's t with its own degrees, and the parts are added in squares. At every probability a
 * part that grows moves the quantile outward, which no rule does that finds one t for the sum from
 * the parts' shares.
 */
final class JointQuantile {
  private static final double ACCURACY = 1e-13;
  private static final int MOST_STEPS = 200;

  /** As far out as probabilities are followed, in normal standard deviations: 6e-16. */
  private static final double FARTHEST = 8;

  private final double[] degrees;
  private final double[] variances;
  private final double sd;

  JointQuantile(List<Contribution> contributions) {
    Map<Double, Double> parts = new TreeMap<>();
    for (Contribution c : contributions) {
      double variance = c.amount() * c.amount();
      if (variance > 0) {
        parts.merge(c.degreesOfFreedom(), variance, Double::sum);
      }
    }
    degrees = parts.keySet().stream().mapToDouble(each -> each).toArray();
    variances = parts.values().stream().mapToDouble(each -> each).toArray();
    double sum = 0;
    for (double variance : variances) {
      sum += variance;
    }
    sd = Math.sqrt(sum);
  }

  /**
   * How far from the value the tail of a probability begins.
   *
   * @param tail above 0, at most 0.5
   */
  double at(double tail) {
    double squares = 0;
    for (int i = 0; i < degrees.length; i++) {
      double t = Quantiles.t(tail, degrees[i]);
      squares += t * t * variances[i];
    }
    return Math.sqrt(squares);
  }

  /**
   * The probability of the tail that begins so far from the value.
   *
   * @param away not negative
   */
  double tail(double away) {
    if (sd == 0) {
      return away > 0 ? 0 : 0.5;
    }
    if (degrees.length == 1) {
      return Quantiles.below(-away / sd, degrees[0]);
    }
    UnivariateFunction more = new FurtherOut(away);
    // Student's t lies further out than the normal distribution's quantile.
    double most = Math.min(FARTHEST, away / sd);
    if (more.value(most) <= 0) {
      return most < FARTHEST ? normalTail(most) : 0;
    }
    if (away == 0) {
      return 0.5;
    }
    return normalTail(solver().solve(MOST_STEPS, more, 0, most));
  }

  /** Degrees of freedom at which one t for all of it gives the same; infinite where all are. */
  double degreesAt(double tail) {
    if (sd == 0 || Double.isInfinite(degrees[0])) {
      return Double.POSITIVE_INFINITY;
    }
    if (degrees.length == 1) {
      return degrees[0];
    }
    double t = at(tail) / sd;
    UnivariateFunction more = new LargerT(tail, t);
    return 1 / solver().solve(MOST_STEPS, more, 0, 1 / degrees[0]);
  }

  /**
   * By how much the tail of a normal probability begins further out. A class, as the other one,
   * because Java 17 crashes where it makes the archive of classes with which the launcher starts
   * it, if a lambda expression stands here.
   */
  private final class FurtherOut implements UnivariateFunction {
    private final double away;

    FurtherOut(double away) {
      this.away = away;
    }

    @Override
    public double value(double z) {
      return at(normalTail(z)) - away;
    }
  }

  /** By how much t is larger, by the reciprocal of its degrees. */
  private static final class LargerT implements UnivariateFunction {
    private final double tail;
    private final double t;

    LargerT(double tail, double t) {
      this.tail = tail;
      this.t = t;
    }

    @Override
    public double value(double reciprocal) {
      return -Quantiles.t(tail, 1 / reciprocal) - t;
    }
  }

  private static double normalTail(double z) {
    return Quantiles.below(-z, Double.POSITIVE_INFINITY);
  }

  private static BrentSolver solver() {
    return new BrentSolver(ACCURACY, ACCURACY, ACCURACY);
  }
}
