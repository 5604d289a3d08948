package caryatid.uncertainty;

import java.util.Arrays;

/**
 * How far values lie from their median, in units that one odd value cannot stretch: the modified
 * z-scores of Iglewicz and Hoaglin, from the median and the median of the distances to it.
 * NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.17.
 */
public final class ModifiedZScores {
  /** Beyond it a value is labelled as a possible outlier (the same source). */
  public static final double LIMIT = 3.5;

  /** With fewer values the spread says little (common practice, no source). */
  public static final int FEWEST = 10;

  private static final double TO_STANDARD = 0.6745;

  private ModifiedZScores() {}

  /**
   * The score of each value, signed.
   *
   * @param values finite numbers
   * @return all 0 for fewer than {@link #FEWEST} values, or where more than half of them are equal
   */
  public static double[] of(double[] values) {
    double middle = median(values);
    double spread = median(Arrays.stream(values).map(v -> Math.abs(v - middle)).toArray());
    if (values.length < FEWEST || spread == 0) {
      return new double[values.length];
    }
    return Arrays.stream(values).map(v -> TO_STANDARD * (v - middle) / spread).toArray();
  }

  private static double median(double[] values) {
    if (values.length == 0) {
      return 0;
    }
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    int half = sorted.length / 2;
    return sorted.length % 2 == 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
  }
}
