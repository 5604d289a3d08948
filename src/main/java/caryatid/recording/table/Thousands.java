package caryatid.recording.table;

import java.util.regex.Pattern;

/** Numbers with a thousands separator, which is the mark that is not the decimal mark. */
final class Thousands {
  /** Both marks, or one of them more than once: nothing but thousands can be meant. */
  private static final Pattern SURE =
      Pattern.compile(
          "[+-]?\\d{1,3}(?:(?:,\\d{3})+\\.\\d*|(?:\\.\\d{3})+,\\d*|(?:,\\d{3}){2,}|(?:\\.\\d{3}){2,})");

  /** One mark alone, which may part decimals as well. */
  private static final Pattern POSSIBLE = Pattern.compile("[+-]?[1-9]\\d{0,2}[.,]\\d{3}");

  private Thousands() {}

  /** Whether a cell is a number with thousands separators and nothing else. */
  static boolean sure(String cell) {
    return hasTwoMarks(cell) && SURE.matcher(cell).matches();
  }

  /** Called for every cell examined; the pattern is only for the few that may fit it. */
  private static boolean hasTwoMarks(String cell) {
    int point = cell.indexOf('.');
    int comma = cell.indexOf(',');
    return point >= 0 && comma >= 0
        || point != cell.lastIndexOf('.')
        || comma != cell.lastIndexOf(',');
  }

  /** The decimal mark of a cell that is {@link #sure}, whether or not it has decimals. */
  static DecimalMark decimalMark(String cell) {
    boolean both = cell.indexOf('.') >= 0 && cell.indexOf(',') >= 0;
    boolean commaLast = cell.lastIndexOf(',') > cell.lastIndexOf('.');
    return both == commaLast ? DecimalMark.COMMA : DecimalMark.POINT;
  }

  /** Whether the only mark of a cell, with three digits behind it, may part thousands. */
  static boolean possible(String cell) {
    return POSSIBLE.matcher(cell).matches();
  }

  /** A number without what parts its thousands. */
  static String joined(String cell, DecimalMark mark) {
    return cell.replace(String.valueOf(mark.other().character()), "");
  }
}
