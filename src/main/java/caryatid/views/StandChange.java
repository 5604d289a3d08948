package caryatid.views;

import caryatid.entry.BenchAlignment;
import caryatid.entry.Entry;
import caryatid.entry.EntryKind;
import caryatid.entry.StandSummary;
import caryatid.entry.TermOrText;
import caryatid.fitting.FittingRecord;
import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What was changed between a stand and the one before it, according to the record.
 *
 * @param name short name of the change, a, b, c and so on
 * @param before number of the earlier stand's entry
 * @param stand number of the later stand's entry
 * @param at when the later stand was
 * @param settings items of the bench alignment that were changed
 * @param shoe the footwear, where it is another
 * @param said what was changed, in the words of the later stand
 * @param why the reason, in the words of the later stand
 */
public record StandChange(
    String name,
    int before,
    int stand,
    OffsetDateTime at,
    List<SettingChange> settings,
    Optional<ShoeChange> shoe,
    Optional<String> said,
    Optional<String> why) {

  /**
   * An item that was changed.
   *
   * @param row what it is set to
   * @param was what it was set to before, in the same unit; empty where that is not in the record
   */
  public record SettingChange(BenchAlignment.Item row, Optional<BigDecimal> was) {}

  /** Footwear of the earlier and of the later stand. */
  public record ShoeChange(String was, String is) {}

  public StandChange {
    settings = List.copyOf(settings);
  }

  /**
   * The changes of a record.
   *
   * @param record whose
   */
  static List<StandChange> of(FittingRecord record) {
    List<StandChange> changes = new ArrayList<>();
    Map<BenchRows.Slot, BenchAlignment.Item> before = Map.of();
    Map<BenchRows.Slot, BenchAlignment.Item> set = new LinkedHashMap<>();
    boolean oneLeg = LegSuffix.isOne(record.valid());
    Optional<Entry> earlier = Optional.empty();
    for (Entry entry : record.valid()) {
      if (entry.content() instanceof BenchAlignment bench) {
        set.putAll(BenchRows.of(bench, oneLeg));
      } else if (entry.kind() == EntryKind.STAND) {
        if (earlier.isPresent()) {
          Pair stood = new Pair(earlier.get(), entry, record.timeOf(entry));
          between(name(changes.size()), stood, before, set).ifPresent(changes::add);
        }
        earlier = Optional.of(entry);
        before = Map.copyOf(set);
      }
    }
    return List.copyOf(changes);
  }

  /** A stand, the one before it, and when it was. */
  private record Pair(Entry one, Entry other, OffsetDateTime at) {}

  /** Whether the later stand comes after another one: by its time, then by its entry. */
  public boolean isAfter(OffsetDateTime time, int entry) {
    int order = at.toInstant().compareTo(time.toInstant());
    return order > 0 || order == 0 && stand > entry;
  }

  /** The bench alignment that was changed last after an entry, where there is one. */
  public static Optional<Entry> since(List<Entry> valid, int entry) {
    return valid.stream()
        .dropWhile(e -> e.number() != entry)
        .filter(e -> e.kind() == EntryKind.BENCH_ALIGNMENT)
        .reduce((earlier, later) -> later);
  }

  private static Optional<StandChange> between(
      String name,
      Pair stood,
      Map<BenchRows.Slot, BenchAlignment.Item> was,
      Map<BenchRows.Slot, BenchAlignment.Item> is) {
    Entry other = stood.other();
    Optional<StandSummary> later = other.content(StandSummary.class);
    List<SettingChange> settings =
        is.entrySet().stream()
            .flatMap(
                row -> setting(row.getValue(), Optional.ofNullable(was.get(row.getKey()))).stream())
            .toList();
    StandChange change =
        new StandChange(
            name,
            stood.one().number(),
            other.number(),
            stood.at(),
            settings,
            shoe(stood.one(), other),
            later.flatMap(StandSummary::changed),
            later.flatMap(StandSummary::why));
    boolean nothing =
        settings.isEmpty()
            && change.shoe.isEmpty()
            && change.said.isEmpty()
            && change.why.isEmpty();
    return nothing ? Optional.empty() : Optional.of(change);
  }

  private static Optional<SettingChange> setting(
      BenchAlignment.Item row, Optional<BenchAlignment.Item> was) {
    Optional<BigDecimal> before =
        was.filter(b -> b.unit() == row.unit()).map(BenchAlignment.Item::set);
    return before.filter(b -> b.compareTo(row.set()) == 0).isPresent()
        ? Optional.empty()
        : Optional.of(new SettingChange(row, before));
  }

  private static Optional<ShoeChange> shoe(Entry one, Entry other) {
    Optional<String> was = one.content(StandSummary.class).flatMap(StandSummary::footwear);
    Optional<String> is = other.content(StandSummary.class).flatMap(StandSummary::footwear);
    return was.isPresent()
            && is.isPresent()
            && !was.map(TermOrText::fold).equals(is.map(TermOrText::fold))
        ? Optional.of(new ShoeChange(was.get(), is.get()))
        : Optional.empty();
  }

  /** a to z, then aa, ab and so on. */
  private static String name(int index) {
    String last = String.valueOf((char) ('a' + index % 26));
    return index < 26 ? last : name(index / 26 - 1) + last;
  }
}
