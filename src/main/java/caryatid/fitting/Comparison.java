package caryatid.fitting;

import caryatid.remark.BadInput;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What differs between two states of a record: of each kind of entry the newest up to then counts.
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
   * @param row which row it stands in, by the row's own words; empty outside rows
   * @param field the field's key
   * @param before what it was; empty where it was not said
   * @param after what it became; empty where it was not said
   */
  public record Difference(
      EntryKind kind,
      String row,
      String field,
      Optional<Answers.Value> before,
      Optional<Answers.Value> after) {}

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

  private static Map<Where, Answers.Value> state(FittingRecord record, EntryKind kind, int upTo) {
    Map<Where, Answers.Value> values = new LinkedHashMap<>();
    record.entries().stream()
        .filter(e -> e.kind() == kind && e.number() <= upTo)
        .filter(e -> record.correctionOf(e).filter(c -> c.number() <= upTo).isEmpty())
        .reduce((earlier, later) -> later)
        .ifPresent(e -> collect("", e.content(), values));
    return values;
  }

  private static void collect(String row, Answers answers, Map<Where, Answers.Value> values) {
    answers
        .values()
        .forEach(
            (key, value) -> {
              if (value instanceof Answers.Value.Rows rows) {
                rows.rows().forEach(r -> collect(name(r), unnamed(r), values));
              } else {
                values.put(new Where(row, key), value);
              }
            });
  }

  /** A row goes by the words it begins with: the item, the landmark, plane and side. */
  private static String name(Answers row) {
    return row.values().values().stream()
        .takeWhile(Answers.Value.Words.class::isInstance)
        .map(v -> ((Answers.Value.Words) v).text())
        .collect(Collectors.joining(", "));
  }

  private static Answers unnamed(Answers row) {
    Map<String, Answers.Value> rest = new LinkedHashMap<>(row.values());
    row.values().entrySet().stream()
        .takeWhile(e -> e.getValue() instanceof Answers.Value.Words)
        .forEach(e -> rest.remove(e.getKey()));
    return new Answers(rest);
  }

  private static void compare(
      EntryKind kind,
      Map<Where, Answers.Value> before,
      Map<Where, Answers.Value> after,
      List<Difference> differences) {
    Set<Where> all = new LinkedHashSet<>(before.keySet());
    all.addAll(after.keySet());
    for (Where where : all) {
      Optional<Answers.Value> was = Optional.ofNullable(before.get(where));
      Optional<Answers.Value> is = Optional.ofNullable(after.get(where));
      if (!was.equals(is)) {
        differences.add(new Difference(kind, where.row(), where.field(), was, is));
      }
    }
  }
}
