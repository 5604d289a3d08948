package caryatid.usecase.stand;

import static java.nio.charset.StandardCharsets.UTF_8;

import caryatid.recording.model.NamedBytes;
import caryatid.remark.Problem;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A trial sheet with the name of the field that each of its lines was typed into, so that what is
 * wrong with a line can be shown at its field.
 */
public final class SheetText {
  private static final String NAME = "sheet.yaml";

  private final List<String> lines = new ArrayList<>();
  private final List<String> fields = new ArrayList<>();

  /** A line as it stands in the sheet. */
  SheetText line(String text, String field) {
    lines.add(text);
    fields.add(field);
    return this;
  }

  /** A key with words; none where nothing was typed. */
  SheetText words(String key, Optional<String> typed, String field) {
    typed.ifPresent(words -> line(key + ": " + quoted(words), field));
    return this;
  }

  /** A key with a number; what is no number is written all the same, so that it is refused. */
  SheetText number(String key, Optional<String> typed, boolean negative, String field) {
    typed.ifPresent(text -> line(key + ": " + number(text, negative), field));
    return this;
  }

  /** A key with one number, or a list of several that were typed with spaces between. */
  SheetText numbers(String key, Optional<String> typed, String field) {
    typed.ifPresent(
        text ->
            line(
                key
                    + ": "
                    + Arrays.stream(text.split("[;\\s]+"))
                        .map(one -> number(one, false))
                        .collect(Collectors.joining(", ", "[", "]")),
                field));
    return this;
  }

  private static String number(String typed, boolean negative) {
    String plain = TypedNumber.plain(typed);
    boolean zero = plain.matches("0+(\\.0+)?");
    return TypedNumber.isPlain(plain) ? (negative && !zero ? "-" : "") + plain : quoted(plain);
  }

  /** A time as it is; what is none is quoted, so that it is refused as one. */
  static String time(String typed) {
    return typed.matches("[0-9T:.Z+-]+") ? typed : quoted(typed);
  }

  private static String quoted(String words) {
    return "'" + words.replaceAll("\\s+", " ").replace("'", "''") + "'";
  }

  /** The sheet. */
  public NamedBytes sheet() {
    return NamedBytes.of(NAME, (String.join("\n", lines) + "\n").getBytes(UTF_8));
  }

  /** The field that a problem of the sheet is about; empty where it is about no single one. */
  public Optional<String> field(Problem problem) {
    if (!problem.place().file().equals(NAME) || problem.place().line().isEmpty()) {
      return Optional.empty();
    }
    int line = problem.place().line().getAsInt() - 1;
    return line < fields.size()
        ? Optional.of(fields.get(line)).filter(name -> !name.isEmpty())
        : Optional.empty();
  }
}
