package caryatid.views;

import caryatid.entry.BenchAlignment;
import caryatid.entry.BenchItem;
import caryatid.entry.Entry;
import caryatid.entry.OwnSetting;
import caryatid.entry.RecordOpening;
import caryatid.entry.SettingUnit;
import caryatid.entry.TermOrText;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The current setting of an alignment item, according to the entries.
 *
 * @param row the item as its newest entry says it; what was recommended and its source hold until
 *     another entry changes them
 * @param entry number of the entry that set it
 * @param byWearer what the wearer set, where it was not the bench but the wearer's own setting
 */
public record CurrentSetting(BenchAlignment.Item row, int entry, Optional<String> byWearer) {

  /** Which item it is. */
  public TermOrText<BenchItem> item() {
    return row.item();
  }

  /**
   * The items, in the order in which they were first set. A wearer's own setting of a heel height
   * sets that item.
   *
   * @param valid the entries that no other takes the place of, in order of time
   */
  public static List<CurrentSetting> of(List<Entry> valid) {
    return List.copyOf(bySlot(valid).values());
  }

  /** The same by what each of them sets. */
  static Map<BenchRows.Slot, CurrentSetting> bySlot(List<Entry> valid) {
    Map<BenchRows.Slot, CurrentSetting> items = new LinkedHashMap<>();
    boolean oneLeg = RecordOpening.isOfOneLeg(valid);
    for (Entry entry : valid) {
      entry.content(BenchAlignment.class).stream()
          .flatMap(bench -> BenchRows.of(bench, oneLeg).entrySet().stream())
          .forEach(
              row ->
                  put(
                      items,
                      row.getKey(),
                      new CurrentSetting(row.getValue(), entry.number(), Optional.empty())));
      entry
          .content(OwnSetting.class)
          .flatMap(own -> bySelf(own, entry.number()))
          .ifPresent(setting -> put(items, new BenchRows.Slot(setting.row().key(), 1), setting));
    }
    return items;
  }

  private static Optional<CurrentSetting> bySelf(OwnSetting own, int entry) {
    return own.heelHeightSetMm()
        .map(heelMm -> new CurrentSetting(heelHeight(heelMm), entry, Optional.of(own.what())));
  }

  private static BenchAlignment.Item heelHeight(BigDecimal heelMm) {
    return new BenchAlignment.Item(
        TermOrText.of(BenchItem.HEEL_HEIGHT),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        heelMm,
        SettingUnit.MM,
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  private static void put(
      Map<BenchRows.Slot, CurrentSetting> items, BenchRows.Slot slot, CurrentSetting now) {
    Optional<CurrentSetting> before = Optional.ofNullable(items.get(slot));
    items.put(slot, before.map(now::after).orElse(now));
  }

  /** Numbers in another unit are not carried over. */
  private CurrentSetting after(CurrentSetting before) {
    if (row.unit() != before.row.unit()) {
      return this;
    }
    BenchAlignment.Item kept =
        new BenchAlignment.Item(
            row.item(),
            row.fastener(),
            row.side(),
            row.recommended().or(before.row::recommended),
            row.set(),
            row.unit(),
            row.why()
                .or(
                    () ->
                        row.set().compareTo(before.row.set()) == 0
                            ? before.row.why()
                            : Optional.empty()),
            row.source().or(before.row::source),
            row.note(),
            row.travel().or(before.row.travel()));
    return new CurrentSetting(kept, entry, byWearer);
  }
}
