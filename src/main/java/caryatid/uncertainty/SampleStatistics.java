package caryatid.uncertainty;

/**
 * Statistics of a series of numbers, computed in two passes with the first pass's rounding
 * corrected (Chan, Golub and LeVeque 1983, Am Stat 37:242-247; from memory), so that a small spread
 * about a large mean keeps its digits.
 */
public final class SampleStatistics {
  private SampleStatistics() {}

  /**
   * Arithmetic mean.
   *
   * @throws IllegalArgumentException if there is no number
   */
  public static double mean(double[] values) {
    double rough = roughMean(values);
    return rough + sumFrom(values, rough) / values.length;
  }

  /**
   * Arithmetic mean in one pass, for comparing with a limit: of a million numbers some ten digits
   * hold.
   *
   * @throws IllegalArgumentException if there is no number
   */
  public static double roughMean(double[] values) {
    if (values.length == 0) {
      throw new IllegalArgumentException("the mean of nothing");
    }
    return sumFrom(values, 0) / values.length;
  }

  /**
   * Standard deviation with n - 1.
   *
   * @throws IllegalArgumentException if there are fewer than two numbers
   */
  public static double standardDeviation(double[] values) {
    return Math.sqrt(covariance(values, values));
  }

  /**
   * Standard deviation with n - 1 about the mean of one pass, for comparing with a limit.
   *
   * @throws IllegalArgumentException if there are fewer than two numbers
   */
  public static double roughDeviation(double[] values) {
    if (values.length < 2) {
      throw new IllegalArgumentException("the deviation of " + values.length);
    }
    double mean = roughMean(values);
    double squares = 0;
    double rest = 0;
    for (double value : values) {
      double deviation = value - mean;
      squares += deviation * deviation;
      rest += deviation;
    }
    return Math.sqrt((squares - rest * rest / values.length) / (values.length - 1));
  }

  /**
   * Covariance with n - 1.
   *
   * @throws IllegalArgumentException if there are fewer than two numbers, or not equally many
   */
  public static double covariance(double[] a, double[] b) {
    if (a.length < 2 || a.length != b.length) {
      throw new IllegalArgumentException("covariance of " + a.length + " and " + b.length);
    }
    double meanA = mean(a);
    double meanB = a == b ? meanA : mean(b);
    double sum = 0;
    double restA = 0;
    double restB = 0;
    for (int i = 0; i < a.length; i++) {
      double da = a[i] - meanA;
      double db = b[i] - meanB;
      sum += da * db;
      restA += da;
      restB += db;
    }
    return (sum - restA * restB / a.length) / (a.length - 1);
  }

  private static double sumFrom(double[] values, double origin) {
    double sum = 0;
    for (double value : values) {
      sum += value - origin;
    }
    return sum;
  }
}
