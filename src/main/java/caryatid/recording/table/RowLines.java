package caryatid.recording.table;

import java.util.Map;
import java.util.TreeMap;

/** On which physical line each row of a table stands. */
public final class RowLines {
  private final TreeMap<Integer, Integer> lineFrom;
  private final int rows;

  private RowLines(Growing growing) {
    this.lineFrom = new TreeMap<>(growing.lineFrom);
    this.rows = growing.rows;
  }

  /** Takes the lines one by one; only where a line was left out is kept. */
  static final class Growing {
    private final TreeMap<Integer, Integer> lineFrom = new TreeMap<>();
    private int rows;
    private int lastLine = Integer.MIN_VALUE;

    /** The next row stands on a line. */
    void add(int line) {
      if (line != lastLine + 1) {
        lineFrom.put(rows, line);
      }
      lastLine = line;
      rows++;
    }

    int rows() {
      return rows;
    }

    RowLines grown() {
      return new RowLines(this);
    }
  }

  /** Rows of a file without lines: each by its own number, from 1. */
  public static RowLines every(int rows) {
    Growing growing = new Growing();
    growing.add(1);
    growing.rows = rows;
    return growing.grown();
  }

  int rows() {
    return rows;
  }

  /** The line of a row, both from their own start: rows from 0, lines from 1. */
  public int line(int row) {
    Map.Entry<Integer, Integer> run = lineFrom.floorEntry(row);
    return run.getValue() + row - run.getKey();
  }
}
