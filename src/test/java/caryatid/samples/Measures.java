package caryatid.samples;

import java.util.Arrays;

/** Measures of sway, computed apart from the program's own. */
public final class Measures {
  private Measures() {}

  /** The mean. */
  public static double mean(double[] x) {
    return Arrays.stream(x).sum() / x.length;
  }

  /** The standard deviation with n - 1. */
  public static double sd(double[] x) {
    double mean = mean(x);
    return Math.sqrt(Arrays.stream(x).map(v -> (v - mean) * (v - mean)).sum() / (x.length - 1));
  }

  /** Path over time, in the unit of x each second. */
  public static double speed(double[] x, double[] y, double rateHz) {
    double path = 0;
    for (int i = 1; i < x.length; i++) {
      path += Math.hypot(x[i] - x[i - 1], y[i] - y[i - 1]);
    }
    return path * rateHz / (x.length - 1);
  }

  /** The largest less the smallest. */
  public static double range(double[] x) {
    return Arrays.stream(x).max().orElseThrow() - Arrays.stream(x).min().orElseThrow();
  }

  /** How far the means of the first and the last quarter lie apart. */
  public static double drift(double[] x) {
    int quarter = x.length / 4;
    double[] first = Arrays.copyOfRange(x, 0, quarter);
    double[] last = Arrays.copyOfRange(x, x.length - quarter, x.length);
    return Math.abs(mean(first) - mean(last));
  }

  /** The largest difference of neighbours. */
  public static double largestStep(double[] x) {
    double largest = 0;
    for (int i = 1; i < x.length; i++) {
      largest = Math.max(largest, Math.abs(x[i] - x[i - 1]));
    }
    return largest;
  }
}
