package caryatid.views;

import caryatid.entry.Entry;
import caryatid.entry.EntryKind;
import caryatid.fitting.FittingRecord;
import caryatid.remark.Argument;
import caryatid.remark.Remark;
import caryatid.remark.TimeText;
import caryatid.remark.Topic;
import caryatid.remark.Weight;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/** What a user should know about an entry that was just added. */
public final class AdditionRemarks {

  private AdditionRemarks() {}

  /**
   * The remarks on the entry.
   *
   * @param record with the entry in it
   * @param added the entry
   */
  public static List<Remark> of(FittingRecord record, Entry added) {
    List<Remark> remarks = new ArrayList<>();
    takesTime(record, added).ifPresent(remarks::add);
    older(record, added).ifPresent(remarks::add);
    remarks.addAll(DuplicateRecordings.of(record, added));
    return List.copyOf(remarks);
  }

  /** The latest of its own kind is named first: both compete for what is shown as now. */
  private static Optional<Remark> older(FittingRecord record, Entry added) {
    return later(record, added, e -> e.kind() == added.kind())
        .or(
            () ->
                added.corrects().isPresent()
                    ? Optional.empty()
                    : later(record, added, e -> e.kind() != EntryKind.OPENING))
        .map(
            last ->
                Remark.of(
                    AdditionRemark.OLDER,
                    Argument.count(added.number()),
                    time(record.timeOf(added)),
                    Argument.count(last.number()),
                    time(record.timeOf(last))));
  }

  private static Optional<Entry> later(FittingRecord record, Entry added, Predicate<Entry> of) {
    return Entry.latest(record.valid(), e -> e.number() <= added.number() && of.test(e))
        .filter(last -> last.number() != added.number());
  }

  private static Optional<Remark> takesTime(FittingRecord record, Entry added) {
    return added
        .corrects()
        .filter(c -> c.asOf().isEmpty() && added.kind() != EntryKind.OPENING)
        .map(
            c ->
                Remark.of(
                    AdditionRemark.TAKES_TIME,
                    Argument.count(added.number()),
                    time(record.timeOf(added)),
                    Argument.count(c.number())));
  }

  private static Argument time(OffsetDateTime time) {
    return Argument.text(TimeText.of(time));
  }

  /** What the user should know about the place of a newly added entry in the record. */
  private enum AdditionRemark implements Topic {
    /** Arguments: the entry, its time, a later entry that was there before, that one's time. */
    OLDER("AdditionRemark.OLDER"),
    /** Arguments: the correction, the time it takes, the entry it corrects. */
    TAKES_TIME("AdditionRemark.TAKES_TIME");

    private final String code;

    AdditionRemark(String code) {
      this.code = code;
    }

    @Override
    public String code() {
      return code;
    }

    @Override
    public Weight weight() {
      return Weight.IMPORTANT;
    }
  }
}
