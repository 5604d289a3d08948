package caryatid.recording.table;

/**
 * How a table's rows are written.
 *
 * @param delimiter what stands between the cells
 * @param mark what stands before the decimals
 * @param thousands whether the other mark is known to part thousands
 */
public record Dialect(Delimiter delimiter, DecimalMark mark, boolean thousands) {
  /** Without thousands separators. */
  Dialect(Delimiter delimiter, DecimalMark mark) {
    this(delimiter, mark, false);
  }
}
