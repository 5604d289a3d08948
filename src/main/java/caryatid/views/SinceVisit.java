package caryatid.views;

import caryatid.entry.Entry;
import caryatid.entry.EntryKind;
import caryatid.entry.StandSummary;
import caryatid.entry.TermOrText;
import caryatid.fitting.FittingRecord;
import caryatid.remark.BadInput;
import caryatid.remark.Coded;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What was added to a record since a visit, and what it changed. A visit is a day on which
 * something was added.
 *
 * @param asked the day that was asked for, if it was no visit
 * @param day the visit
 * @param last the last entry that was added up to then
 * @param added the entries after it, in the order they were added
 * @param comparison of the record as it was then with what it is now, without stands and what is
 *     shown in full
 * @param stands the latest stand in each footwear that was stood in since
 */
public record SinceVisit(
    Optional<LocalDate> asked,
    LocalDate day,
    int last,
    List<Entry> added,
    Comparison comparison,
    List<StandSince> stands) {
  private static final Set<EntryKind> NOT_COMPARED =
      EnumSet.of(EntryKind.STAND, EntryKind.OWN_SETTING, EntryKind.ACCEPTED);

  /** Why there is nothing to show. */
  public enum Nothing implements Coded {
    /** All was added on one day. */
    FIRST_VISIT("Since.FIRST_VISIT"),
    /** The day is before the first entry. */
    BEFORE("Since.BEFORE"),
    /** Nothing was added after the day. */
    AFTER("Since.AFTER");

    private final String code;

    Nothing(String code) {
      this.code = code;
    }

    @Override
    public String code() {
      return code;
    }
  }

  /**
   * The latest stand in a footwear, and the one before the visit's end in the same footwear.
   *
   * @param before that one; empty if the wearer had not stood in it then
   * @param newest the latest
   * @param differences what differs between the two; none if there is one alone
   */
  public record StandSince(
      Optional<Entry> before, Entry newest, List<Comparison.Difference> differences) {
    public StandSince {
      differences = List.copyOf(differences);
    }
  }

  public SinceVisit {
    added = List.copyOf(added);
    stands = List.copyOf(stands);
  }

  /**
   * What is new since a day.
   *
   * @param since the day, or the last visit before it if it was none; the last visit before the
   *     newest entry's day if empty
   * @return empty if nothing was added up to then, or nothing since; see {@link #nothing}
   * @throws BadInput if an entry that it takes is damaged
   */
  public static Optional<SinceVisit> of(FittingRecord record, Optional<LocalDate> since)
      throws BadInput {
    List<Entry> entries = byNumber(record);
    Optional<LocalDate> day =
        since.or(() -> newest(entries).flatMap(newest -> lastBefore(entries, newest)));
    Optional<Entry> last =
        day.flatMap(d -> lastOf(entries.stream().filter(e -> !day(e).isAfter(d)).toList()));
    if (last.isEmpty()) {
      return Optional.empty();
    }
    int number = last.get().number();
    List<Entry> added = entries.stream().filter(e -> e.number() > number).toList();
    if (added.isEmpty()) {
      return Optional.empty();
    }
    LocalDate visit = lastBefore(entries, day.orElseThrow().plusDays(1)).orElseThrow();
    return Optional.of(
        new SinceVisit(
            day.filter(asked -> !asked.equals(visit)),
            visit,
            number,
            added,
            Comparison.of(record, number, added.get(added.size() - 1).number())
                .without(NOT_COMPARED),
            stands(record, number)));
  }

  /** Why {@link #of} has nothing to show. */
  public static Nothing nothing(FittingRecord record, Optional<LocalDate> since) {
    if (since.isEmpty()) {
      return Nothing.FIRST_VISIT;
    }
    boolean before = byNumber(record).stream().allMatch(e -> day(e).isAfter(since.get()));
    return before ? Nothing.BEFORE : Nothing.AFTER;
  }

  private static List<StandSince> stands(FittingRecord record, int upTo) {
    List<Entry> before = StandWarnings.latest(record.validUpTo(upTo));
    List<StandSince> stands = new ArrayList<>();
    for (Entry now : StandWarnings.latest(record.valid())) {
      if (now.number() > upTo) {
        Optional<Entry> then =
            before.stream().filter(e -> footwear(e).equals(footwear(now))).findFirst();
        stands.add(
            new StandSince(then, now, then.map(t -> Comparison.between(t, now)).orElse(List.of())));
      }
    }
    return stands;
  }

  private static String footwear(Entry stand) {
    return stand
        .content(StandSummary.class)
        .flatMap(StandSummary::footwear)
        .map(TermOrText::fold)
        .orElse("");
  }

  /** Nobody visits when a record is sent. */
  private static List<Entry> byNumber(FittingRecord record) {
    return record.entries().stream()
        .filter(entry -> entry.kind() != EntryKind.SENDING)
        .sorted(Comparator.comparingInt(Entry::number))
        .toList();
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
    return Entry.latest(entries, entry -> true);
  }

  private static LocalDate day(Entry entry) {
    return entry.at().toLocalDate();
  }
}
