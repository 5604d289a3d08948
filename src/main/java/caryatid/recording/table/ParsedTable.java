package caryatid.recording.table;

import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;

/**
 * A table of an export.
 *
 * @param head what stands above its rows
 * @param mapping what its columns are taken for
 * @param columns those of them that are needed, by their place in a row, from 0
 * @param lines where its rows stand
 * @param clock whether the times are written as times of the day
 */
public record ParsedTable(
    HeaderBlock head,
    ColumnMapping mapping,
    Map<Integer, NumberColumn> columns,
    RowLines lines,
    boolean clock) {
  public ParsedTable {
    columns = Collections.unmodifiableMap(new TreeMap<>(columns));
  }

  /**
   * A column that is needed.
   *
   * @throws IllegalArgumentException if it is not
   */
  public NumberColumn column(int index) {
    NumberColumn column = columns.get(index);
    if (column == null) {
      throw new IllegalArgumentException("column " + index + " was not asked for");
    }
    return column;
  }

  public int rows() {
    return lines.rows();
  }

  /** What a problem calls a column. */
  public String columnName(int index) {
    return head.columnName(index);
  }
}
