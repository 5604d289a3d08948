package caryatid.remark;

import java.util.Optional;
import java.util.OptionalInt;

/**
 * Where in an input something stands.
 *
 * @param file the input's name as the user gave it
 * @param line physical line, counted from 1; empty when the whole file is meant
 * @param column the column's name for tables, its number for YAML; empty when the line is meant
 */
public record Place(String file, OptionalInt line, Optional<String> column) {

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
}
