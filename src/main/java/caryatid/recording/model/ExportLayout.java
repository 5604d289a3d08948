package caryatid.recording.model;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * How an export is laid out as text, as far as a description states it; the rest is found in the
 * file.
 *
 * @param encoding name of the character encoding
 * @param delimiter character between cells
 * @param decimalMark point or comma
 * @param headerLine physical line of the column names, from 1
 * @param firstDataLine physical line of the first row of numbers, from 1
 * @param columns the columns' names in order, for a file without a header or with a useless one;
 *     empty otherwise
 * @param recording which recording of a file that holds several, from 1
 */
public record ExportLayout(
    Optional<String> encoding,
    Optional<Character> delimiter,
    Optional<Character> decimalMark,
    OptionalInt headerLine,
    OptionalInt firstDataLine,
    List<String> columns,
    OptionalInt recording) {
  /** Nothing stated. */
  public static final ExportLayout UNSTATED =
      new ExportLayout(
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          OptionalInt.empty(),
          OptionalInt.empty(),
          List.of(),
          OptionalInt.empty());

  public ExportLayout {
    columns = List.copyOf(columns);
  }

  /** The same in UTF-8, with this delimiter and decimal mark. */
  public ExportLayout as(char cells, char decimals) {
    return new ExportLayout(
        Optional.empty(),
        Optional.of(cells),
        Optional.of(decimals),
        headerLine,
        firstDataLine,
        columns,
        recording);
  }
}
