package caryatid.recording.table;

import caryatid.remark.Coded;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** The character between an export's cells. */
enum Delimiter implements Coded {
  TAB("Delimiter.TAB", '\t'),
  SEMICOLON("Delimiter.SEMICOLON", ';'),
  COMMA("Delimiter.COMMA", ','),
  /** One blank or more, also before the first cell. */
  BLANK("Delimiter.BLANK", ' ');

  private static final Pattern BLANKS = Pattern.compile("[ \t]+");
  private static final Map<Delimiter, CSVFormat> FORMATS = new EnumMap<>(Delimiter.class);

  static {
    for (Delimiter delimiter : values()) {
      FORMATS.put(
          delimiter,
          CSVFormat.DEFAULT
              .builder()
              .setDelimiter(delimiter.character)
              .setIgnoreSurroundingSpaces(true)
              .setIgnoreEmptyLines(false)
              .setLenientEof(false)
              .setTrailingData(false)
              .get());
    }
  }

  private final String code;
  private final char character;

  Delimiter(String code, char character) {
    this.code = code;
    this.character = character;
  }

  @Override
  public String code() {
    return code;
  }

  /** The delimiter a description states. */
  static Optional<Delimiter> of(char character) {
    return Arrays.stream(values()).filter(d -> d.character == character).findFirst();
  }

  public char character() {
    return character;
  }

  /**
   * A line's cells without the blanks around them; a single empty cell for an empty line. Quotes
   * are the CSV library's to read.
   */
  List<String> split(String line) {
    if (this == BLANK) {
      return List.of(BLANKS.split(line.strip(), -1));
    }
    if (line.isBlank()) {
      return List.of("");
    }
    if (line.indexOf('"') < 0) {
      return unquoted(line);
    }
    return isUnclosed(line) ? List.of(line.strip()) : quoted(line);
  }

  /** Whether the only quote opens the line. The library would say so too, at some cost. */
  private static boolean isUnclosed(String line) {
    return line.indexOf('"') == line.lastIndexOf('"') && line.stripLeading().startsWith("\"");
  }

  private List<String> unquoted(String line) {
    List<String> cells = new ArrayList<>();
    int from = 0;
    for (int to = line.indexOf(character); to >= 0; to = line.indexOf(character, from)) {
      cells.add(line.substring(from, to).strip());
      from = to + 1;
    }
    cells.add(line.substring(from).strip());
    return List.copyOf(cells);
  }

  private List<String> quoted(String line) {
    try (CSVParser parser = CSVParser.parse(new StringReader(line), FORMATS.get(this))) {
      List<String> cells = new ArrayList<>();
      for (CSVRecord record : parser) {
        record.forEach(cell -> cells.add(cell.strip()));
      }
      return List.copyOf(cells);
    } catch (IOException | UncheckedIOException e) {
      return List.of(line.strip());
    }
  }
}
