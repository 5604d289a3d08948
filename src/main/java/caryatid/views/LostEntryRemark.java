package caryatid.views;

import caryatid.entry.Entry;
import caryatid.entry.EntryKind;
import caryatid.fitting.FittingRecord;
import caryatid.fitting.UnreadableEntry;
import caryatid.remark.Argument;
import caryatid.remark.Remark;
import caryatid.remark.Topic;
import caryatid.remark.Weight;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Remarks on entries that cannot be read, so that the state shown as current may be out of date.
 */
public enum LostEntryRemark implements Topic {
  /** Arguments: the entry, its kind. */
  NAMED("LostEntry.NAMED"),
  /** Arguments: the entry. */
  UNNAMED("LostEntry.UNNAMED"),
  /** A newer version of the program wrote it. Arguments: the entry. */
  NEWER("LostEntry.NEWER"),
  /** It is undamaged, but not an entry that any version wrote. Arguments: the entry. */
  NOT_UNDERSTOOD("LostEntry.NOT_UNDERSTOOD");

  private final String code;

  LostEntryRemark(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }

  @Override
  public Weight weight() {
    return Weight.SAFETY;
  }

  /** The remarks on all entries of a record that are damaged or cannot be read. */
  public static List<Remark> of(FittingRecord record) {
    Map<Integer, UnreadableEntry> unread = new HashMap<>();
    record.unread().forEach(u -> unread.put(u.number(), u));
    Set<Integer> whole = record.entries().stream().map(Entry::number).collect(Collectors.toSet());
    List<Remark> remarks = new ArrayList<>();
    for (int number = 1; number <= record.added(); number++) {
      if (!whole.contains(number)) {
        Argument entry = Argument.count(number);
        Optional<EntryKind> kind = record.kindOf(number);
        if (unread.containsKey(number)) {
          remarks.add(Remark.of(unread.get(number).newer() ? NEWER : NOT_UNDERSTOOD, entry));
        } else {
          remarks.add(
              kind.map(k -> Remark.of(NAMED, entry, Argument.term(k)))
                  .orElse(Remark.of(UNNAMED, entry)));
        }
      }
    }
    return List.copyOf(remarks);
  }
}
