package caryatid.fitting;

import caryatid.entry.Entry;
import caryatid.entry.EntryKind;
import caryatid.entry.form.Answers;
import caryatid.remark.BadInput;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What differs between two states of a record, each as it was after an entry: of each kind of entry
 * the latest up to then counts.
 *
 * @param from number of the entry that ends the earlier state
 * @param to number of the entry that ends the later state
 * @param differences in the order of kinds and of their forms
 */
public record Comparison(int from, int to, List<Difference> differences) {

  /**
   * One value that differs.
   *
   * @param kind in which kind of entry
   * @param row which row it stands in, by the row's own words; empty outside rows, and where a row
   *     is there in one state alone
   * @param field the field's key, or that of the rows
   * @param unit that its row names for numbers; empty where it names none
   * @param before what it was; empty where it was not said
   * @param after what it became; empty where it was not said
   */
  public record Difference(
      EntryKind kind,
      String row,
      String field,
      String unit,
      Optional<Answers.Value> before,
      Optional<Answers.Value> after) {}

  private static final List<String> FINDING = List.of("plane", "side", "landmark");

  /** Parts the key of rows from the name of one. */
  private static final String SEPARATOR = "\n";

  private record Where(String row, String field) {}

  public Comparison {
    differences = List.copyOf(differences);
  }

  /**
   * Compares two states.
   *
   * @throws BadInput if there is no such entry
   */
  public static Comparison of(FittingRecord record, int from, int to) throws BadInput {
    record.entry(from);
    record.entry(to);
    List<Difference> differences = new ArrayList<>();
    for (EntryKind kind : EntryKind.values()) {
      if (kind != EntryKind.NOTE) {
        compare(kind, state(record, kind, from), state(record, kind, to), differences);
      }
    }
    return new Comparison(from, to, differences);
  }

  /** What a kind of entry says at a time; of the alignment, what every item is set to then. */
  private static Map<Where, Answers.Value> state(FittingRecord record, EntryKind kind, int upTo) {
    Map<Where, Answers.Value> values = new LinkedHashMap<>();
    List<Entry> valid = record.validUpTo(upTo).stream().filter(e -> e.kind() == kind).toList();
    if (kind == EntryKind.BENCH_ALIGNMENT) {
      rows("items", SettingNow.of(valid, List.of()).stream().map(SettingNow::row).toList(), values);
    } else if (!valid.isEmpty()) {
      collect(valid.get(valid.size() - 1).content(), values);
    }
    return values;
  }

  private static void collect(Answers answers, Map<Where, Answers.Value> values) {
    answers
        .values()
        .forEach(
            (key, value) -> {
              if (value instanceof Answers.Value.Rows rows) {
                rows(key, rows.rows(), values);
              } else {
                values.put(new Where("", key), value);
              }
            });
  }

  /**
   * A row goes by what it is about, its first field; a finding by plane, side and landmark. That it
   * is there is a value of its own, so that a row of one field is not lost.
   */
  private static void rows(String key, List<Answers> rows, Map<Where, Answers.Value> values) {
    Map<String, Integer> taken = new HashMap<>();
    for (Answers row : rows) {
      List<String> about = key.equals("findings") ? FINDING : firstField(row);
      String name =
          about.stream().flatMap(k -> row.words(k).stream()).collect(Collectors.joining(", "));
      int count = taken.merge(name, 1, Integer::sum);
      String unique = count == 1 ? name : name + " (" + count + ")";
      values.put(new Where("", key + SEPARATOR + unique), new Answers.Value.Words(name));
      row.values()
          .forEach(
              (field, value) -> {
                if (!about.contains(field)) {
                  values.put(new Where(unique, field), value);
                }
              });
    }
  }

  private static List<String> firstField(Answers row) {
    return row.values().keySet().stream().limit(1).toList();
  }

  private static void compare(
      EntryKind kind,
      Map<Where, Answers.Value> before,
      Map<Where, Answers.Value> after,
      List<Difference> differences) {
    Set<Where> all = new LinkedHashSet<>(before.keySet());
    all.addAll(after.keySet());
    Set<String> rows = after.keySet().stream().map(Where::row).collect(Collectors.toSet());
    for (Where where : all) {
      Optional<Answers.Value> was = Optional.ofNullable(before.get(where));
      Optional<Answers.Value> is = Optional.ofNullable(after.get(where));
      boolean rowIsGone = !where.row().isEmpty() && !rows.contains(where.row());
      if (!was.equals(is) && !rowIsGone) {
        String field = where.field().replaceFirst(SEPARATOR + ".*", "");
        String unit = unit(after, where.row()).or(() -> unit(before, where.row())).orElse("");
        differences.add(new Difference(kind, where.row(), field, unit, was, is));
      }
    }
  }

  private static Optional<String> unit(Map<Where, Answers.Value> values, String row) {
    return Optional.ofNullable(values.get(new Where(row, "unit")))
        .map(unit -> ((Answers.Value.Words) unit).text());
  }
}
