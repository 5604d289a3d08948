package caryatid.cli;

import caryatid.entry.BenchItem;
import caryatid.entry.EntryKind;
import caryatid.entry.WalkingDeviation;
import caryatid.sheet.AmputationLevel;
import caryatid.sheet.Given;
import caryatid.wording.Wording;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Usual rows of a form, offered by level: what a row says beside its name is filled in where it is
 * left out.
 *
 * @param rows each by its keys, the name first; none for forms without usual rows
 */
record Offers(List<Map<String, String>> rows) {
  /** Nothing is offered. */
  static final Offers NONE = new Offers(List.of());

  Offers {
    rows = List.copyOf(rows);
  }

  /** What is offered for a kind of entry. */
  static Offers of(EntryKind kind, AmputationLevel level, Wording wording) {
    if (kind == EntryKind.BENCH_ALIGNMENT) {
      return new Offers(BenchItem.of(level).stream().map(i -> row(i, wording)).toList());
    }
    return kind == EntryKind.WALKING
        ? new Offers(WalkingDeviation.of(level).stream().map(d -> row(d, wording)).toList())
        : NONE;
  }

  private static Map<String, String> row(BenchItem item, Wording wording) {
    Map<String, String> row = new LinkedHashMap<>();
    row.put("item", wording.word(item));
    row.put("unit", item.unit());
    return row;
  }

  private static Map<String, String> row(WalkingDeviation deviation, Wording wording) {
    Map<String, String> row = new LinkedHashMap<>();
    row.put("deviation", wording.word(deviation));
    row.put("plane", deviation.plane());
    row.put("phase", deviation.phase());
    row.put("points-to", wording.word("WalkingDeviation." + deviation.name() + ".POINTS_TO"));
    row.put("source", wording.word(deviation.source()));
    return row;
  }

  /** The offered row of a name, or of its number from 1. */
  Optional<Map<String, String>> named(String nameOrNumber) {
    for (int i = 0; i < rows.size(); i++) {
      if (nameOrNumber.equals(Integer.toString(i + 1)) || nameOrNumber.equals(name(i))) {
        return Optional.of(rows.get(i));
      }
    }
    return Optional.empty();
  }

  /** The name of a row. */
  String name(int row) {
    return rows.get(row).values().iterator().next();
  }

  /** What was given, rows that go by an offered name completed. */
  Given.Group complete(Given.Group given) {
    if (rows.isEmpty()) {
      return given;
    }
    Map<String, Given> members = new LinkedHashMap<>();
    given.members().forEach((key, value) -> members.put(key, complete(value)));
    return new Given.Group(members, given.place());
  }

  private Given complete(Given value) {
    if (!(value instanceof Given.Several several)) {
      return value;
    }
    List<Given> items = new ArrayList<>();
    for (Given item : several.items()) {
      items.add(item instanceof Given.Group row ? completeRow(row) : item);
    }
    return new Given.Several(items, several.place());
  }

  private Given completeRow(Given.Group row) {
    String nameKey = rows.get(0).keySet().iterator().next();
    Optional<Map<String, String>> offered =
        row.members().get(nameKey) instanceof Given.Single name
            ? named(name.text())
            : Optional.empty();
    Map<String, Given> members = new LinkedHashMap<>(row.members());
    offered.ifPresent(o -> o.forEach((key, text) -> fill(members, key, text, row)));
    offered.ifPresent(o -> members.put(nameKey, single(o.get(nameKey), row)));
    return new Given.Group(members, row.place());
  }

  private static void fill(Map<String, Given> members, String key, String text, Given.Group row) {
    members.putIfAbsent(key, single(text, row));
  }

  private static Given single(String text, Given.Group row) {
    return new Given.Single(text, Given.Kind.ANY, row.place());
  }
}
