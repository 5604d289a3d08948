package caryatid.usecase;

import caryatid.alignment.AlignmentState;
import caryatid.entry.Entry;
import caryatid.entry.KeptFile;
import caryatid.format.ArchiveProblem;
import caryatid.format.ResultJson;
import caryatid.format.ResultReading;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Problem;
import caryatid.remark.Remark;
import caryatid.store.StoredRecord;
import caryatid.views.RecordView;
import caryatid.views.StandWarnings;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The results that are kept with the stands of a record. */
public final class KeptResults {
  private KeptResults() {}

  /**
   * What was found in stands, by the number of their entry, as far as it can be read.
   *
   * @param damage collects problems of files that are not what was added
   * @param unread collects problems of results that are undamaged but cannot be read
   */
  public static Map<Integer, AlignmentState> of(
      StoredRecord record,
      List<Entry> entries,
      Collection<Problem> damage,
      Collection<Remark> unread) {
    Map<Integer, AlignmentState> states = new LinkedHashMap<>();
    for (Entry entry : entries) {
      try {
        Optional<ResultReading> file = file(record, entry);
        file.ifPresent(each -> sort(entry, each, states, unread));
      } catch (BadInput e) {
        damage.addAll(e.problems());
      }
    }
    return states;
  }

  private static Optional<ResultReading> file(StoredRecord record, Entry entry) throws BadInput {
    Optional<KeptFile> kept = entry.file(KeptFile.Role.RESULT);
    return kept.isEmpty()
        ? Optional.empty()
        : Optional.of(ResultJson.open(record.bytes(entry, kept.get())));
  }

  private static void sort(
      Entry entry,
      ResultReading file,
      Map<Integer, AlignmentState> states,
      Collection<Remark> unread) {
    if (file instanceof ResultReading.Read read) {
      states.put(entry.number(), read.result().state());
    } else {
      boolean newer = file instanceof ResultReading.Newer;
      unread.add(
          Remark.of(
              newer ? ArchiveProblem.ENTRY_NEWER : ArchiveProblem.ENTRY_UNREADABLE,
              Argument.count(entry.number())));
    }
  }

  /**
   * A record's view with what its latest stands warn of. Of a result that cannot be read, the
   * stand's entry is used as far as it goes.
   */
  static RecordView view(StoredRecord record) {
    List<Entry> latest = StandWarnings.latest(record.record().valid());
    return RecordView.of(record.record())
        .withResults(of(record, latest, new ArrayList<>(), new ArrayList<>()));
  }
}
