package caryatid.views;

import caryatid.entry.BenchAlignment;
import caryatid.entry.Entry;
import caryatid.entry.EntryKind;
import caryatid.entry.TermOrText;
import caryatid.entry.form.Answers;
import caryatid.entry.form.ContentToAnswers;
import caryatid.fitting.FittingRecord;
import caryatid.remark.BadInput;
import caryatid.sheet.AmputationLevel;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What differs between two states of a record, each as it was after an entry: of each kind of entry
 * the latest up to then counts.
 *
 * @param from number of the entry that ends the earlier state
 * @param to number of the entry that ends the later state
 * @param prostheticKnee whether the knee of the record belongs to a prosthesis
 * @param differences in the order of kinds and of their forms
 */
public record Comparison(int from, int to, boolean prostheticKnee, List<Difference> differences) {

  /**
   * One value that differs.
   *
   * @param kind in which kind of entry
   * @param row which row it stands in; empty outside rows, and where a row is there in one state
   *     alone
   * @param field the field's key, or that of the rows
   * @param unit that its row names for numbers; empty where it names none
   * @param before what it was; empty if it was not recorded
   * @param after what it became; empty if it was not recorded
   */
  public record Difference(
      EntryKind kind,
      Optional<Row> row,
      String field,
      Optional<String> unit,
      Optional<Answers.Value> before,
      Optional<Answers.Value> after) {}

  /**
   * A row of a form.
   *
   * @param about what it goes by, with their fields' keys
   * @param count which of several that go by the same it is, from 1
   */
  public record Row(Answers about, int count) {}

  /** What rows go by where it is more than their first field. */
  private static final Map<String, List<String>> ABOUT =
      Map.of(
          "findings", List.of("plane", "side", "landmark"),
          "items", List.of("item", "fastener", "side"),
          "components", List.of("what", "side"));

  /** The same for the same value of two states. */
  private record Where(List<String> row, int count, String field) {
    static final List<String> NONE = List.of();
  }

