package caryatid.wording;

import caryatid.entry.BenchAlignment;
import caryatid.entry.EntryContent;
import caryatid.entry.EntryKind;
import caryatid.entry.TermOrText;
import caryatid.entry.form.Answers;
import caryatid.entry.form.Choices;
import caryatid.entry.form.ContentToAnswers;
import caryatid.entry.form.EntryForms;
import caryatid.entry.form.Field;
import caryatid.entry.form.FieldType;
import caryatid.entry.form.Form;
import caryatid.remark.Argument;
import caryatid.remark.Coded;
import caryatid.remark.Unit;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The content of an entry in words. */
public final class EntryWords {
  private static final Map<String, String> UNITS =
      Map.of("-mm", "mm", "-kg", "kg", "-percent", "%", "-deg", "°");

  /** Holds the unit of the numbers in its row. */
  private static final String UNIT = "unit";

  /** Fields that the program works out with more digits than anybody reads. */
  private static final Set<String> WORKED_OUT =
      Set.of("offset-mm", "expanded-mm", "load-share-percent");

  /** The field that says whether a tolerance is met. */
  private static final String RESULT = "result";

  /** Fields with words of the program's own vocabulary. */
  private static final Set<String> CHOICES =
      Arrays.stream(EntryKind.values())
          .flatMap(kind -> choices(EntryForms.of(kind)))
          .filter(key -> !key.equals(UNIT))
          .collect(Collectors.toSet());

  /** The field in which a deviation's code stands for what it usually points to. */
  private static final String POINTS_TO = "points-to";

  private static final String USUALLY = ".POINTS_TO";

  private final Wording wording;

  /** Words in a language. */
  public EntryWords(Wording wording) {
    this.wording = wording;
  }

  private static Stream<String> choices(Form form) {
    return form.fields().stream()
        .flatMap(
            field ->
                field.type() instanceof FieldType.Rows rows
                    ? choices(rows.form())
                    : Stream.of(field)
                        .filter(
                            f ->
                                f.type() instanceof FieldType.Choice
                                    || f.type() instanceof FieldType.Computed)
                        .map(Field::key));
  }

  /** The word for a field's key. */
  public String label(String key) {
    return wording.word("Field." + key);
  }

  /** The unit that ends a field's key; empty where there is none. */
  public static String unit(String key) {
    return UNITS.entrySet().stream()
        .filter(u -> key.endsWith(u.getKey()))
        .map(Map.Entry::getValue)
        .findFirst()
        .orElse("");
  }

  /**
   * A value that is not rows.
   *
   * @param key its field's
   */
  public String value(String key, Answers.Value value) {
    if (value instanceof Answers.Value.Amount amount) {
      BigDecimal number =
          WORKED_OUT.contains(key)
              ? amount.number().setScale(1, RoundingMode.HALF_UP)
              : amount.number();
      String space = unit(key).equals(Unit.DEG.symbol()) ? "" : " ";
      return (wording.exact(number) + space + unit(key)).strip();
    }
    if (value instanceof Answers.Value.YesNo yesNo) {
      return wording.word(yesNo.yes() ? "Answer.yes" : "Answer.no");
    }
    if (value instanceof Answers.Value.Name name) {
      return name(key, name.code(), name.text());
    }
    String text = ((Answers.Value.Words) value).text();
    if (key.equals(RESULT)) {
      return wording.word(Choices.RESULT.constant(text).orElseThrow());
    }
    return CHOICES.contains(key) ? wording.word("Choice." + text.replace(' ', '-')) : text;
  }

  /** A name: its term in the reader's language, then the person's words unchanged. */
  public String name(String key, TermOrText<?> name) {
    return name(key, name.code(), name.text());
  }

  /** What a row of the alignment sets: the item, which fastener, on which leg. */
  public String item(BenchAlignment.Item row) {
    return Stream.of(
            Optional.of(name("item", row.item())), row.fastener(), row.side().map(wording::word))
        .flatMap(Optional::stream)
        .collect(Collectors.joining(", "));
  }

  private String name(String key, Optional<? extends Coded> code, String text) {
    return Stream.concat(
            code
                .map(term -> wording.word(term.code() + (key.equals(POINTS_TO) ? USUALLY : "")))
                .stream(),
            Stream.of(text).filter(t -> !t.isBlank()))
        .collect(Collectors.joining(", "));
  }

  /**
   * Everything that an entry says, a line each.
   *
   * @param leftOut keys that are left out
   */
  public List<String> lines(EntryContent content, String... leftOut) {
    return lines(ContentToAnswers.answers(content), leftOut);
  }

  /**
   * Everything that answers say, a line each.
   *
   * @param leftOut keys that are left out
   */
  public List<String> lines(Answers answers, String... leftOut) {
    List<String> lines = new ArrayList<>();
    answers
        .values()
        .forEach(
            (key, value) -> {
              if (List.of(leftOut).contains(key)) {
                return;
              }
              if (value instanceof Answers.Value.Rows rows) {
                rows.rows().forEach(row -> lines.add(row(row)));
              } else {
                lines.add(
                    wording.fill(
                        "Record.field",
                        Argument.text(label(key)),
                        Argument.text(value(key, value))));
              }
            });
    return lines;
  }

  /** The row's own words first; a unit that has a field of its own stands behind its numbers. */
  private String row(Answers row) {
    String unit = row.words(UNIT).map(u -> " " + u).orElse("");
    List<String> parts = new ArrayList<>();
    row.values()
        .forEach(
            (key, value) -> {
              if (!key.equals(UNIT)) {
                String text = value(key, value);
                String number = value instanceof Answers.Value.Amount ? text + unit : text;
                parts.add(parts.isEmpty() ? number : label(key) + " " + number);
              }
            });
    difference(row).ifPresent(parts::add);
    return String.join("; ", parts);
  }

  /** Of heights on both legs, which is higher. */
  private Optional<String> difference(Answers row) {
    if (row.number("left-mm").isEmpty() || row.number("right-mm").isEmpty()) {
      return Optional.empty();
    }
    BigDecimal higher = row.number("left-mm").get().subtract(row.number("right-mm").get());
    String key = higher.signum() > 0 ? "LEFT" : higher.signum() < 0 ? "RIGHT" : "LEVEL";
    Argument by = Argument.text(wording.exact(higher.abs()) + " mm");
    return Optional.of(wording.fill("EntryWords." + key, by));
  }
}
