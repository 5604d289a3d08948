package caryatid.standing;

import java.util.function.IntToDoubleFunction;

/**
 * As how many independent samples a correlated series counts for its mean: n / (1 + 2 sum (1 - k/n)
 * rho_k) (Zieba 2010, Metrol Meas Syst 17:3-16; formula from memory).
 */
final class EffectiveSampleSize {
  /**
   * A series is averaged into at most this many parts first: memory shorter than a part is none.
   * Odd, so that the parts are the same when time runs backwards.
   */
  private static final int PARTS = 401;

  private EffectiveSampleSize() {}

  /**
   * The effective size of n samples of a known autocorrelation.
   *
   * @param n samples, at least 1
   * @param rho autocorrelation at lags 1 up to, not including, {@code lags}
   * @param lags at most n
   */
  static double of(int n, IntToDoubleFunction rho, int lags) {
    double sum = 0;
    for (int k = 1; k < lags; k++) {
      sum += (1 - (double) k / n) * rho.applyAsDouble(k);
    }
    return n / (1 + 2 * sum);
  }

  /**
   * The effective size that residuals show, their autocorrelation summed up to its first zero. Too
   * large if the series is short compared with its memory; used to detect that, not to state
   * uncertainty.
   *
   * @param residuals in order of time, summing to zero
   */
  static double of(double[] residuals) {
    double[] parts = averaged(residuals);
    double square = products(parts, 0);
    if (!(square > 0)) {
      return residuals.length;
    }
    int zero = 1;
    double[] rho = new double[parts.length];
    while (zero < parts.length && (rho[zero] = products(parts, zero) / square) > 0) {
      zero++;
    }
    return of(parts.length, k -> rho[k], zero);
  }

  private static double products(double[] values, int lag) {
    double sum = 0;
    for (int i = 0; i + lag < values.length; i++) {
      sum += values[i] * values[i + lag];
    }
    return sum;
  }

  private static double[] averaged(double[] values) {
    int count = Math.min(PARTS, values.length);
    double[] parts = new double[count];
    int[] edges = Blocks.edges(values.length, count);
    for (int p = 0; p < count; p++) {
      double sum = 0;
      for (int i = edges[p]; i < edges[p + 1]; i++) {
        sum += values[i];
      }
      parts[p] = sum / (edges[p + 1] - edges[p]);
    }
    return parts;
  }
}