  private record ComparedValue(Optional<Row> row, Optional<String> unit, Answers.Value value) {}

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
      if (kind != EntryKind.NOTE && kind != EntryKind.SENDING) {
        compare(kind, state(record, kind, from), state(record, kind, to), differences);
      }
    }
    boolean prostheticKnee = record.levels().stream().anyMatch(AmputationLevel::prostheticKnee);
    return new Comparison(from, to, prostheticKnee, differences);
  }

  /** The same without kinds of entries that are shown otherwise. */
  Comparison without(Set<EntryKind> kinds) {
    return new Comparison(
        from,
        to,
        prostheticKnee,
        differences.stream().filter(d -> !kinds.contains(d.kind())).toList());
  }

  /** What differs between two entries of one kind. */
  static List<Difference> between(Entry before, Entry after) {
    Map<Where, ComparedValue> was = new LinkedHashMap<>();
    Map<Where, ComparedValue> is = new LinkedHashMap<>();
    collect(ContentToAnswers.answers(before.content()), was);
    collect(ContentToAnswers.answers(after.content()), is);
    List<Difference> differences = new ArrayList<>();
    compare(after.kind(), was, is, differences);
    return List.copyOf(differences);
  }

  /** What a kind of entry says at a time; of the alignment, what every item is set to then. */
  private static Map<Where, ComparedValue> state(FittingRecord record, EntryKind kind, int upTo) {
    Map<Where, ComparedValue> values = new LinkedHashMap<>();
    List<Entry> valid = record.validUpTo(upTo).stream().filter(e -> e.kind() == kind).toList();
    if (kind == EntryKind.BENCH_ALIGNMENT) {
      collect(bench(valid), values);
    } else if (!valid.isEmpty()) {
      collect(ContentToAnswers.answers(valid.get(valid.size() - 1).content()), values);
    }
    return values;
  }

  private static Answers bench(List<Entry> valid) {
    List<BenchAlignment.Item> items =
        CurrentSetting.of(valid).stream().map(CurrentSetting::row).toList();
    return ContentToAnswers.answers(new BenchAlignment(items, Optional.empty()));
  }

  private static void collect(Answers answers, Map<Where, ComparedValue> values) {
    answers
        .values()
        .forEach(
            (key, value) -> {
              if (value instanceof Answers.Value.Rows rows) {
                rows(key, rows.rows(), values);
              } else {
                values.put(
                    new Where(Where.NONE, 1, key),
                    new ComparedValue(Optional.empty(), Optional.empty(), value));
              }
            });
  }

  /**
   * A row goes by what it is about, its first field; a finding by plane, side and landmark. That it
   * is there is a value of its own, so that a row of one field is not lost.
   */
  private static void rows(String key, List<Answers> rows, Map<Where, ComparedValue> values) {
    Map<List<String>, Integer> taken = new HashMap<>();
    for (Answers row : rows) {
      Answers about = about(row, ABOUT.getOrDefault(key, firstField(row)));
      List<String> name = about.values().values().stream().map(Comparison::plain).toList();
      int count = taken.merge(name, 1, Integer::sum);
      values.put(
          new Where(name, count, key),
          new ComparedValue(
              Optional.empty(), Optional.empty(), new Answers.Value.Rows(List.of(about))));
      row.values()
          .forEach(
              (field, value) -> {
                if (!about.values().containsKey(field)) {
                  values.put(
                      new Where(name, count, key + "." + field),
                      new ComparedValue(
                          Optional.of(new Row(about, count)), row.words("unit"), value));
                }
              });
    }
  }

  private static Answers about(Answers row, List<String> keys) {
    Map<String, Answers.Value> about = new LinkedHashMap<>(row.values());
    about.keySet().retainAll(keys);
    return new Answers(about);
  }

  /** What is equal for names that are the same. */
  private static String plain(Answers.Value value) {
    if (value instanceof Answers.Value.Name name) {
      return name.key().toString();
    }
    return value instanceof Answers.Value.Words words
        ? TermOrText.fold(words.text())
        : value.toString();
  }

  private static List<String> firstField(Answers row) {
    return row.values().keySet().stream().limit(1).toList();
  }

  private static void compare(
      EntryKind kind,
      Map<Where, ComparedValue> before,
      Map<Where, ComparedValue> after,
      List<Difference> differences) {
    Set<Where> all = new LinkedHashSet<>(before.keySet());
    all.addAll(after.keySet());
    for (Where where : all) {
      Optional<ComparedValue> was = Optional.ofNullable(before.get(where));
      Optional<ComparedValue> is = Optional.ofNullable(after.get(where));
      boolean rowIsGone = was.flatMap(ComparedValue::row).isPresent() && !hasRow(after, where);
      if (!same(was, is) && !rowIsGone) {
        ComparedValue either = is.or(() -> was).orElseThrow();
        differences.add(
            new Difference(
                kind,
                either.row(),
                where.field().substring(where.field().indexOf('.') + 1),
                either.unit(),
                was.map(ComparedValue::value),
                is.map(ComparedValue::value)));
      }
    }
  }

  /** Rows that are there in both states are the same, however their names are written. */
  private static boolean same(Optional<ComparedValue> was, Optional<ComparedValue> is) {
    if (was.isEmpty() || is.isEmpty()) {
      return false;
    }
    return was.get().value() instanceof Answers.Value.Rows
        || alike(was.get().value()).equals(alike(is.get().value()));
  }

  /** A name with a code may have words that say more: those count as well. */
  private static Object alike(Answers.Value value) {
    return value instanceof Answers.Value.Name name
        ? List.of(name.key(), TermOrText.fold(name.text()))
        : value;
  }

  private static boolean hasRow(Map<Where, ComparedValue> state, Where where) {
    String rows = where.field().substring(0, where.field().indexOf('.'));
    return state.containsKey(new Where(where.row(), where.count(), rows));
  }
}
