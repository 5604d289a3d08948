package caryatid.report.pages;

import caryatid.alignment.AlignmentState;
import caryatid.views.RecordView;
import java.util.Map;

/**
 * A fitting record as its report tells it.
 *
 * @param view what the record says
 * @param states what was found in stands, by the number of their entry, as far as their results can
 *     be read; stands that are missing here have no drawing
 */
public record RecordReportData(RecordView view, Map<Integer, AlignmentState> states) {
  /**
   * @throws IllegalArgumentException if the record has no entry that is whole
   */
  public RecordReportData {
    if (view.timeline().isEmpty()) {
      throw new IllegalArgumentException("nothing to tell");
    }
    states = Map.copyOf(states);
  }
}
