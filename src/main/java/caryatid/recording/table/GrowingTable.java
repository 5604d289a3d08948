package caryatid.recording.table;

import java.util.Map;
import java.util.TreeMap;

/** A table while its rows are read. */
final class GrowingTable {
  private final HeaderBlock head;
  private final ColumnMapping mapping;
  private final Map<Integer, GrowingColumn> columns = new TreeMap<>();
  private final RowLines.Growing lines = new RowLines.Growing();
  private boolean clock;

  GrowingTable(HeaderBlock head, ColumnMapping mapping) {
    this.head = head;
    this.mapping = mapping;
    mapping.wanted().stream().forEach(i -> columns.put(i, new GrowingColumn()));
  }

  HeaderBlock head() {
    return head;
  }

  ColumnMapping mapping() {
    return mapping;
  }

  /** The columns to be read, by their place in a row, from 0. */
  Map<Integer, GrowingColumn> columns() {
    return columns;
  }

  RowLines.Growing lines() {
    return lines;
  }

  int rows() {
    return lines.rows();
  }

  /** A time is written as a time of the day. */
  void clockSeen() {
    clock = true;
  }

  /** The table, once all its rows are read; one column after the other moves over. */
  ParsedTable grown() {
    Map<Integer, NumberColumn> all = new TreeMap<>();
    columns.forEach((index, column) -> all.put(index, column.grown()));
    return new ParsedTable(head, mapping, all, lines.grown(), clock);
  }
}
