package caryatid.report.pages;

import caryatid.alignment.AlignmentState;
import caryatid.entry.Entry;
import caryatid.views.RecordAdvice;
import caryatid.views.RecordView;
import caryatid.views.StateChange;
import java.util.List;
import java.util.Map;

/**
 * What the report of a fitting record is made from.
 *
 * @param view what the record says
 * @param states what was found in stands, by the number of their entry, as far as their results can
 *     be read; stands that are missing here have no drawing
 * @param photographs what entries keep as photographs
 * @param advice what to change next at each leg; empty where the record is damaged
 */
public record RecordReportData(
    RecordView view,
    Map<Integer, AlignmentState> states,
    List<Photographed> photographs,
    List<RecordAdvice> advice) {
  /**
   * A photograph.
   *
   * @param entry the entry that keeps it
   * @param name the name its file had
   */
  public record Photographed(Entry entry, String name, byte[] bytes) {
    public Photographed {
      bytes = bytes.clone();
    }

    @Override
    public byte[] bytes() {
      return bytes.clone();
    }
  }

  /**
   * @throws IllegalArgumentException if the record has no undamaged entry
   */
  public RecordReportData {
    if (view.timeline().isEmpty()) {
      throw new IllegalArgumentException("nothing to tell");
    }
    states = Map.copyOf(states);
    photographs = List.copyOf(photographs);
    advice = List.copyOf(advice);
  }

  /** How offsets changed from one measured state to the next. */
  List<StateChange> judged() {
    return StateChange.of(view.valid(), states);
  }
}
