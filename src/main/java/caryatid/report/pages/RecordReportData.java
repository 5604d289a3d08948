package caryatid.report.pages;

import caryatid.alignment.AlignmentState;
import caryatid.views.RecordView;
import java.util.Map;

/**
 * What the report of a fitting record is made from.
 *
 * @param view what the record says
 * @param states what was found in stands, by the number of their entry, as far as their results can
 *     be read; stands that are missing here have no drawing
 */
public record RecordReportData(RecordView view, Map<Integer, AlignmentState> states) {
  /**
   * @throws IllegalArgumentException if the record has no undamaged entry
   */
  public RecordReportData {
    if (view.timeline().isEmpty()) {
      throw new IllegalArgumentException("nothing to tell");
    }
    states = Map.copyOf(states);
  }
}
