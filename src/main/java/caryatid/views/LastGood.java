package caryatid.views;

import caryatid.entry.BenchAlignment;
import caryatid.entry.Entry;
import caryatid.entry.EntryKind;
import caryatid.entry.StandSummary;
import caryatid.fitting.FittingRecord;
import caryatid.loadline.Verdict;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The last stand in which every tolerance was met or what was not was accepted, and how to get back
 * to its settings.
 *
 * @param stand the stand
 * @param turns what is set otherwise now, in the order in which it was first set
 * @param later what was first set after the stand, so that the record does not say what it was
 * @param fasteners every torque that is known, with the recommended one
 */
public record LastGood(
    Entry stand,
    List<Turn> turns,
    List<BenchAlignment.Item> later,
    List<BenchAlignment.Item> fasteners) {
  /**
   * One item that is set otherwise now.
   *
   * @param is what it is set to now
   * @param was what it was set to then
   */
  public record Turn(BenchAlignment.Item is, BenchAlignment.Item was) {}

  public LastGood {
    turns = List.copyOf(turns);
    later = List.copyOf(later);
    fasteners = List.copyOf(fasteners);
  }

  /** The last good setting of a record; empty if no stand of it was good. */
  public static Optional<LastGood> of(FittingRecord record) {
    List<Entry> valid = record.valid();
    return valid.stream()
        .filter(entry -> isGood(valid, entry))
        .reduce((earlier, later) -> later)
        .map(stand -> of(valid, stand));
  }

  private static boolean isGood(List<Entry> valid, Entry entry) {
    if (entry.kind() != EntryKind.STAND) {
      return false;
    }
    List<StandSummary.Found> findings = entry.content(StandSummary.class).orElseThrow().findings();
    boolean met = findings.stream().allMatch(found -> found.result() == Verdict.WITHIN);
    return !findings.isEmpty() && (met || Acceptances.isAccepted(valid, entry.number()));
  }

  private static LastGood of(List<Entry> valid, Entry stand) {
    Map<BenchRows.Slot, CurrentSetting> then =
        CurrentSetting.bySlot(valid.subList(0, valid.indexOf(stand)));
    Map<BenchRows.Slot, CurrentSetting> now = CurrentSetting.bySlot(valid);
    List<Turn> turns = new ArrayList<>();
    List<BenchAlignment.Item> later = new ArrayList<>();
    List<BenchAlignment.Item> fasteners = new ArrayList<>();
    now.forEach(
        (slot, setting) -> {
          Optional<BenchAlignment.Item> was =
              Optional.ofNullable(then.get(slot)).map(CurrentSetting::row);
          BenchAlignment.Item is = setting.row();
          if (is.isTorque()) {
            fasteners.add(is);
          } else if (was.isEmpty()) {
            later.add(is);
          } else if (differs(is, was.get())) {
            turns.add(new Turn(is, was.get()));
          }
        });
    return new LastGood(stand, turns, later, fasteners);
  }

  private static boolean differs(BenchAlignment.Item is, BenchAlignment.Item was) {
    return is.unit() != was.unit() || is.set().compareTo(was.set()) != 0;
  }
}
