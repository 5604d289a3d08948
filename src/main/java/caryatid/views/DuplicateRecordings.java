package caryatid.views;

import caryatid.entry.Entry;
import caryatid.entry.KeptFile;
import caryatid.fitting.FittingRecord;
import caryatid.remark.Argument;
import caryatid.remark.Remark;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Finds recordings that occur in a record twice, by their SHA-512 sums. No two stands give
 * identical recordings, so one recording in two stands is a mistake, unless both are of one state.
 * Before a stand is kept, {@link StandAgainstRecord} asks about it.
 */
final class DuplicateRecordings {
  private DuplicateRecordings() {}

  /** Stands that hold a recording which an earlier entry holds; corrected entries do not count. */
  static List<Remark> of(FittingRecord record) {
    Map<String, Integer> first = new LinkedHashMap<>();
    List<Remark> remarks = new ArrayList<>();
    for (Entry entry : record.stands()) {
      Map<Integer, List<String>> shared = new LinkedHashMap<>();
      for (KeptFile file : entry.recordings()) {
        record
            .digest(entry, file)
            .map(digest -> first.putIfAbsent(digest, entry.number()))
            .filter(other -> other != entry.number())
            .ifPresent(
                other ->
                    shared.computeIfAbsent(other, o -> new ArrayList<>()).add(file.original()));
      }
      shared.forEach((other, names) -> remarks.add(remark(entry, other, names)));
    }
    return List.copyOf(remarks);
  }

  /** The remarks on one entry. */
  static List<Remark> of(FittingRecord record, Entry entry) {
    Argument number = Argument.count(entry.number());
    return of(record).stream().filter(r -> r.arguments().get(0).equals(number)).toList();
  }

  private static Remark remark(Entry entry, int other, List<String> names) {
    return Remark.of(
        OpenIssue.SAME_RECORDING,
        Argument.count(entry.number()),
        Argument.count(other),
        Argument.text(String.join(", ", names)));
  }
}
