package caryatid.views;

import caryatid.entry.BenchAlignment;
import caryatid.entry.BenchItem;
import caryatid.entry.Entry;
import caryatid.entry.EntryKind;
import caryatid.entry.StandSummary;
import caryatid.entry.TermOrText;
import caryatid.fitting.FittingRecord;
import caryatid.loadline.Verdict;
import caryatid.remark.Remark;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The last stand in one footwear in which every tolerance was met, and how to get back to its
 * settings. What was accepted although a tolerance was not met, or may not have been, is not good.
 *
 * @param footwear in what the wearer stands: the one asked for, or that of the newest stand
 * @param stand the stand; empty if none in that footwear was good
 * @param others the last good stand in each other footwear, whose settings do not go with this one
 * @param turns what is set otherwise now, in the order in which it was first set
 * @param later what was first set after the stand, so that the record does not say what it was
 * @param heel the heel height, if the ankle is set for another one now: it goes by the shoe and is
 *     nothing to turn back
 * @param fasteners every torque that is known, with the recommended one
 * @param changed that something was set after the newest stand, so that no stand shows it
 */
public record LastGood(
    Optional<String> footwear,
    Optional<Entry> stand,
    List<Entry> others,
    List<Turn> turns,
    List<BenchAlignment.Item> later,
    Optional<Turn> heel,
    List<BenchAlignment.Item> fasteners,
    Optional<Remark> changed) {
  /**
   * One item that is set otherwise now.
   *
   * @param is what it is set to now
   * @param was what it was set to then
   */
  public record Turn(BenchAlignment.Item is, BenchAlignment.Item was) {}

  public LastGood {
    others = List.copyOf(others);
    turns = List.copyOf(turns);
    later = List.copyOf(later);
    fasteners = List.copyOf(fasteners);
  }

  /**
   * The last good setting of a record.
   *
   * @param footwear the footwear; that of the newest stand if empty
   */
  public static LastGood of(FittingRecord record, Optional<String> footwear) {
    List<Entry> valid = record.valid();
    Optional<Entry> newest = Entry.latest(valid, entry -> entry.kind() == EntryKind.STAND);
    Optional<String> worn = footwear.or(() -> newest.flatMap(LastGood::footwear));
    Map<String, Entry> good = new LinkedHashMap<>();
    valid.stream()
        .filter(LastGood::isGood)
        .forEach(entry -> good.put(folded(footwear(entry)), entry));
    Optional<Entry> stand = Optional.ofNullable(good.remove(folded(worn)));
    return of(valid, worn, stand, List.copyOf(good.values()));
  }

  /**
   * The last setting that was another one than the present, good or not: that of the last stand in
   * the footwear of the newest one after which something was set otherwise; empty if there is none.
   */
  public static Optional<LastGood> before(FittingRecord record) {
    List<Entry> stands =
        new ArrayList<>(
            record.valid().stream().filter(entry -> entry.kind() == EntryKind.STAND).toList());
    Collections.reverse(stands);
    Optional<String> worn = stands.stream().findFirst().flatMap(LastGood::footwear);
    return stands.stream()
        .filter(stand -> folded(footwear(stand)).equals(folded(worn)))
        .map(stand -> of(record.valid(), worn, Optional.of(stand), List.of()))
        .filter(way -> !way.turns().isEmpty())
        .findFirst();
  }

  private static LastGood of(
      List<Entry> valid, Optional<String> worn, Optional<Entry> stand, List<Entry> others) {
    Optional<Entry> newest = Entry.latest(valid, entry -> entry.kind() == EntryKind.STAND);
    Optional<Remark> changed = newest.flatMap(entry -> OpenIssueFinder.changedSince(valid, entry));
    Settings settings = new Settings(valid, stand);
    return new LastGood(
        worn,
        stand,
        others,
        settings.turns,
        settings.later,
        settings.heel,
        settings.fasteners,
        changed);
  }

  private static Optional<String> footwear(Entry stand) {
    return stand.content(StandSummary.class).flatMap(StandSummary::footwear);
  }

  private static String folded(Optional<String> footwear) {
    return footwear.map(TermOrText::fold).orElse("");
  }

  private static boolean isGood(Entry entry) {
    List<StandSummary.Found> findings =
        entry.content(StandSummary.class).map(StandSummary::findings).orElse(List.of());
    return !findings.isEmpty()
        && findings.stream().allMatch(found -> found.result() == Verdict.WITHIN);
  }

  /** The settings then and now. */
  private static final class Settings {
    private final List<Turn> turns = new ArrayList<>();
    private final List<BenchAlignment.Item> later = new ArrayList<>();
    private final List<BenchAlignment.Item> fasteners = new ArrayList<>();
    private final Optional<Turn> heel;

    Settings(List<Entry> valid, Optional<Entry> stand) {
      List<Entry> before = stand.map(s -> valid.subList(0, valid.indexOf(s))).orElse(List.of());
      Map<BenchRows.Slot, CurrentSetting> then = CurrentSetting.bySlot(before);
      Map<BenchRows.Slot, CurrentSetting> now = CurrentSetting.bySlot(valid);
      now.forEach((slot, is) -> add(is.row(), Optional.ofNullable(then.get(slot))));
      heel =
          HeelSetting.last(now.values())
              .flatMap(
                  is -> HeelSetting.last(then.values()).map(was -> new Turn(is.row(), was.row())))
              .filter(turn -> differs(turn.is(), turn.was()));
    }

    private void add(BenchAlignment.Item is, Optional<CurrentSetting> then) {
      Optional<BenchAlignment.Item> was = then.map(CurrentSetting::row);
      boolean turned = !is.item().is(BenchItem.HEEL_HEIGHT);
      if (is.isTorque()) {
        fasteners.add(is);
      } else if (turned && was.isEmpty()) {
        later.add(is);
      } else if (turned && differs(is, was.get())) {
        turns.add(new Turn(is, was.get()));
      }
    }

    private static boolean differs(BenchAlignment.Item is, BenchAlignment.Item was) {
      return is.unit() != was.unit() || is.set().compareTo(was.set()) != 0;
    }
  }
}
