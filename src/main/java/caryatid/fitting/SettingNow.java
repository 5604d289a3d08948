package caryatid.fitting;

import caryatid.entry.Entry;
import caryatid.entry.EntryKind;
import caryatid.entry.form.Answers;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * To what an item of the alignment is set, as far as the entries say.
 *
 * @param row the item as its newest entry says it; what was recommended and its source hold until
 *     something else is said
 * @param entry number of the entry that set it
 * @param byWearer what the wearer set, where it was not the bench but the wearer's own setting
 */
public record SettingNow(Answers row, int entry, Optional<String> byWearer) {

  /** The item's name. */
  public String item() {
    return row.words("item").orElseThrow();
  }

  /**
   * The items, in the order in which they were first set.
   *
   * @param valid the entries that no other takes the place of, in order of time
   * @param heelHeight names of the item that a wearer's own setting sets; the first one is used
   *     where none of them is in the record
   */
  public static List<SettingNow> of(List<Entry> valid, List<String> heelHeight) {
    Map<String, SettingNow> items = new LinkedHashMap<>();
    for (Entry entry : valid) {
      if (entry.kind() == EntryKind.BENCH_ALIGNMENT) {
        entry
            .content()
            .rows("items")
            .forEach(row -> put(items, new SettingNow(row, entry.number(), Optional.empty())));
      } else if (entry.kind() == EntryKind.OWN_SETTING) {
        bySelf(entry, heelHeight, items.keySet()).ifPresent(setting -> put(items, setting));
      }
    }
    return List.copyOf(items.values());
  }

  private static Optional<SettingNow> bySelf(
      Entry entry, List<String> heelHeight, Set<String> known) {
    Optional<String> item =
        heelHeight.stream()
            .filter(known::contains)
            .findFirst()
            .or(() -> heelHeight.stream().findFirst());
    if (item.isEmpty() || !entry.content().values().containsKey("heel-height-set-mm")) {
      return Optional.empty();
    }
    Map<String, Answers.Value> row = new LinkedHashMap<>();
    row.put("item", new Answers.Value.Words(item.get()));
    row.put("set", entry.content().values().get("heel-height-set-mm"));
    row.put("unit", new Answers.Value.Words("mm"));
    return Optional.of(
        new SettingNow(new Answers(row), entry.number(), entry.content().words("what")));
  }

  private static void put(Map<String, SettingNow> items, SettingNow now) {
    Optional<SettingNow> before = Optional.ofNullable(items.get(now.item()));
    items.put(now.item(), before.map(now::after).orElse(now));
  }

  /** Numbers in another unit are not carried over. */
  private SettingNow after(SettingNow before) {
    Map<String, Answers.Value> values = new LinkedHashMap<>(row.values());
    boolean sameUnit = row.words("unit").equals(before.row.words("unit"));
    for (String key : sameUnit ? List.of("recommended", "source") : List.<String>of()) {
      if (before.row.values().containsKey(key)) {
        values.putIfAbsent(key, before.row.values().get(key));
      }
    }
    return new SettingNow(new Answers(values), entry, byWearer);
  }
}
