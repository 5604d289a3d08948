package caryatid.recording;

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

  private static final Pattern NUMERAL =
      Pattern.compile("[+-]?(\\d+([.,]\\d*)?|[.,]\\d+)([eE][+-]?\\d+)?");
  private static final Pattern MISSING =
      Pattern.compile(
          "[+-]?(nan|inf|infinity|\u221e)|-?nan\\(ind\\)|-?1[.,]#(qnan|ind|inf)0*",
          Pattern.CASE_INSENSITIVE);

  static Cell of(String cell) {
    if (cell.isEmpty()) {
      return HOLE;
    }
    if (NUMERAL.matcher(cell).matches()) {
      return NUMBER;
    }
    if (MISSING.matcher(cell).matches()) {
      return HOLE;
    }
    return cell.indexOf(':') > 0 && ClockTime.is(cell) ? CLOCK : TEXT;
  }

  /** The number in a cell; empty if it is none with this decimal mark. */
  static OptionalDouble number(String cell, DecimalMark mark) {
    if (!NUMERAL.matcher(cell).matches() || cell.indexOf(mark.other().character()) >= 0) {
      return OptionalDouble.empty();
    }
    double number = Double.parseDouble(cell.replace(mark.character(), '.'));
    return Double.isFinite(number) ? OptionalDouble.of(number) : OptionalDouble.empty();
  }
}
