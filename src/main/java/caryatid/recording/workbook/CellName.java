package caryatid.recording.workbook;

import java.util.regex.Pattern;

/** Cells as spreadsheets name them: {@code C17}, {@code Sheet1!C17}. */
public final class CellName {
  /** Columns and rows of a sheet at the most (ISO/IEC 29500). */
  static final int MOST_COLUMNS = 16_384;

  static final int MOST_ROWS = 1_048_576;

  private static final int LETTERS = 26;

  private static final Pattern PLAIN = Pattern.compile("[\\p{L}_][\\p{L}\\p{N}_.]*");

  private CellName() {}

  /**
   * A cell of a sheet.
   *
   * @param column from 0
   * @param row from 1
   */
  public static String of(String sheet, int column, int row) {
    return sheet(sheet) + "!" + letters(column) + row;
  }

  /** A sheet's name before an exclamation mark. */
  public static String sheet(String sheet) {
    return PLAIN.matcher(sheet).matches() ? sheet : "'" + sheet.replace("'", "''") + "'";
  }

  /** A column as letters. */
  static String letters(int column) {
    StringBuilder letters = new StringBuilder();
    for (int rest = column + 1; rest > 0; rest = (rest - 1) / LETTERS) {
      letters.insert(0, (char) ('A' + (rest - 1) % LETTERS));
    }
    return letters.toString();
  }

  /** The column of a cell's name, from 0; -1, which is none, where it is no name of a cell. */
  static int column(String cell) {
    int column = 0;
    for (int i = 0; i < letterCount(cell) && column <= MOST_COLUMNS; i++) {
      column = column * LETTERS + (cell.charAt(i) & ~0x20) - 'A' + 1;
    }
    return column - 1;
  }

  /** The row of a cell's name, from 1; 0, which is none, where it is no name of a cell. */
  static int row(String cell) {
    long row = 0;
    for (int i = letterCount(cell); i < cell.length(); i++) {
      int digit = cell.charAt(i) - '0';
      row = digit < 0 || digit > 9 || row > MOST_ROWS ? MOST_ROWS + 1L : row * 10 + digit;
    }
    return row > MOST_ROWS ? 0 : (int) row;
  }

  private static int letterCount(String cell) {
    int count = 0;
    while (count < cell.length()
        && (cell.charAt(count) | 0x20) >= 'a'
        && (cell.charAt(count) | 0x20) <= 'z') {
      count++;
    }
    return count;
  }
}
