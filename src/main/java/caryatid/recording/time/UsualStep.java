package caryatid.recording.time;

import caryatid.recording.table.NumberColumn;
import java.util.Arrays;

/**
 * The usual step of a series that should rise evenly: the median of steps spread over it, which
 * single wrong numbers do not move. Where most steps are zero, as in times coarser than the
 * sampling, it is the mean step of the middle half.
 */
final class UsualStep {
  /** So many steps tell the median of any number of even ones. */
  private static final int ENOUGH = 1_001;

  private UsualStep() {}

  /** The step; 0 for fewer than two numbers. */
  static double of(NumberColumn series) {
    int last = series.size() - 1;
    int count = Math.min(ENOUGH, last);
    if (count < 1) {
      return 0;
    }
    double[] steps = new double[count];
    for (int i = 0; i < count; i++) {
      int at = (int) ((long) i * last / count);
      steps[i] = series.at(at + 1) - series.at(at);
    }
    Arrays.sort(steps);
    double median = steps[count / 2];
    return median == 0 ? ofMiddleHalf(series) : median;
  }

  private static double ofMiddleHalf(NumberColumn series) {
    int from = (series.size() - 1) / 4;
    int to = series.size() - 1 - from;
    return (series.at(to) - series.at(from)) / (to - from);
  }
}
