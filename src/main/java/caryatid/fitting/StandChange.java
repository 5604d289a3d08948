package caryatid.fitting;

import caryatid.entry.Entry;
import caryatid.entry.EntryKind;
import caryatid.entry.form.Answers;
import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What was changed between a stand and the one before it, as far as the record says.
 *
 * @param name short name of the change, a, b, c and so on
 * @param before number of the earlier stand's entry
 * @param stand number of the later stand's entry
 * @param at when the later stand was
 * @param settings items of the bench alignment that were set anew
 * @param shoe the footwear, where it is another
 * @param said what the later stand says was changed
 * @param why what the later stand says is the reason
 */
public record StandChange(
    String name,
    int before,
    int stand,
    OffsetDateTime at,
    List<Setting> settings,
    Optional<Shoe> shoe,
    Optional<String> said,
    Optional<String> why) {

  /**
   * An item that was set anew.
   *
   * @param item its name
   * @param was what it was set to before; empty where that is not in the record
   * @param is what it is set to
   * @param unit of both
   */
  public record Setting(String item, Optional<BigDecimal> was, BigDecimal is, String unit) {}

  /** Footwear of the earlier and of the later stand. */
  public record Shoe(String was, String is) {}

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
    Map<String, Answers> before = Map.of();
    Map<String, Answers> set = new LinkedHashMap<>();
    Optional<Entry> earlier = Optional.empty();
    for (Entry entry : record.valid()) {
      if (entry.kind() == EntryKind.BENCH_ALIGNMENT) {
        entry.content().rows("items").forEach(row -> set.put(row.words("item").orElseThrow(), row));
      } else if (entry.kind() == EntryKind.STAND) {
        if (earlier.isPresent()) {
          Stood stood = new Stood(earlier.get(), entry, record.timeOf(entry));
          between(name(changes.size()), stood, before, set).ifPresent(changes::add);
        }
        earlier = Optional.of(entry);
        before = Map.copyOf(set);
      }
    }
    return List.copyOf(changes);
  }

  /** A stand, the one before it, and when it was. */
  private record Stood(Entry one, Entry other, OffsetDateTime at) {}

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
      String name, Stood stood, Map<String, Answers> was, Map<String, Answers> is) {
    Entry other = stood.other();
    List<Setting> settings =
        is.values().stream().flatMap(row -> setting(row, was).stream()).toList();
    StandChange change =
        new StandChange(
            name,
            stood.one().number(),
            other.number(),
            stood.at(),
            settings,
            shoe(stood.one(), other),
            other.content().words("changed"),
            other.content().words("why"));
    boolean nothing =
        settings.isEmpty()
            && change.shoe.isEmpty()
            && change.said.isEmpty()
            && change.why.isEmpty();
    return nothing ? Optional.empty() : Optional.of(change);
  }

  private static Optional<Setting> setting(Answers row, Map<String, Answers> was) {
    String item = row.words("item").orElseThrow();
    BigDecimal is = row.number("set").orElseThrow();
    String unit = row.words("unit").orElseThrow();
    Optional<BigDecimal> before =
        Optional.ofNullable(was.get(item))
            .filter(b -> b.words("unit").equals(row.words("unit")))
            .flatMap(b -> b.number("set"));
    return before.filter(b -> b.compareTo(is) == 0).isPresent()
        ? Optional.empty()
        : Optional.of(new Setting(item, before, is, unit));
  }

  private static Optional<Shoe> shoe(Entry one, Entry other) {
    Optional<String> was = one.content().words("footwear");
    Optional<String> is = other.content().words("footwear");
    return was.isPresent() && is.isPresent() && !was.equals(is)
        ? Optional.of(new Shoe(was.get(), is.get()))
        : Optional.empty();
  }

  /** a to z, then aa, ab and so on. */
  private static String name(int index) {
    String last = String.valueOf((char) ('a' + index % 26));
    return index < 26 ? last : name(index / 26 - 1) + last;
  }
}
