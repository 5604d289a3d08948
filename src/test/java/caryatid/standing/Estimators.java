package caryatid.standing;

import caryatid.uncertainty.Cause;
import caryatid.uncertainty.Contribution;
import caryatid.uncertainty.Quantiles;
import caryatid.uncertainty.SampleStatistics;
import caryatid.uncertainty.Source;
import java.util.Arrays;

/** Ways to state the error of a correlated series' mean, as half-widths of 95 % intervals. */
enum Estimators {
  /** Autocorrelation summed to its first zero; normal distribution. */
  AUTOCORRELATION("autocorrelation to its first zero") {
    @Override
    double halfWidth(double[] residuals, double sd) {
      return normal() * sd / Math.sqrt(EffectiveSampleSize.of(residuals));
    }
  },
  BATCHES_8("8 batch means, t(7)") {
    @Override
    double halfWidth(double[] residuals, double sd) {
      return batches(residuals, 8);
    }
  },
  BATCHES_4("4 batch means, t(3)") {
    @Override
    double halfWidth(double[] residuals, double sd) {
      return batches(residuals, 4);
    }
  },
  COSINES_8("8 cosines, t(8)") {
    @Override
    double halfWidth(double[] residuals, double sd) {
      return cosines(residuals, 8);
    }
  },
  COSINES_4("4 cosines, t(4)") {
    @Override
    double halfWidth(double[] residuals, double sd) {
      return cosines(residuals, 4);
    }
  },
  COSINES_2("2 cosines, t(2)") {
    @Override
    double halfWidth(double[] residuals, double sd) {
      return cosines(residuals, 2);
    }
  },
  /** What the program uses. */
  CHOSEN("2 cosines, raised for memory, t(2)") {
    @Override
    double halfWidth(double[] residuals, double sd) {
      Contribution error = MeanStandardError.of(new Source(Cause.SWAY, ""), residuals);
      return Quantiles.t(0.975, error.degreesOfFreedom()) * error.standardUncertainty();
    }
  };

  final String words;

  Estimators(String words) {
    this.words = words;
  }

  abstract double halfWidth(double[] residuals, double sd);

  private static double normal() {
    return Quantiles.t(0.975, Double.POSITIVE_INFINITY);
  }

  private static double batches(double[] residuals, int count) {
    double[] means = new double[count];
    int[] edges = Blocks.edges(residuals.length, count);
    for (int b = 0; b < count; b++) {
      means[b] = SampleStatistics.mean(Arrays.copyOfRange(residuals, edges[b], edges[b + 1]));
    }
    double error = SampleStatistics.standardDeviation(means) / Math.sqrt(count);
    return Quantiles.t(0.975, count - 1) * error;
  }

  private static double cosines(double[] residuals, int count) {
    double sum = 0;
    for (int j = 1; j <= count; j++) {
      double transform = MeanStandardError.cosineSum(residuals, j);
      sum += transform * transform;
    }
    return Quantiles.t(0.975, count) * Math.sqrt(2 * sum / count) / residuals.length;
  }
}
