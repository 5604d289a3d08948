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
    int end = blanks ? trimBlanks(bytes, from, to) : to;
    int at = from;
    for (int cell = 0; cell < cells; cell++) {
      at = slot[cell] < 0 ? skip(bytes, at, end) : take(bytes, at, end, slot[cell]);
      boolean last = cell == cells - 1;
      if (at < 0 || (at == end) != last) {
        return false;
      }
      at++;
    }
    return keep();
  }

  /** Past the bytes of a cell that is not wanted; -1 if it is quoted. */
  private int skip(byte[] bytes, int from, int end) {
    int at = blanks ? skipBlanks(bytes, from, end) : from;
    while (at < end && !separates(bytes[at])) {
      if (bytes[at] == '"') {
        return -1;
      }
      at++;
    }
    return at;
  }

  /** Past the bytes of a cell that holds a number and nothing else; -1 if it does not. */
  private int take(byte[] bytes, int from, int end, int into) {
    boolean padded = from < end && bytes[from] <= ' ';
    int past = number.read(bytes, padded ? skipBlanks(bytes, from, end) : from, end);
    if (past < 0) {
      return -1;
    }
    values[into] = number.value();
    int at = past;
    while (at < end && !separates(bytes[at])) {
      if (bytes[at] != ' ' && bytes[at] != '\t') {
        return -1;
      }
      at++;
    }
    return at;
  }

  private boolean separates(byte b) {
    return b == delimiter || (blanks && b == '\t');
  }

  private boolean keep() {
    for (int i = 0; i < columns.length; i++) {
      columns[i].add(values[i]);
    }
    return true;
  }

  /** Past blanks, but never past a delimiter. */
  private int skipBlanks(byte[] bytes, int from, int to) {
    int at = from;
    while (at < to && (bytes[at] == ' ' || (bytes[at] == '\t' && delimiter != '\t'))) {
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
