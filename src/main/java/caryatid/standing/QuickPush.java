package caryatid.standing;

import caryatid.uncertainty.SampleStatistics;

/**
 * How much the horizontal force varies within a second, and how much it must for the way the centre
 * of pressure moves.
 *
 * <p>A standing body is held up like an inverted pendulum: force over weight is the distance of the
 * centre of pressure from the centre of mass, over its height (Winter, Patla, Prince, Ishac and
 * Gielo-Perczak 1998, J Neurophysiol 80:1211-1221, from memory). Within a second the centre of mass
 * hardly follows, so that the quotient of both movements is near one over its height, about 1 per
 * metre.
 */
final class QuickPush {
  private static final double PER_S = 10;

  /** Tenths of a second on each side of the one that is compared with their mean. */
  private static final int SIDE = 5;

  private QuickPush() {}

  /**
   * Standard deviation (n - 1) of tenths of a second about the mean of 1.1 s; 0 where the series is
   * shorter than 2 s.
   */
  static double quickSd(double[] series, double rateHz) {
    int count = (int) Math.round(series.length / rateHz * PER_S);
    if (count < 4 * SIDE || count > series.length) {
      return 0;
    }
    double[] tenths = tenths(series, count);
    double[] quick = new double[count - 2 * SIDE];
    for (int i = 0; i < quick.length; i++) {
      double sum = 0;
      for (int j = i; j <= i + 2 * SIDE; j++) {
        sum += tenths[j];
      }
      quick[i] = tenths[i + SIDE] - sum / (2 * SIDE + 1);
    }
    return SampleStatistics.standardDeviation(quick);
  }

  private static double[] tenths(double[] series, int count) {
    int[] edges = Blocks.edges(series.length, count);
    double[] tenths = new double[count];
    for (int b = 0; b < count; b++) {
      for (int i = edges[b]; i < edges[b + 1]; i++) {
        tenths[b] += series[i];
      }
      tenths[b] /= edges[b + 1] - edges[b];
    }
    return tenths;
  }
}
