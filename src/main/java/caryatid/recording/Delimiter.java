package caryatid.recording;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** What stands between an export's cells. */
enum Delimiter {
  TAB('\t'),
  SEMICOLON(';'),
  COMMA(','),
  /** One blank or more, also before the first cell. */
  BLANK(' ');

  private final char character;
  private final CSVFormat format;

  Delimiter(char character) {
    this.character = character;
    this.format =
        CSVFormat.DEFAULT
            .builder()
            .setDelimiter(character)
            .setIgnoreSurroundingSpaces(true)
            .setIgnoreEmptyLines(false)
            .setLenientEof(true)
            .setTrailingData(true)
            .get();
  }

  /** The delimiter a description states. */
  static Optional<Delimiter> of(char character) {
    return Arrays.stream(values()).filter(d -> d.character == character).findFirst();
  }

  char character() {
    return character;
  }

  /** A line's cells without the blanks around them; a single empty cell for an empty line. */
  List<String> split(String line) {
    if (this == BLANK) {
      return List.of(line.strip().split("[ \t]+"));
    }
    if (line.isBlank()) {
      return List.of("");
    }
    try (CSVParser parser = CSVParser.parse(new StringReader(line), format)) {
      List<String> cells = new ArrayList<>();
      for (CSVRecord record : parser) {
        record.forEach(cell -> cells.add(cell.strip()));
      }
      return cells;
    } catch (IOException | UncheckedIOException e) {
      return List.of(line.strip());
    }
  }
}
