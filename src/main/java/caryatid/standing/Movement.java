package caryatid.standing;

import caryatid.uncertainty.SampleStatistics;

/**
 * How much and how fast a centre of pressure moves in one direction.
 *
 * @param sdMm standard deviation (n - 1), mm
 * @param speedMmPerS mean speed from one tenth of a second to the next, mm/s; the tenths are means,
 *     so that noise and rate hardly count
 */
record Movement(double sdMm, double speedMmPerS) {
  private static final double PER_S = 10;

  /**
   * @param mm at least two samples
   * @param rateHz above 0
   */
  static Movement of(double[] mm, double rateHz) {
    int count = (int) Math.max(2, Math.min(mm.length, Math.round(mm.length / rateHz * PER_S)));
    int[] edges = Blocks.edges(mm.length, count);
    double path = 0;
    double before = mean(mm, edges[0], edges[1]);
    for (int b = 1; b < count; b++) {
      double here = mean(mm, edges[b], edges[b + 1]);
      path += Math.abs(here - before);
      before = here;
    }
    double stepS = mm.length / rateHz / count;
    return new Movement(SampleStatistics.standardDeviation(mm), path / ((count - 1) * stepS));
  }

  private static double mean(double[] mm, int from, int to) {
    double sum = 0;
    for (int i = from; i < to; i++) {
      sum += mm[i];
    }
    return sum / (to - from);
  }
}
