package caryatid.recording;

/**
 * Reads a row of plain numbers straight from its bytes. Whatever is not plain (a quote, a missing
 * or wrong cell, another count of cells) it leaves to {@link CarefulRow}; where it reads a row,
 * both read the same numbers.
 */
final class FastRow {
  private final byte delimiter;
  private final boolean blanks;
  private final NumberBytes number;
  private final int cells;
  private final int[] slot;
  private final double[] values;
  private final Column[] columns;

  FastRow(Table table) {
    Dialect dialect = table.head().dialect();
    this.delimiter = (byte) dialect.delimiter().character();
    this.blanks = dialect.delimiter() == Delimiter.BLANK;
    this.number = new NumberBytes(dialect.mark());
    this.cells = table.head().columns().size();
    this.slot = new int[cells];
    this.columns = table.columns().values().toArray(new Column[0]);
    this.values = new double[columns.length];
    java.util.Arrays.fill(slot, -1);
    int next = 0;
    for (int index : table.columns().keySet()) {
      slot[index] = next++;
    }
  }

  /** Reads a line into the table's columns; false, and nothing read, if it is not plain. */
  boolean read(byte[] bytes, int from, int to) {
    int at = from;
    int end = to;
    if (blanks) {
      at = skipBlanks(bytes, from, to);
      end = trimBlanks(bytes, at, to);
    }
    int cell = 0;
    while (true) {
      int stop = at;
      while (stop < end && !separates(bytes[stop])) {
        if (bytes[stop] == '"') {
          return false;
        }
        stop++;
      }
      if (cell == cells || !take(bytes, at, stop, cell)) {
        return false;
      }
      cell++;
      if (stop == end) {
        return cell == cells && keep();
      }
      at = blanks ? skipBlanks(bytes, stop, end) : stop + 1;
    }
  }

  private boolean separates(byte b) {
    return b == delimiter || (blanks && b == '\t');
  }

  private boolean take(byte[] bytes, int from, int to, int cell) {
    int into = slot[cell];
    if (into < 0) {
      return true;
    }
    int start = skipBlanks(bytes, from, to);
    if (!number.read(bytes, start, trimBlanks(bytes, start, to))) {
      return false;
    }
    values[into] = number.value();
    return true;
  }

  private boolean keep() {
    for (int i = 0; i < columns.length; i++) {
      columns[i].add(values[i]);
    }
    return true;
  }

  private static int skipBlanks(byte[] bytes, int from, int to) {
    int at = from;
    while (at < to && (bytes[at] == ' ' || bytes[at] == '\t')) {
      at++;
    }
    return at;
  }

  private static int trimBlanks(byte[] bytes, int from, int to) {
    int at = to;
    while (at > from && (bytes[at - 1] == ' ' || bytes[at - 1] == '\t')) {
      at--;
    }
    return at;
  }
}
