package caryatid.usecase;

import caryatid.alignment.AlignmentState;
import caryatid.entry.Entry;
import caryatid.entry.KeptFile;
import caryatid.fitting.FittingRecord;
import caryatid.fitting.RecordView;
import caryatid.fitting.StandWarnings;
import caryatid.remark.BadInput;
import caryatid.remark.Problem;
import caryatid.format.ResultJson;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The results that are kept with the stands of a record. */
final class KeptResults {
  private KeptResults() {}

  /**
   * What was found in stands, by the number of their entry, as far as it can be read.
   *
   * @param damage where what cannot be read is added
   */
  static Map<Integer, AlignmentState> of(
      FittingRecord record, List<Entry> entries, Collection<Problem> damage) {
    Map<Integer, AlignmentState> states = new LinkedHashMap<>();
    for (Entry entry : entries) {
      Optional<KeptFile> result = entry.file(KeptFile.Role.RESULT);
      if (result.isPresent()) {
        try {
          List<AlignmentState> found = ResultJson.read(record.bytes(entry, result.get())).states();
          states.put(entry.number(), found.get(found.size() - 1));
        } catch (BadInput e) {
          damage.addAll(e.problems());
        }
      }
    }
    return states;
  }

  /**
   * A record's view with what its latest stands warn of. Of a result that cannot be read, the
   * stand's entry tells as much as it can.
   */
  static RecordView view(FittingRecord record) {
    List<Entry> latest = StandWarnings.latest(record.valid());
    return RecordView.of(record).withResults(of(record, latest, new ArrayList<>()));
  }
}
