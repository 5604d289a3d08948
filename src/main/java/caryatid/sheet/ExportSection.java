package caryatid.sheet;

import caryatid.recording.model.ExportLayout;
import caryatid.recording.model.TimeBase;
import caryatid.recording.model.TimeUnit;
import caryatid.remark.Argument;
import caryatid.sheet.yaml.Section;
import caryatid.sheet.yaml.ValueParser;
import caryatid.sheet.yaml.ValueParsers;
import caryatid.sheet.yaml.YamlScalar;
import java.nio.charset.Charset;
import java.nio.charset.IllegalCharsetNameException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** Reads the section of a plate description about the export's layout and times. */
final class ExportSection {
  private static final ValueParser<Integer> LINE = ValueParsers.whole(1, 1_000_000);
  private static final ValueParser<Character> DELIMITER = ValueParsers.choice(delimiters());
  private static final ValueParser<Character> DECIMAL_MARK = ValueParsers.choice(decimalMarks());
  private static final ValueParser<TimeUnit> TIME_UNIT = ValueParsers.word(TimeUnit.class);

  private ExportSection() {}

  static Optional<ExportLayout> form(Section section) {
    Optional<String> encoding = section.optional("encoding", ExportSection::encoding);
    Optional<Character> delimiter = section.optional("delimiter", DELIMITER);
    Optional<Character> mark = section.optional("decimal-mark", DECIMAL_MARK);
    Optional<Integer> header = section.optional("header-line", LINE);
    Optional<Integer> first = section.optional("first-data-line", LINE);
    List<String> columns = section.list("columns", ValueParsers.TEXT);
    Optional<Integer> recording = section.optional("recording", ValueParsers.whole(1, 1000));
    if (delimiter.isPresent() && delimiter.equals(mark)) {
      section.refuse(section.place("decimal-mark"), DescriptionProblem.COMMA_TWICE);
    }
    if (header.isPresent() && first.isPresent() && header.get() >= first.get()) {
      section.refuse(
          section.place("header-line"),
          DescriptionProblem.HEADER_BELOW_DATA,
          Argument.count(header.get()),
          Argument.count(first.get()));
    }
    return section.build(
        () ->
            new ExportLayout(
                encoding, delimiter, mark, toInt(header), toInt(first), columns, toInt(recording)));
  }

  static Optional<TimeBase> time(Section section) {
    Optional<String> column = section.optional("column", ValueParsers.TEXT);
    Optional<TimeUnit> unit = section.optional("unit", TIME_UNIT);
    Optional<Double> rate = section.optional("rate-hz", ValueParsers.numberAbove(0, 1_000_000));
    if (section.has("rate-hz") && (section.has("column") || section.has("unit"))) {
      section.refuse(section.place("rate-hz"), DescriptionProblem.RATE_AND_COLUMN);
    }
    return section.build(() -> new TimeBase(column, unit, toDouble(rate)));
  }

  static OptionalDouble toDouble(Optional<Double> value) {
    return value.map(OptionalDouble::of).orElseGet(OptionalDouble::empty);
  }

  private static OptionalInt toInt(Optional<Integer> value) {
    return value.map(OptionalInt::of).orElseGet(OptionalInt::empty);
  }

  private static Optional<String> encoding(YamlScalar written) {
    try {
      return Charset.isSupported(written.text())
          ? Optional.of(written.text())
          : written.refuse(DescriptionProblem.UNKNOWN_ENCODING);
    } catch (IllegalCharsetNameException e) {
      return written.refuse(DescriptionProblem.UNKNOWN_ENCODING);
    }
  }

  /** The word for a delimiter. */
  static String delimiter(char delimiter) {
    return word(delimiters(), delimiter);
  }

  /** The word for a decimal mark. */
  static String decimalMark(char mark) {
    return word(decimalMarks(), mark);
  }

  private static String word(Map<String, Character> words, char meant) {
    return words.entrySet().stream()
        .filter(e -> e.getValue() == meant)
        .map(Map.Entry::getKey)
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no word for " + meant));
  }

  private static Map<String, Character> delimiters() {
    Map<String, Character> words = new LinkedHashMap<>();
    words.put("comma", ',');
    words.put("semicolon", ';');
    words.put("tab", '\t');
    words.put("blank", ' ');
    return words;
  }

  private static Map<String, Character> decimalMarks() {
    Map<String, Character> words = new LinkedHashMap<>();
    words.put("point", '.');
    words.put("comma", ',');
    return words;
  }
}
