package caryatid.recording.table;

import java.util.OptionalDouble;
import java.util.regex.Pattern;

/** What a cell of an export is. */
enum Cell {
  NUMBER,
  /** Empty, or one of the ways programs write a number that could not be computed. */
  HOLE,
  /** Time of the day, with or without a date. */
  CLOCK,
  TEXT;

  private static final Pattern MISSING =
      Pattern.compile(
          "[+-]?(nan|inf|infinity|\u221e)|-?nan\\(ind\\)|-?1[.,]#(qnan|ind|inf)0*|n/a|null|-{1,3}",
          Pattern.CASE_INSENSITIVE);

  static Cell of(String cell) {
    if (cell.isEmpty()) {
      return HOLE;
    }
    if (isNumeral(cell) || Thousands.sure(cell)) {
      return NUMBER;
    }
    if (MISSING.matcher(cell).matches()) {
      return HOLE;
    }
    return cell.indexOf(':') > 0 && TimeOfDayParser.is(cell) ? CLOCK : TEXT;
  }

  /**
   * Whether a cell is a sign, digits with at most one mark among them, and an exponent; without a
   * pattern, since the first lines of a file are looked at before any of it is fast.
   */
  private static boolean isNumeral(String cell) {
    int start = digitsFrom(cell, pastSign(cell, 0));
    int whole = start - pastSign(cell, 0);
    boolean mark =
        start < cell.length() && (cell.charAt(start) == '.' || cell.charAt(start) == ',');
    int end = mark ? digitsFrom(cell, start + 1) : start;
    int decimals = mark ? end - start - 1 : 0;
    if (whole + decimals == 0 || end == cell.length()) {
      return whole + decimals > 0;
    }
    int exponent = pastSign(cell, end + 1);
    return (cell.charAt(end) | 0x20) == 'e'
        && exponent < cell.length()
        && digitsFrom(cell, exponent) == cell.length();
  }

  private static int pastSign(String cell, int from) {
    return from < cell.length() && "+-".indexOf(cell.charAt(from)) >= 0 ? from + 1 : from;
  }

  private static int digitsFrom(String cell, int from) {
    int at = from;
    while (at < cell.length() && cell.charAt(at) >= '0' && cell.charAt(at) <= '9') {
      at++;
    }
    return at;
  }

  /** Whether a cell says in words that its number is missing. */
  static boolean saysMissing(String cell) {
    return of(cell) == HOLE && cell.chars().anyMatch(Character::isLetter);
  }

  /** The number in a cell; empty if it is none in this dialect. */
  static OptionalDouble number(String cell, Dialect dialect) {
    DecimalMark mark = dialect.mark();
    boolean other = cell.indexOf(mark.other().character()) >= 0;
    if (other && parted(cell, dialect)) {
      return number(Thousands.joined(cell, mark), dialect);
    }
    if (!isNumeral(cell) || other) {
      return OptionalDouble.empty();
    }
    double number = Double.parseDouble(cell.replace(mark.character(), '.'));
    return Double.isFinite(number) ? OptionalDouble.of(number) : OptionalDouble.empty();
  }

  private static boolean parted(String cell, Dialect dialect) {
    return Thousands.sure(cell)
        ? Thousands.decimalMark(cell) == dialect.mark()
        : dialect.thousands() && Thousands.possible(cell);
  }
}
