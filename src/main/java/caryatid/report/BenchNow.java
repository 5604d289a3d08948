package caryatid.report;

import caryatid.fitting.Answers;
import caryatid.fitting.Entry;
import caryatid.fitting.EntryKind;
import caryatid.report.Block.Column;
import caryatid.report.Block.Table;
import caryatid.wording.Wording;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** To what each item of the alignment is set now, against what was recommended for it. */
final class BenchNow {
  private final List<Entry> valid;
  private final Wording wording;

  /**
   * @param valid the entries that no other takes the place of, in order
   */
  BenchNow(List<Entry> valid, Wording wording) {
    this.valid = valid;
    this.wording = wording;
  }

  /**
   * An item.
   *
   * @param entry number of the entry that says it last
   */
  private record Item(
      String set, Optional<String> recommended, Optional<String> source, int entry) {}

  Optional<Table> table() {
    Map<String, Item> items = new LinkedHashMap<>();
    valid.stream()
        .filter(e -> e.kind() == EntryKind.BENCH_ALIGNMENT)
        .forEach(e -> e.content().rows("items").forEach(row -> add(items, row, e.number())));
    List<Column> columns =
        List.of(
            column("ITEM", 58, false),
            column("SET", 24, true),
            column("RECOMMENDED", 28, true),
            column("SOURCE", 60, false),
            column("NUMBER", 20, true));
    return items.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Table(
                columns,
                items.entrySet().stream().map(i -> row(i.getKey(), i.getValue())).toList()));
  }

  private Column column(String name, double parts, boolean numbers) {
    return new Column(wording.word("FittingReport." + name), parts, numbers);
  }

  /** What was recommended, and where, holds until something else is said. */
  private void add(Map<String, Item> items, Answers row, int entry) {
    String name = row.words("item").orElseThrow();
    Optional<Item> before = Optional.ofNullable(items.get(name));
    items.put(
        name,
        new Item(
            amount(row, "set").orElseThrow(),
            amount(row, "recommended").or(() -> before.flatMap(Item::recommended)),
            row.words("source").or(() -> before.flatMap(Item::source)),
            entry));
  }

  private Optional<String> amount(Answers row, String key) {
    String unit = row.words("unit").orElseThrow();
    return row.number(key).map(number -> wording.exact(number) + " " + unit);
  }

  private static List<String> row(String name, Item item) {
    return List.of(
        name,
        item.set(),
        item.recommended().orElse("–"),
        item.source().orElse("–"),
        Integer.toString(item.entry()));
  }
}
