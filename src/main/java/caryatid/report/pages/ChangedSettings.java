package caryatid.report.pages;

import caryatid.entry.BenchAlignment;
import caryatid.entry.BenchAlignment.Item;
import caryatid.entry.Entry;
import caryatid.remark.Argument;
import caryatid.wording.Wording;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What a bench alignment sets otherwise than the entries before it; the rest is counted. */
final class ChangedSettings {
  private final BenchAlignment bench;
  private final Map<BenchAlignment.ItemKey, Item> before = new HashMap<>();

  /**
   * @param valid the entries that no other takes the place of, in order of time
   */
  ChangedSettings(List<Entry> valid, Entry entry, BenchAlignment bench) {
    this.bench = bench;
    valid.stream()
        .takeWhile(earlier -> earlier.number() != entry.number())
        .flatMap(earlier -> earlier.content(BenchAlignment.class).stream())
        .flatMap(earlier -> earlier.items().stream())
        .forEach(item -> before.put(item.key(), item));
  }

  List<String> lines(Wording wording) {
    List<Item> changed = bench.items().stream().filter(item -> !isUnchanged(item)).toList();
    List<String> lines =
        new ArrayList<>(EntryCells.lines(new BenchAlignment(changed, bench.note()), wording));
    count(lines, false, "FittingReport.AS_BEFORE", wording);
    count(lines, true, "FittingReport.TORQUES_AS_BEFORE", wording);
    return lines;
  }

  private void count(List<String> lines, boolean torques, String key, Wording wording) {
    long same =
        bench.items().stream()
            .filter(item -> item.isTorque() == torques && isUnchanged(item))
            .count();
    if (same > 0) {
      lines.add(wording.fill(key, Argument.count(same)));
    }
  }

  /** Set as before, and nothing is said of it that was not said then. */
  private boolean isUnchanged(Item item) {
    Item was = before.get(item.key());
    return was != null
        && was.unit() == item.unit()
        && was.set().compareTo(item.set()) == 0
        && (item.recommended().isEmpty() || item.recommended().equals(was.recommended()))
        && (item.why().isEmpty() || item.why().equals(was.why()))
        && (item.note().isEmpty() || item.note().equals(was.note()));
  }
}
