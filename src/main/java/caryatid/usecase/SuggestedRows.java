package caryatid.usecase;

import caryatid.entry.BenchItem;
import caryatid.entry.EntryKind;
import caryatid.entry.TermOrText;
import caryatid.entry.WalkingDeviation;
import caryatid.entry.form.Answers;
import caryatid.entry.form.Choices;
import caryatid.entry.form.Field;
import caryatid.entry.form.FormReader;
import caryatid.entry.form.Vocabulary;
import caryatid.fitting.RecordCode;
import caryatid.format.KnownWords;
import caryatid.remark.BadInput;
import caryatid.remark.Coded;
import caryatid.remark.Place;
import caryatid.sheet.AmputationLevel;
import caryatid.sheet.yaml.InputValue;
import caryatid.wording.EntryWords;
import caryatid.wording.Wording;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * Usual rows of a form, suggested by the level of amputation. What a suggested row says is filled
 * in if the user leaves it out.
 *
 * @param rows each by its keys, the name first; none for forms without usual rows
 * @param wording in whose language they are shown
 */
public record SuggestedRows(List<Answers> rows, Wording wording) {

  public SuggestedRows {
    rows = List.copyOf(rows);
  }

  /** Nothing is offered. */
  public static SuggestedRows none(Wording wording) {
    return new SuggestedRows(List.of(), wording);
  }

  /** What is offered for a kind of entry. */
  public static SuggestedRows of(EntryKind kind, AmputationLevel level, Wording wording) {
    return of(kind, List.of(level), wording);
  }

  private static SuggestedRows of(EntryKind kind, List<AmputationLevel> levels, Wording wording) {
    if (kind == EntryKind.BENCH_ALIGNMENT) {
      return new SuggestedRows(rows(levels, BenchItem::of, SuggestedRows::row), wording);
    }
    return kind == EntryKind.WALKING
        ? new SuggestedRows(rows(levels, WalkingDeviation::of, SuggestedRows::row), wording)
        : none(wording);
  }

  /** What is usual at any of the levels, each once. */
  private static <T> List<Answers> rows(
      List<AmputationLevel> levels,
      Function<AmputationLevel, List<T>> usual,
      Function<T, Answers> row) {
    return levels.stream()
        .flatMap(level -> usual.apply(level).stream())
        .distinct()
        .map(row)
        .toList();
  }

  /**
   * What is offered for the level of amputation that a record's first entry says; nothing where it
   * cannot be read.
   *
   * @throws BadInput if there is no such record, or nothing of it can be read
   */
  public static SuggestedRows in(Records records, String code, EntryKind kind, Wording wording)
      throws BadInput {
    RecordCode record = RecordCode.of(code);
    if (kind != EntryKind.BENCH_ALIGNMENT && kind != EntryKind.WALKING) {
      return none(wording);
    }
    return of(kind, records.store().read(record).levels(), wording);
  }

  private static Answers row(BenchItem item) {
    Map<String, Answers.Value> row = new LinkedHashMap<>();
    row.put("item", term(item));
    row.put("unit", new Answers.Value.Words(Choices.UNIT.code(item.unit())));
    return new Answers(row);
  }

  private static Answers row(WalkingDeviation deviation) {
    Map<String, Answers.Value> row = new LinkedHashMap<>();
    row.put("deviation", term(deviation));
    row.put("plane", new Answers.Value.Words(Choices.GAIT_PLANE.code(deviation.plane())));
    row.put("phase", new Answers.Value.Words(Choices.PHASE.code(deviation.phase())));
    row.put("points-to", term(deviation));
    row.put("source", term(deviation.source()));
    return new Answers(row);
  }

  private static Answers.Value.Name term(Coded term) {
    return new Answers.Value.Name(Optional.of(term), "");
  }

  /** The offered row of a name in any language, or of its number from 1. */
  public Optional<Answers> named(String nameOrNumber) {
    for (int i = 0; i < rows.size(); i++) {
      if (nameOrNumber.equals(Integer.toString(i + 1)) || isName(nameOrNumber, i)) {
        return Optional.of(rows.get(i));
      }
    }
    return Optional.empty();
  }

  private boolean isName(String text, int row) {
    Vocabulary vocabulary = nameKey().equals("item") ? Vocabulary.BENCH_ITEM : Vocabulary.DEVIATION;
    return TermOrText.fold(text).equals(TermOrText.fold(name(row)))
        || KnownWords.today()
            .term(vocabulary, text)
            .equals(rows.get(row).name(nameKey()).flatMap(Answers.Value.Name::code));
  }

  /**
   * Whether a field is asked for in a row that goes by an offered name: only fasteners are told
   * apart.
   */
  public static boolean isAsked(Answers offered, Field field) {
    boolean otherItem =
        offered
            .name("item")
            .flatMap(Answers.Value.Name::code)
            .filter(code -> !code.equals(BenchItem.FASTENERS))
            .isPresent();
    return !(otherItem && field.key().equals("fastener"));
  }

  /** The name of a row in the reader's language. */
  public String name(int row) {
    return words().get(row).get(nameKey());
  }

  private String nameKey() {
    return rows.get(0).values().keySet().iterator().next();
  }

  /** The rows in the reader's language; choices by their codes. */
  public List<Map<String, String>> words() {
    return rows.stream().map(this::words).toList();
  }

  private Map<String, String> words(Answers row) {
    Map<String, String> words = new LinkedHashMap<>();
    row.values()
        .forEach(
            (key, value) ->
                words.put(
                    key,
                    value instanceof Answers.Value.Words code
                        ? code.text()
                        : new EntryWords(wording).value(key, value)));
    return words;
  }

  /** What was given, rows that go by an offered name completed. */
  public InputValue.Group complete(InputValue.Group given) {
    return rows.isEmpty() ? given : given.withRows(key -> true, this::completeRow);
  }

  private InputValue.Group completeRow(InputValue.Group row) {
    Optional<Answers> offered =
        row.members().get(nameKey()) instanceof InputValue.Single name
            ? named(name.text())
            : Optional.empty();
    Map<String, InputValue> members = new LinkedHashMap<>(row.members());
    offered.ifPresent(
        answers -> {
          given(answers, row.place()).forEach(members::putIfAbsent);
          members.put(nameKey(), given(answers, row.place()).get(nameKey()));
        });
    return new InputValue.Group(members, row.place());
  }

  /** A row as if it had been given: terms by their codes. */
  public static Map<String, InputValue> given(Answers row, Place place) {
    Map<String, InputValue> given = new LinkedHashMap<>();
    row.values()
        .forEach(
            (key, value) ->
                given.put(
                    key,
                    value instanceof Answers.Value.Name name
                        ? new InputValue.Group(
                            Map.of(
                                FormReader.CODE,
                                InputValue.Single.ofAnyKind(
                                    name.code().orElseThrow().code(), place)),
                            place)
                        : InputValue.Single.ofAnyKind(
                            ((Answers.Value.Words) value).text(), place)));
    return given;
  }
}
