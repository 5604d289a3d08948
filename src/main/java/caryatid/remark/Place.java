package caryatid.remark;

import java.util.Optional;
import java.util.OptionalInt;

/**
 * Where in an input something stands.
 *
 * @param file the input's name as the user gave it
 * @param line physical line, counted from 1; empty when the whole file is meant
 * @param column the column's name for tables, its number for YAML; empty when the line is meant
 * @param cell the cell of a spreadsheet, as {@code Sheet1!C17}; then line and column are empty
 */
public record Place(String file, OptionalInt line, Optional<String> column, Optional<String> cell) {

  /** A place in a text. */
  public Place(String file, OptionalInt line, Optional<String> column) {
    this(file, line, column, Optional.empty());
  }

  /** A whole file. */
  public static Place of(String file) {
    return new Place(file, OptionalInt.empty(), Optional.empty());
  }

  /** A line of a file, counted from 1. */
  public static Place of(String file, int line) {
    return new Place(file, OptionalInt.of(line), Optional.empty());
  }

  /** A cell of a table or a position in a YAML file. */
  public static Place of(String file, int line, String column) {
    return new Place(file, OptionalInt.of(line), Optional.of(column));
  }

  /** A cell of a spreadsheet, as {@code Sheet1!C17}. */
  public static Place ofCell(String file, String cell) {
    return new Place(file, OptionalInt.empty(), Optional.empty(), Optional.of(cell));
  }
}
