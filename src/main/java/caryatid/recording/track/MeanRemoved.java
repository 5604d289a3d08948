package caryatid.recording.track;

import caryatid.recording.model.ImportProblem;
import caryatid.recording.model.Samples;
import caryatid.recording.model.UsableMask;
import caryatid.recording.table.StageFindings;
import caryatid.remark.Argument;

/**
 * Refuses an exported centre of pressure whose mean is zero beside its sway in both directions: the
 * mean was subtracted, and where the person stood is lost.
 */
final class MeanRemoved {
  /**
   * Mean over standard deviation. The mean of a stand lies anywhere within some 30 mm of a plate's
   * zero and its deviation is about 5 mm, so that one in some thousand stands is this near in one
   * direction, and one in a million in both (common practice, no source).
   */
  private static final double NEAR = 0.005;

  private MeanRemoved() {}

  static StageFindings refused(
      Samples right, Samples anterior, UsableMask usable, String plate, String file) {
    StageFindings nothing = StageFindings.none(file);
    return removed(right, usable) && removed(anterior, usable)
        ? nothing.withProblem(ImportProblem.MEAN_REMOVED, Argument.text(plate))
        : nothing;
  }

  private static boolean removed(Samples series, UsableMask usable) {
    double sum = 0;
    double squares = 0;
    for (int i = 0; i < usable.size(); i++) {
      if (usable.at(i)) {
        sum += series.at(i);
        squares += series.at(i) * series.at(i);
      }
    }
    double mean = sum / usable.count();
    double deviation = Math.sqrt(squares / usable.count());
    return deviation > 0 && Math.abs(mean) < NEAR * deviation;
  }
}
