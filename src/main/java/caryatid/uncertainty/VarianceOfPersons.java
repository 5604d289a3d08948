package caryatid.uncertainty;

import java.util.List;
import org.apache.commons.math3.special.Gamma;

/**
 * How a variance spreads over persons, as the sample variance of one more person would: true
 * variances are scaled inverse chi-square. One person's variance is then moderated by it: pooled
 * with it as if it were a sample of its own (Smyth 2004, Linear models and empirical Bayes methods,
 * Stat Appl Genet Mol Biol 3:3, section 3).
 */
final class VarianceOfPersons {
  private static final double LEAST = 1e-8;
  private static final double MOST = 1e8;

  private VarianceOfPersons() {}

  /**
   * The usual variance and its degrees of freedom, both at once, from the variances of persons: the
   * first two moments of their logarithms are made to agree (Smyth 2004, section 6.2).
   *
   * @param persons a sample variance of each, above 0, with finite degrees of freedom; at least two
   * @return degrees of freedom are infinite where the persons differ by no more than their samples
   *     let expect
   * @throws IllegalArgumentException if there are fewer than two, or a variance is 0
   */
  static SampleVariance fit(List<SampleVariance> persons) {
    if (persons.size() < 2 || persons.stream().anyMatch(p -> p.variance() == 0)) {
      throw new IllegalArgumentException("variances of persons: " + persons);
    }
    double[] logs = persons.stream().mapToDouble(VarianceOfPersons::level).toArray();
    double expected =
        persons.stream()
            .mapToDouble(p -> Gamma.trigamma(p.degreesOfFreedom() / 2))
            .average()
            .orElseThrow();
    double mean = SampleStatistics.mean(logs);
    double more = SampleStatistics.covariance(logs, logs) - expected;
    if (!(more > 0)) {
      return new SampleVariance(Math.exp(mean), Double.POSITIVE_INFINITY);
    }
    double half = trigammaInverse(more);
    return new SampleVariance(Math.exp(mean + Gamma.digamma(half) - Math.log(half)), 2 * half);
  }

  /** The logarithm of a person's variance less what its degrees of freedom make of it. */
  private static double level(SampleVariance person) {
    double half = person.degreesOfFreedom() / 2;
    return Math.log(person.variance()) - Gamma.digamma(half) + Math.log(half);
  }

  /** Halves the range, by its logarithm, until nothing is left between; trigamma falls. */
  static double trigammaInverse(double value) {
    double low = LEAST;
    double high = MOST;
    for (int i = 0; i < 200; i++) {
      double middle = Math.sqrt(low * high);
      if (Gamma.trigamma(middle) > value) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return Math.sqrt(low * high);
  }
}
