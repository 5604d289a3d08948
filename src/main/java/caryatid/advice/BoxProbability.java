package caryatid.advice;

import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * The probability that values of a joint normal distribution all lie between limits: one value
 * after the other, given those before it, at points that are evenly spread (Genz 1992, J Comput
 * Graph Stat 1:141-149; points by the roots of primes after Richtmyer; both from memory).
 */
final class BoxProbability {
  private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);
  private static final int POINTS = 509;
  private static final double[] PRIMES = {2, 3, 5, 7, 11, 13, 17, 19, 23, 29, 31, 37};
  private static final double LEAST = 1e-16;

  private final double[][] root;
  private final double[] mean;
  private final double[] lowest;
  private final double[] highest;

  private BoxProbability(Prediction values, double[] lowest, double[] highest) {
    this.mean = values.meanMm().toArray();
    RealMatrix covariance = values.covariance();
    this.root = new CholeskyDecomposition(covariance, 1e-6, 0).getL().getData();
    this.lowest = lowest;
    this.highest = highest;
  }

  /** The probability; of the true offsets within limits, mm. */
  static double of(Prediction values, double[] lowest, double[] highest) {
    return new BoxProbability(values, lowest, highest).probability();
  }

  private double probability() {
    int points = mean.length == 1 ? 1 : POINTS;
    double sum = 0;
    for (int i = 1; i <= points; i++) {
      sum += at(i);
    }
    return Math.min(1, sum / points);
  }

  private double at(int point) {
    double[] drawn = new double[mean.length];
    double probability = 1;
    for (int k = 0; k < mean.length; k++) {
      double expected = mean[k];
      for (int before = 0; before < k; before++) {
        expected += root[k][before] * drawn[before];
      }
      double below = NORMAL.cumulativeProbability((lowest[k] - expected) / root[k][k]);
      double within = NORMAL.cumulativeProbability((highest[k] - expected) / root[k][k]) - below;
      probability *= within;
      double part = Math.abs(2 * fraction(point * Math.sqrt(PRIMES[k % PRIMES.length])) - 1);
      double level = Math.min(1 - LEAST, Math.max(LEAST, below + part * within));
      drawn[k] = NORMAL.inverseCumulativeProbability(level);
    }
    return probability;
  }

  private static double fraction(double x) {
    return x - Math.floor(x);
  }
}
