package caryatid.usecase;

import caryatid.entry.Entry;
import caryatid.fitting.FittingRecord;
import caryatid.remark.Remark;
import caryatid.views.AdditionRemarks;
import caryatid.views.RecordView;
import java.util.List;
import java.util.stream.Stream;

/**
 * An entry that was added, and what the user must know about it.
 *
 * @param entry the entry
 * @param remarks its place in the record, what is outside a maker's limit, and dangers left open
 */
public record AddedEntry(Entry entry, List<Remark> remarks) {
  public AddedEntry {
    remarks = List.copyOf(remarks);
  }

  static AddedEntry to(FittingRecord record, Entry entry) {
    RecordView view = RecordView.of(record);
    Stream<Remark> dangers = view.open().stream().filter(remark -> remark.topic().isSafety());
    return new AddedEntry(
        entry,
        Stream.of(AdditionRemarks.of(record, entry).stream(), view.remarks().stream(), dangers)
            .flatMap(remarks -> remarks)
            .toList());
  }
}
