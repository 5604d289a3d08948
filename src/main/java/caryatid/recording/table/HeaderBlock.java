package caryatid.recording.table;

import java.util.Collections;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Collectors;

/**
 * The lines above a table, and how its rows are written. Line numbers are physical, from 1.
 *
 * @param preamble the lines above, from the end of what went before
 * @param preambleLine number of the first of them
 * @param headerLine the line of the names; empty for a table without
 * @param deviceLine a line of devices above the names
 * @param unitsLine a line of units below them
 * @param columns the names in order, one a cell of a row; empty names for unnamed columns
 * @param firstDataLine the first row's line
 * @param dialect how the rows are written
 * @param sample a number as it is written there
 * @param firstRows the cells of the first rows
 */
public record HeaderBlock(
    List<String> preamble,
    int preambleLine,
    OptionalInt headerLine,
    OptionalInt deviceLine,
    OptionalInt unitsLine,
    List<ColumnName> columns,
    int firstDataLine,
    Dialect dialect,
    String sample,
    List<List<String>> firstRows) {
  public HeaderBlock {
    firstRows = firstRows.stream().map(List::copyOf).toList();
    preamble = List.copyOf(preamble);
    columns = List.copyOf(columns);
  }

  /** The columns of a file that is no text. */
  public static HeaderBlock named(List<ColumnName> columns) {
    return new HeaderBlock(
        List.of(),
        1,
        OptionalInt.empty(),
        OptionalInt.empty(),
        OptionalInt.empty(),
        columns,
        1,
        new Dialect(Delimiter.COMMA, DecimalMark.POINT),
        "",
        List.of());
  }

  /** How many columns the names and the rows agree on; the rest are unnamed and at the end. */
  int named() {
    int named = columns.size();
    while (named > 0 && columns.get(named - 1).full().isEmpty()) {
      named--;
    }
    return named;
  }

  /** The same without names, for a row's number of cells. */
  HeaderBlock unnamed(int cells) {
    return new HeaderBlock(
        preamble,
        preambleLine,
        headerLine,
        deviceLine,
        unitsLine,
        Collections.nCopies(cells, ColumnName.of("", "")),
        firstDataLine,
        dialect,
        sample,
        firstRows);
  }

  /** Whether a column's first cells are numbers. */
  public boolean numeric(int index) {
    List<Cell> cells =
        firstRows.stream().filter(r -> index < r.size()).map(r -> Cell.of(r.get(index))).toList();
    return cells.contains(Cell.NUMBER)
        && cells.stream().allMatch(c -> c == Cell.NUMBER || c == Cell.HOLE);
  }

  /** The first names a problem lists. */
  public String names() {
    return columns.stream()
        .map(ColumnName::full)
        .filter(n -> !n.isEmpty())
        .limit(40)
        .collect(Collectors.joining(", "));
  }

  /** What a problem calls a column: its name, or its number where it has none. */
  String columnName(int index) {
    String name = columns.get(index).full();
    return name.isEmpty() ? String.valueOf(index + 1) : name;
  }
}
