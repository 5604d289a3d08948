package caryatid.usecase;

import caryatid.alignment.AlignmentState;
import caryatid.alignment.OffsetChange;
import caryatid.entry.Entry;
import caryatid.entry.EntryKind;
import caryatid.fitting.FittingRecord;
import caryatid.fitting.RecordCode;
import caryatid.recording.model.Provenance;
import caryatid.remark.BadInput;
import caryatid.remark.Problem;
import caryatid.remark.Remark;
import caryatid.store.StoredRecord;
import caryatid.views.Comparison;
import caryatid.views.LostEntryRemark;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Compares two states of a record. */
public final class CompareStates {
  private CompareStates() {}

  /**
   * What differs.
   *
   * @param comparison the differences
   * @param changes how the offsets changed, where the results of both states' stands can be read
   *     and are of the same plate
   * @param lost which entries cannot be read, so that a state may be another than it seems
   * @param damage what is damaged, and what cannot be read
   */
  public record Compared(
      Comparison comparison, List<OffsetChange> changes, List<Remark> lost, List<Problem> damage) {
    public Compared {
      changes = List.copyOf(changes);
      lost = List.copyOf(lost);
      damage = List.copyOf(damage);
    }
  }

  /**
   * Compares two states.
   *
   * @param from number of the entry that ends the earlier one
   * @param to number of the entry that ends the later one
   * @throws BadInput if there is no such record or entry, or it cannot be read; what is damaged is
   *     named first
   */
  public static Compared run(Records records, String code, int from, int to) throws BadInput {
    StoredRecord stored = records.store().open(RecordCode.of(code));
    FittingRecord record = stored.record();
    try {
      Comparison comparison = Comparison.of(record, from, to);
      return new Compared(
          comparison, changes(stored, from, to), LostEntryRemark.of(record), record.notShown());
    } catch (BadInput e) {
      throw Records.damageFirst(record, e);
    }
  }

  private static List<OffsetChange> changes(StoredRecord stored, int from, int to) {
    Optional<Entry> then = lastStand(stored, from);
    Optional<Entry> now = lastStand(stored, to);
    if (then.isEmpty() || now.isEmpty() || then.get().number() == now.get().number()) {
      return List.of();
    }
    Map<Integer, AlignmentState> states =
        KeptResults.of(
            stored, List.of(then.get(), now.get()), new ArrayList<>(), new ArrayList<>());
    return states.size() == 2 && isOfOnePlate(states.values())
        ? OffsetChange.between(states.get(then.get().number()), states.get(now.get().number()))
        : List.of();
  }

  private static Optional<Entry> lastStand(StoredRecord stored, int upTo) {
    return stored.record().validUpTo(upTo).stream()
        .filter(entry -> entry.kind() == EntryKind.STAND)
        .reduce((earlier, later) -> later);
  }

  /** By its description, on the same feet. */
  private static boolean isOfOnePlate(Collection<AlignmentState> states) {
    return states.stream()
            .map(state -> state.stands().get(0))
            .map(
                stand ->
                    List.of(stand.description().map(Provenance::sha512), stand.trial().stance()))
            .distinct()
            .count()
        == 1;
  }
}
