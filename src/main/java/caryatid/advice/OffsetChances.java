package caryatid.advice;

import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * How probably each offset by itself lies within its limits after none, one or two changes: quick
 * enough to try every amount; what offsets share is left to {@link BoxProbability}.
 */
final class OffsetChances {
  private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);

  /** Beyond so many standard deviations the tail is taken by its exponent alone. */
  private static final double FAR_SD = 8;

  private final WearerModel model;
  private final ToleranceBounds bounds;

  /**
   * @param bounds what each of the model's offsets may be, in their order
   */
  OffsetChances(WearerModel model, ToleranceBounds bounds) {
    this.model = model;
    this.bounds = bounds;
  }

  /**
   * What offsets may be, mm; infinite where nothing is asked of one.
   *
   * @param lowest smallest
   * @param highest largest
   */
  record ToleranceBounds(double[] lowest, double[] highest) {}

  /**
   * By how much up to two kinds are changed.
   *
   * @param one the first kind: its place among the model's parameters
   * @param a its amount, in its unit
   * @param other the second kind
   * @param b its amount; 0 where one is changed alone
   */
  record Amounts(int one, double a, int other, double b) {
    static final Amounts NONE = new Amounts(0, 0, 0, 0);

    static Amounts of(int kind, double by) {
      return new Amounts(kind, by, 0, 0);
    }

    Amounts and(int kind, double by) {
      return new Amounts(one, a, kind, by);
    }

    Amounts first() {
      return of(one, a);
    }

    Amounts second() {
      return of(other, b);
    }
  }

  /** Where an offset is expected, mm. */
  double mean(Amounts by, int j) {
    return model.mean(0, j)
        + by.a() * model.mean(by.one(), j)
        + (by.b() == 0 ? 0 : by.b() * model.mean(by.other(), j));
  }

  /** Its standard deviation, mm. */
  double sd(Amounts by, int j) {
    int one = by.one();
    double variance =
        model.covariance(0, 0, j)
            + 2 * by.a() * model.covariance(0, one, j)
            + by.a() * by.a() * model.covariance(one, one, j);
    if (by.b() != 0) {
      int other = by.other();
      variance +=
          2 * by.b() * model.covariance(0, other, j)
              + by.b() * by.b() * model.covariance(other, other, j)
              + 2 * by.a() * by.b() * model.covariance(one, other, j);
    }
    return Math.sqrt(variance);
  }

  /** The logarithm of the product of the probabilities of all offsets. */
  double log(Amounts by) {
    double sum = 0;
    for (int j = 0; j < bounds.lowest().length; j++) {
      double mean = mean(by, j);
      double sd = sd(by, j);
      sum += logWithin((bounds.lowest()[j] - mean) / sd, (bounds.highest()[j] - mean) / sd);
    }
    return sum;
  }

  private static double logWithin(double from, double to) {
    double nearest = Math.max(from, -to);
    return nearest > FAR_SD
        ? -nearest * nearest / 2 - Math.log(nearest)
        : Math.log(
            Math.max(
                Double.MIN_NORMAL,
                from > 0
                    ? NORMAL.survivalProbability(from) - NORMAL.survivalProbability(to)
                    : NORMAL.cumulativeProbability(to) - NORMAL.cumulativeProbability(from)));
  }
}
