package caryatid.usecase;

import caryatid.alignment.AlignmentState;
import caryatid.entry.Entry;
import caryatid.entry.EntryKind;
import caryatid.fitting.FittingRecord;
import caryatid.fitting.RecordCode;
import caryatid.remark.BadInput;
import caryatid.remark.Problem;
import caryatid.standing.QuietStretch;
import caryatid.standing.UnusedPart;
import caryatid.store.StoredRecord;
import caryatid.views.LastGood;
import caryatid.views.RecordAdvice;
import caryatid.views.RecordView;
import caryatid.views.SinceVisit;
import caryatid.views.StateChange;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Shows a record: its timeline, the offsets from stand to stand, makers' limits. */
public final class ShowRecord {
  private ShowRecord() {}

  /**
   * What can be read of a record; its damage counts the files of its latest stand in, which what is
   * shown as now comes from.
   *
   * @throws BadInput if there is no such record, or nothing of it can be read
   */
  public static RecordView run(Records records, String code) throws BadInput {
    StoredRecord record = records.store().open(RecordCode.of(code));
    List<Problem> damage = new ArrayList<>(record.record().damage());
    latestStand(record.record()).ifPresent(stand -> damage.addAll(record.damage(stand)));
    return KeptResults.view(record).withDamage(damage);
  }

  /**
   * How the offsets changed from one measured stand to the next, as far as their results can be
   * read.
   *
   * @throws BadInput if there is no such record, or nothing of it can be read
   */
  public static List<StateChange> changes(Records records, String code) throws BadInput {
    StoredRecord record = records.store().open(RecordCode.of(code));
    List<Entry> valid = record.record().valid();
    return StateChange.of(
        valid, KeptResults.of(record, valid, new ArrayList<>(), new ArrayList<>()));
  }

  /**
   * What is new since a visit; empty where there was no visit before, or nothing since.
   *
   * @param day the visit; the one before the newest entry's day if empty
   * @throws BadInput if there is no such record, or it is damaged
   */
  public static Optional<SinceVisit> since(Records records, String code, Optional<LocalDate> day)
      throws BadInput {
    return SinceVisit.of(whole(records, code), day);
  }

  /**
   * Why {@link #since} has nothing to show.
   *
   * @throws BadInput if there is no such record, or it is damaged
   */
  public static SinceVisit.Nothing nothingSince(
      Records records, String code, Optional<LocalDate> day) throws BadInput {
    return SinceVisit.nothing(whole(records, code), day);
  }

  /**
   * The last good setting in a footwear.
   *
   * @param footwear the footwear; that of the newest stand if empty
   * @throws BadInput if there is no such record, or it is damaged, so that what is set may be
   *     otherwise
   */
  public static LastGood lastGood(Records records, String code, Optional<String> footwear)
      throws BadInput {
    return LastGood.of(whole(records, code), footwear);
  }

  /**
   * What to change next, for each leg with a prosthesis.
   *
   * @throws BadInput if there is no such record, or it is damaged, so that what was found or set
   *     may be otherwise
   */
  public static List<RecordAdvice> advice(Records records, String code) throws BadInput {
    StoredRecord record = records.store().open(RecordCode.of(code));
    List<Problem> damage = new ArrayList<>(record.record().notShown());
    Map<Integer, AlignmentState> states =
        KeptResults.of(record, record.record().valid(), damage, new ArrayList<>());
    if (!damage.isEmpty()) {
      throw new BadInput(damage);
    }
    return RecordAdvice.of(record.record(), states);
  }

  /**
   * How long the wearer stood on a day, s: the recordings of the stands that were kept then, from
   * the beginning of each to its end, as far as their results can be read.
   *
   * @throws BadInput if there is no such record, or nothing of it can be read
   */
  public static double stoodS(Records records, String code, LocalDate day) throws BadInput {
    StoredRecord stored = records.store().open(RecordCode.of(code));
    List<Entry> stands =
        stored.record().valid().stream()
            .filter(e -> e.kind() == EntryKind.STAND && e.at().toLocalDate().equals(day))
            .toList();
    return KeptResults.of(stored, stands, new ArrayList<>(), new ArrayList<>()).values().stream()
        .flatMap(state -> state.stands().stream())
        .mapToDouble(stand -> recordedS(stand.standing().stretch()))
        .sum();
  }

  private static double recordedS(QuietStretch used) {
    return used.leftOut().stream().mapToDouble(UnusedPart::toS).reduce(used.toS(), Math::max);
  }

  private static FittingRecord whole(Records records, String code) throws BadInput {
    FittingRecord record = records.store().read(RecordCode.of(code));
    if (record.notShown().isEmpty()) {
      return record;
    }
    throw new BadInput(record.notShown());
  }

  private static Optional<Entry> latestStand(FittingRecord record) {
    return record.latest(EntryKind.STAND);
  }
}
