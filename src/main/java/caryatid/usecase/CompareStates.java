package caryatid.usecase;

import caryatid.alignment.AlignmentState;
import caryatid.alignment.OffsetChange;
import caryatid.entry.Entry;
import caryatid.entry.EntryKind;
import caryatid.fitting.FittingRecord;
import caryatid.fitting.RecordCode;
import caryatid.remark.BadInput;
import caryatid.remark.Problem;
import caryatid.remark.Remark;
import caryatid.store.StoredRecord;
import caryatid.views.Comparison;
import caryatid.views.LostEntryRemark;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/** Compares two states of a record, and a changed state with the first setting before and after. */
public final class CompareStates {
  /** Kinds of entries that say how a prosthesis is set. */
  private static final Set<EntryKind> SETTINGS =
      EnumSet.of(EntryKind.BENCH_ALIGNMENT, EntryKind.COMPONENTS);

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
   * A changed state against the first setting before and after it.
   *
   * @param number the entry that ends the state in which the first setting was back
   * @param sameSetting whether its settings and components are those of the first state
   * @param changes against the mean of both; none where the setting is another, or a state's result
   *     cannot be read or is of another plate
   */
  public record Back(int number, boolean sameSetting, List<OffsetChange> changes) {
    public Back {
      changes = List.copyOf(changes);
    }
  }

  /**
   * Judges a change by going back: what drifts evenly from state to state cancels.
   *
   * @param from number of the entry that ends the state with the first setting
   * @param to number of the entry that ends the changed state
   * @param back number of the entry that ends the state with the first setting once more
   * @throws BadInput if there is no such record or entry, or it cannot be read
   */
  public static Back back(Records records, String code, int from, int to, int back)
      throws BadInput {
    StoredRecord stored = records.store().open(RecordCode.of(code));
    boolean same =
        Comparison.of(stored.record(), from, back).differences().stream()
            .noneMatch(d -> SETTINGS.contains(d.kind()));
    return new Back(back, same, same ? against(stored, from, to, back) : List.of());
  }

  private static List<OffsetChange> against(StoredRecord stored, int from, int to, int back) {
    List<Entry> ends =
        IntStream.of(from, to, back)
            .mapToObj(i -> lastStand(stored, i))
            .flatMap(Optional::stream)
            .toList();
    List<Integer> numbers = ends.stream().map(Entry::number).distinct().toList();
    if (numbers.size() < 3) {
      return List.of();
    }
    Map<Integer, AlignmentState> states =
        KeptResults.of(stored, ends, new ArrayList<>(), new ArrayList<>());
    return states.size() == 3 && isOfOnePlate(states.values())
        ? OffsetChange.againstBoth(
            states.get(numbers.get(0)), states.get(numbers.get(1)), states.get(numbers.get(2)))
        : List.of();
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
    AlignmentState first = states.iterator().next();
    return states.stream().allMatch(first::isMeasuredAs);
  }
}
