package caryatid.advice;

import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;
import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * Factors of two-sided tolerance intervals: mean give or take factor times standard deviation holds
 * at least a share of all values with a confidence, where mean and standard deviation are those of
 * n values of a normal distribution (ISO 16269-6; exact by Eberhardt, Mee and Reeve 1989, Commun
 * Stat Simul 18:397-413; from memory).
 */
final class ToleranceFactor {
  private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);
  private static final GaussIntegrator POINTS = new GaussIntegratorFactory().legendre(60, 0, 8);
  private static final double MOST = 1000;
  private static final int STEPS = 200;

  private ToleranceFactor() {}

  /**
   * The factor.
   *
   * @param n values, 2 or more
   * @param share of all values that the interval is to hold, above 0, below 1
   * @param confidence with which it does, above 0, below 1
   * @throws IllegalArgumentException if a number is out of its range
   */
  static double of(int n, double share, double confidence) {
    if (n < 2 || !(share > 0 && share < 1) || !(confidence > 0 && confidence < 1)) {
      throw new IllegalArgumentException(n + " values, " + share + ", " + confidence);
    }
    double about = tabled(n, share, confidence);
    return new BrentSolver(1e-9)
        .solve(STEPS, k -> confidence(n, share, k) - confidence, about / 4, about * 4);
  }

  /**
   * The factor as tables have it: the share about a mean that lies one standard error aside
   * (Weissberg and Beatty 1960, Technometrics 2:483-500; from memory).
   */
  static double tabled(int n, double share, double confidence) {
    double chi = ChiSquaredDistribution.of(n - 1).inverseCumulativeProbability(1 - confidence);
    return reach(1 / Math.sqrt(n), share) * Math.sqrt((n - 1) / chi);
  }

  /**
   * The largest share that an interval of this factor holds with a confidence; 0 where it is less
   * than a hundredth.
   *
   * @param factor how many standard deviations it reaches to either side, not negative
   */
  static double share(int n, double factor, double confidence) {
    double least = 0.01;
    double most = 1 - 1e-6;
    if (factor <= 0 || confidence(n, least, factor) < confidence) {
      return 0;
    }
    return confidence(n, most, factor) >= confidence
        ? 1
        : new BrentSolver(1e-9)
            .solve(STEPS, p -> confidence(n, p, factor) - confidence, least, most);
  }

  /** With what confidence an interval holds a share: the mean of n lies x / root n aside. */
  private static double confidence(int n, double share, double factor) {
    ChiSquaredDistribution chi = ChiSquaredDistribution.of(n - 1);
    return 2
        * POINTS.integrate(
            x -> {
              double reach = reach(x / Math.sqrt(n), share) / factor;
              return NORMAL.density(x) * chi.survivalProbability((n - 1) * reach * reach);
            });
  }

  /** How far to either side of a point so far aside the share lies, in standard deviations. */
  private static double reach(double aside, double share) {
    UnivariateFunction held =
        r ->
            NORMAL.cumulativeProbability(aside + r)
                - NORMAL.cumulativeProbability(aside - r)
                - share;
    return new BrentSolver(1e-12).solve(STEPS, held, 0, MOST);
  }
}
