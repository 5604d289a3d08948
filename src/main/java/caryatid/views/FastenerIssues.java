package caryatid.views;

import caryatid.entry.BenchAlignment;
import caryatid.entry.Entry;
import caryatid.entry.RecordOpening;
import caryatid.geometry.Side;
import caryatid.remark.Argument;
import caryatid.remark.Remark;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Finds the fasteners of which nothing was noted since the alignment was last changed. */
final class FastenerIssues {
  private FastenerIssues() {}

  /**
   * What is open: one fastener that is secured says nothing of the others.
   *
   * @param valid the entries that no other takes the place of, in order of time
   */
  static Optional<Remark> of(List<Entry> valid) {
    return Entry.latest(valid, e -> StandChange.turns(valid, e))
        .flatMap(change -> since(valid, change));
  }

  private static Optional<Remark> since(List<Entry> valid, Entry change) {
    int at = valid.indexOf(change);
    Set<BenchRows.Slot> noted =
        noted(valid.subList(at, valid.size()), RecordOpening.isOfOneLeg(valid));
    Set<Optional<Side>> legs = legs(change);
    String missing =
        CurrentSetting.bySlot(valid.subList(0, at)).entrySet().stream()
            .filter(known -> known.getValue().row().isTorque())
            .filter(known -> !noted.contains(known.getKey()))
            .map(Map.Entry::getValue)
            .map(CurrentSetting::row)
            .filter(row -> row.side().isEmpty() || legs.contains(row.side()))
            .map(FastenerIssues::name)
            .collect(Collectors.joining(", "));
    if (!missing.isBlank()) {
      return Optional.of(
          Remark.of(
              OpenIssue.FASTENERS_NOT_STATED,
              Argument.count(change.number()),
              Argument.text(missing)));
    }
    return noted.isEmpty()
        ? Optional.of(Remark.of(OpenIssue.NO_FASTENERS, Argument.count(change.number())))
        : Optional.empty();
  }

  private static Set<BenchRows.Slot> noted(List<Entry> entries, boolean oneLeg) {
    Set<BenchRows.Slot> noted = new HashSet<>();
    Entry.contents(entries, BenchAlignment.class)
        .flatMap(bench -> BenchRows.of(bench, oneLeg).entrySet().stream())
        .filter(row -> row.getValue().isTorque())
        .forEach(row -> noted.add(row.getKey()));
    return noted;
  }

  private static Set<Optional<Side>> legs(Entry change) {
    return change.content(BenchAlignment.class).stream()
        .flatMap(bench -> bench.items().stream())
        .filter(row -> !row.isTorque())
        .map(BenchAlignment.Item::side)
        .collect(Collectors.toSet());
  }

  private static String name(BenchAlignment.Item row) {
    return row.fastener().or(row::note).orElse(row.item().text());
  }
}
