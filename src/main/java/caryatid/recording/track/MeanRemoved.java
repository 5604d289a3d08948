package caryatid.recording.track;

import caryatid.recording.model.ImportProblem;
import caryatid.recording.table.SampleSeries;
import caryatid.recording.table.StageMessages;
import caryatid.remark.Argument;
import java.util.BitSet;

/**
 * Refuses an exported centre of pressure whose mean is zero beside its sway in every direction: the
 * mean was subtracted, and where the person stood is lost.
 */
final class MeanRemoved {
  /** So many samples spread over a recording tell its mean well enough to go on. */
  private static final int ENOUGH = 1_000;

  private MeanRemoved() {}

  /**
   * @param left samples that are not used
   */
  static StageMessages refused(CopSeries centre, BitSet left, String plate, String file) {
    StageMessages nothing = StageMessages.none(file);
    SampleSeries anterior = centre.anterior();
    SampleSeries right = centre.right().orElse(anterior);
    int few = Math.max(1, anterior.size() / ENOUGH);
    // Few samples tell nearly always that a mean is far from zero.
    boolean maybe =
        near(right, left, few, TrackLimits.MEAN_REMOVED_LOOSELY)
            && near(anterior, left, few, TrackLimits.MEAN_REMOVED_LOOSELY);
    return maybe
            && near(right, left, 1, TrackLimits.MEAN_REMOVED)
            && near(anterior, left, 1, TrackLimits.MEAN_REMOVED)
        ? nothing.withProblem(ImportProblem.MEAN_REMOVED, Argument.text(plate))
        : nothing;
  }

  private static boolean near(SampleSeries series, BitSet left, int step, double most) {
    double sum = 0;
    double squares = 0;
    int count = 0;
    for (int i = 0; i < series.size(); i += step) {
      if (!left.get(i)) {
        double value = series.at(i);
        sum += value;
        squares += value * value;
        count++;
      }
    }
    double deviation = Math.sqrt(squares / Math.max(1, count));
    return deviation > 0 && Math.abs(sum / count) < most * deviation;
  }
}
