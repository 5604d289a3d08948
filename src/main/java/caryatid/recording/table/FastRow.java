package caryatid.recording.table;

import ch.randelshofer.fastdoubleparser.JavaDoubleParser;
import java.util.Arrays;

/**
 * Reads a row of plain numbers straight from a text's bytes, without Strings. Whatever is not plain
 * (a quote, a missing or wrong cell, another count of cells) it leaves to {@link CarefulRow}; where
 * it reads a row, both read the same numbers, those of {@link Double#parseDouble}.
 *
 * <p>Whole numbers up to 2^53 and powers of ten up to 22 are exact in a double, so that one
 * division rounds correctly (W. D. Clinger, How to read floating point numbers accurately, PLDI
 * 1990; from memory); more digits and exponents go to a full parser.
 */
final class FastRow {
  /** What {@link #read} gives for a row that is not plain. */
  static final int NOT_PLAIN = -1;

  private static final double[] TEN = {
    1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15, 1e16, 1e17,
    1e18, 1e19, 1e20, 1e21, 1e22
  };

  /** As many digits are below 2^53. */
  private static final int EXACT_DIGITS = 15;

  private final byte delimiter;
  private final boolean blanks;
  private final byte mark;
  private final byte lineEnd;
  private final GrowingColumn[] columns;

  /** For each cell of a row its column, and where that takes its next numbers; null if unwanted. */
  private final GrowingColumn[] ofCell;

  private final double[][] room;
  private final GrowingColumn first;
  private double[] firstRoom = {};

  /**
   * @param table whose wanted columns are filled
   * @param lineEnd the byte that ends a line
   */
  FastRow(GrowingTable table, byte lineEnd) {
    Dialect dialect = table.head().dialect();
    this.delimiter = (byte) dialect.delimiter().character();
    this.blanks = dialect.delimiter() == Delimiter.BLANK;
    this.mark = (byte) dialect.mark().character();
    this.lineEnd = lineEnd;
    this.columns = table.columns().values().toArray(new GrowingColumn[0]);
    this.ofCell = new GrowingColumn[table.head().columns().size()];
    this.room = new double[ofCell.length][];
    table.columns().forEach((index, column) -> ofCell[index] = column);
    this.first = columns.length == 0 ? new GrowingColumn() : columns[0];
  }

  /**
   * Reads a row into the table's columns. All in one method and in local variables, because it runs
   * for every number of a recording of an hour.
   *
   * @param bytes hold the row, and a line end at {@code limit}
   * @param from the row's first byte
   * @param limit past the last byte that is known
   * @return the index past the row's line end; {@link #NOT_PLAIN}, and nothing read, if the row is
   *     not plain or goes on beyond the limit
   */
  int read(byte[] bytes, int from, int limit) {
    makeRoom();
    byte delimiter = this.delimiter;
    byte mark = this.mark;
    int place = first.place();
    int cells = room.length;
    int at = from;
    for (int cell = 0; cell < cells; cell++) {
      at = bytes[at] <= ' ' ? pastBlanks(bytes, at) : at;
      double[] into = room[cell];
      if (into == null) {
        at = pastUnwanted(bytes, at);
      } else {
        int start = at;
        boolean negative = bytes[at] == '-';
        if (negative || bytes[at] == '+') {
          at++;
        }
        long digits = 0;
        int count = -at;
        int digit;
        while ((digit = bytes[at] - '0') >= 0 && digit <= 9) {
          digits = digits * 10 + digit;
          at++;
        }
        count += at;
        int decimals = 0;
        if (bytes[at] == mark) {
          decimals = - ++at;
          while ((digit = bytes[at] - '0') >= 0 && digit <= 9) {
            digits = digits * 10 + digit;
            at++;
          }
          decimals += at;
          count += decimals;
        }
        if (count == 0) {
          return NOT_PLAIN;
        }
        if (count > EXACT_DIGITS || (bytes[at] | 0x20) == 'e') {
          at = LongNumber.read(bytes, start, at, mark, into, place);
        } else {
          double magnitude = decimals > 0 ? digits / TEN[decimals] : digits;
          into[place] = negative ? -magnitude : magnitude;
        }
      }
      if (at < 0) {
        return NOT_PLAIN;
      }
      byte next = bytes[at];
      if (next == delimiter && cell + 1 < cells) {
        at++;
      } else if ((next > ' ' && next != delimiter)
          || (at = pastCell(bytes, at, cell + 1 == cells)) < 0) {
        return NOT_PLAIN;
      }
    }
    return rowEnd(bytes, at, limit);
  }

