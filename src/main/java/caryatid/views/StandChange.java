package caryatid.views;

import caryatid.entry.BenchAlignment;
import caryatid.entry.Entry;
import caryatid.entry.EntryKind;
import caryatid.entry.OwnSetting;
import caryatid.entry.RecordOpening;
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
 * @param why the reason, in the words of the later stand; if it gives none, in those of the
 *     settings that were changed
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
    boolean oneLeg = RecordOpening.isOfOneLeg(record.valid());
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

  /** What comes after an entry. */
  static List<Entry> after(List<Entry> valid, int entry) {
    return valid.stream().dropWhile(e -> e.number() != entry).skip(1).toList();
  }

  /** The bench alignment that changed a setting last after an entry, if there is one. */
  public static Optional<Entry> since(List<Entry> valid, int entry) {
    return Entry.latest(after(valid, entry), e -> turns(valid, e));
  }

  /** The same, and what the wearer has set alone. */
  static Optional<Entry> sinceOrByWearer(List<Entry> valid, int entry) {
    return Entry.latest(after(valid, entry), e -> turns(valid, e) || setsOtherwise(valid, e));
  }

  /** Whether a bench alignment turns anything: to note a torque or what is set already does not. */
  static boolean turns(List<Entry> valid, Entry entry) {
    boolean oneLeg = RecordOpening.isOfOneLeg(valid);
    Map<BenchRows.Slot, CurrentSetting> before = before(valid, entry);
    return entry.content(BenchAlignment.class).stream()
        .flatMap(bench -> BenchRows.of(bench, oneLeg).entrySet().stream())
        .filter(row -> !row.getValue().isTorque())
        .anyMatch(row -> differs(row.getValue(), Optional.ofNullable(before.get(row.getKey()))));
  }

  /** Whether an own setting left another heel height, or one that nobody noted. */
  private static boolean setsOtherwise(List<Entry> valid, Entry entry) {
    Optional<OwnSetting> own = entry.content(OwnSetting.class);
    Optional<BigDecimal> setMm = own.flatMap(OwnSetting::heelHeightSetMm);
    Optional<BigDecimal> beforeMm =
        HeelSetting.last(before(valid, entry).values()).map(h -> h.row().set());
    boolean same =
        setMm.isPresent() && beforeMm.filter(b -> b.compareTo(setMm.get()) == 0).isPresent();
    return own.isPresent() && !same;
  }

  private static Map<BenchRows.Slot, CurrentSetting> before(List<Entry> valid, Entry entry) {
    return CurrentSetting.bySlot(valid.subList(0, valid.indexOf(entry)));
  }

  private static boolean differs(BenchAlignment.Item row, Optional<CurrentSetting> before) {
    return before
        .map(CurrentSetting::row)
        .filter(b -> b.unit() == row.unit() && b.set().compareTo(row.set()) == 0)
        .isEmpty();
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
            later.flatMap(StandSummary::why).or(() -> why(settings)));
    boolean nothing =
        settings.isEmpty()
            && change.shoe.isEmpty()
            && change.said.isEmpty()
            && change.why.isEmpty();
    return nothing ? Optional.empty() : Optional.of(change);
  }

  /** The reasons that stand beside the settings, each once. */
  private static Optional<String> why(List<SettingChange> settings) {
    return settings.stream()
        .flatMap(setting -> setting.row().why().stream())
        .distinct()
        .reduce((some, more) -> some + "; " + more);
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
