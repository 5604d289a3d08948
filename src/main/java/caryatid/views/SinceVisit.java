package caryatid.views;

import caryatid.entry.Entry;
import caryatid.fitting.FittingRecord;
import caryatid.remark.BadInput;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What was added to a record since a visit, and what it changed. A visit is a day on which
 * something was added.
 *
 * @param day the visit
 * @param last the last entry that was added up to then
 * @param added the entries after it, in the order they were added
 * @param comparison of the record as it was then with what it is now
 */
public record SinceVisit(LocalDate day, int last, List<Entry> added, Comparison comparison) {
  public SinceVisit {
    added = List.copyOf(added);
  }

  /**
   * What is new since a day.
   *
   * @param since the day; the last visit before the newest entry's day if empty
   * @return empty if nothing was added up to then, or nothing since
   * @throws BadInput if an entry that it takes is damaged
   */
  public static Optional<SinceVisit> of(FittingRecord record, Optional<LocalDate> since)
      throws BadInput {
    List<Entry> entries =
        record.entries().stream().sorted(Comparator.comparingInt(Entry::number)).toList();
    Optional<LocalDate> day =
        since.or(() -> newest(entries).flatMap(newest -> lastBefore(entries, newest)));
    Optional<Entry> last =
        day.flatMap(d -> lastOf(entries.stream().filter(e -> !day(e).isAfter(d)).toList()));
    if (last.isEmpty()) {
      return Optional.empty();
    }
    int number = last.get().number();
    List<Entry> added = entries.stream().filter(e -> e.number() > number).toList();
    return added.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new SinceVisit(
                day.orElseThrow(),
                number,
                added,
                Comparison.of(record, number, added.get(added.size() - 1).number())));
  }

  private static Optional<LocalDate> newest(List<Entry> entries) {
    return entries.stream().map(SinceVisit::day).max(Comparator.naturalOrder());
  }

  private static Optional<LocalDate> lastBefore(List<Entry> entries, LocalDate newest) {
    return entries.stream()
        .map(SinceVisit::day)
        .filter(day -> day.isBefore(newest))
        .max(Comparator.naturalOrder());
  }

  private static Optional<Entry> lastOf(List<Entry> entries) {
    return entries.stream().reduce((earlier, later) -> later);
  }

  private static LocalDate day(Entry entry) {
    return entry.at().toLocalDate();
  }
}