  private void makeRoom() {
    double[] now = first.room();
    if (now != firstRoom) {
      firstRoom = now;
      for (int cell = 0; cell < ofCell.length; cell++) {
        room[cell] = ofCell[cell] == null ? null : ofCell[cell].room();
      }
    }
  }

  /** Past the blanks behind a cell, and the delimiter if another cell follows. */
  private int pastCell(byte[] bytes, int from, boolean last) {
    int at = pastBlanks(bytes, from);
    if (last) {
      return at;
    }
    if (blanks) {
      return at > from ? at : NOT_PLAIN;
    }
    return bytes[at] == delimiter ? at + 1 : NOT_PLAIN;
  }

  /** Past empty cells beyond the last column and the line end; the row counts only now. */
  private int rowEnd(byte[] bytes, int from, int limit) {
    int at = from;
    while (bytes[at] == delimiter) {
      at = pastBlanks(bytes, at + 1);
    }
    if (bytes[at] == '\r' && lineEnd != '\r') {
      at++;
    }
    if (at >= limit || bytes[at] != lineEnd) {
      return NOT_PLAIN;
    }
    for (GrowingColumn column : columns) {
      column.placed();
    }
    return at + 1;
  }

  /**
   * Past the bytes of a cell that is not wanted; below 0 if it is quoted, or if there is none where
   * blanks part the cells: then another one is missing, and the cells stand in wrong places.
   */
  private int pastUnwanted(byte[] bytes, int from) {
    int at = from;
    while (bytes[at] != delimiter && bytes[at] != lineEnd && bytes[at] != '\r') {
      if (bytes[at] == '"') {
        return NOT_PLAIN;
      }
      if (blanks && bytes[at] == '\t') {
        return at;
      }
      at++;
    }
    return blanks && at == from ? NOT_PLAIN : at;
  }

  /** Past blanks, but never past a delimiter that is one. */
  private int pastBlanks(byte[] bytes, int from) {
    int at = from;
    while (bytes[at] == ' ' || (bytes[at] == '\t' && delimiter != '\t')) {
      at++;
    }
    return at;
  }

  /**
   * Numbers of a plain row that one division does not round correctly: many digits, an exponent.
   */
  private static final class LongNumber {
    private static final int NONE = FastRow.NOT_PLAIN;

    private LongNumber() {}

    /**
     * Reads a number into a place.
     *
     * @param from its first byte
     * @param digitsEnd past its digits and its mark
     * @param mark what stands before its decimals
     * @return the index past it; {@link FastRow#NOT_PLAIN} if there is none, or none so large
     */
    static int read(byte[] bytes, int from, int digitsEnd, byte mark, double[] into, int place) {
      int to = (bytes[digitsEnd] | 0x20) == 'e' ? pastExponent(bytes, digitsEnd + 1) : digitsEnd;
      if (to < 0) {
        return NONE;
      }
      byte[] plain = Arrays.copyOfRange(bytes, from, to);
      for (int i = 0; i < plain.length; i++) {
        plain[i] = plain[i] == mark ? (byte) '.' : plain[i];
      }
      into[place] = JavaDoubleParser.parseDouble(plain, 0, plain.length);
      return Double.isFinite(into[place]) ? to : NONE;
    }

    /** The index past an exponent's digits. */
    private static int pastExponent(byte[] bytes, int from) {
      int at = bytes[from] == '-' || bytes[from] == '+' ? from + 1 : from;
      int digits = at;
      while (bytes[at] >= '0' && bytes[at] <= '9') {
        at++;
      }
      return at > digits ? at : NONE;
    }
  }
}
