package caryatid.recording;

import java.util.ArrayList;
import java.util.List;

/**
 * A run of lines that read as rows of a table when split by one delimiter.
 *
 * @param start index of its first line
 * @param end index past its last line
 * @param rows its rows' cells, blank lines left out
 */
record Rows(int start, int end, List<List<String>> rows) {

  /** All runs of rows among lines, in order. */
  static List<Rows> among(List<String> lines, Delimiter delimiter) {
    List<Rows> runs = new ArrayList<>();
    List<List<String>> rows = new ArrayList<>();
    int start = 0;
    for (int i = 0; i < lines.size(); i++) {
      List<String> cells = delimiter.split(lines.get(i));
      boolean blank = lines.get(i).isBlank();
      boolean row = isRow(cells);
      boolean goesOn = row && (rows.isEmpty() || rows.get(0).size() == cells.size());
      if (!goesOn && !blank && !rows.isEmpty()) {
        runs.add(new Rows(start, i, rows));
        rows = new ArrayList<>();
      }
      if (row) {
        start = rows.isEmpty() ? i : start;
        rows.add(cells);
      }
    }
    if (!rows.isEmpty()) {
      runs.add(new Rows(start, lines.size(), rows));
    }
    return runs;
  }

  /** Whether cells are a row: more numbers and times than text, in two cells or more. */
  static boolean isRow(List<String> cells) {
    if (cells.size() < 2) {
      return false;
    }
    int numbers = 0;
    int texts = 0;
    for (String cell : cells) {
      Cell kind = Cell.of(cell);
      numbers += kind == Cell.NUMBER || kind == Cell.CLOCK ? 1 : 0;
      texts += kind == Cell.TEXT ? 1 : 0;
    }
    return numbers > texts;
  }

  int cells() {
    return rows.get(0).size();
  }

  /** How many cells are neither numbers nor missing. */
  long texts() {
    return rows.stream().flatMap(List::stream).filter(c -> Cell.of(c) == Cell.TEXT).count();
  }

  /** The decimal mark that stands in the rows; point where none does. */
  DecimalMark mark() {
    boolean comma =
        rows.stream()
            .flatMap(List::stream)
            .anyMatch(c -> c.indexOf(',') >= 0 && Cell.of(c) == Cell.NUMBER);
    return comma ? DecimalMark.COMMA : DecimalMark.POINT;
  }

  /** A number with this decimal mark, if there is one; else any. */
  String sample(DecimalMark mark) {
    List<String> numbers =
        rows.stream().flatMap(List::stream).filter(c -> Cell.of(c) == Cell.NUMBER).toList();
    return numbers.stream()
        .filter(c -> c.indexOf(mark.character()) >= 0)
        .findFirst()
        .orElse(numbers.isEmpty() ? "" : numbers.get(0));
  }

  /**
   * Whether every comma could as well part thousands: three digits behind each, one to three
   * before.
   */
  boolean thousandsPossible() {
    List<String> commas =
        rows.stream().flatMap(List::stream).filter(c -> c.indexOf(',') >= 0).toList();
    return !commas.isEmpty()
        && commas.stream().allMatch(c -> c.matches("[+-]?[1-9]\\d{0,2},\\d{3}"));
  }
}
