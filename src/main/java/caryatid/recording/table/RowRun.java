package caryatid.recording.table;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * A run of lines that are rows of a table when split by one delimiter.
 *
 * @param start index of its first line
 * @param end index past its last line
 * @param rows its rows' cells, blank lines left out
 */
record RowRun(int start, int end, List<List<String>> rows) {

  /** All runs of rows among lines, in order. */
  static List<RowRun> among(List<String> lines, Delimiter delimiter) {
    List<RowRun> runs = new ArrayList<>();
    List<List<String>> rows = new ArrayList<>();
    int start = 0;
    for (int i = 0; i < lines.size(); i++) {
      List<String> cells = delimiter.split(lines.get(i));
      boolean blank = lines.get(i).isBlank();
      boolean row = isRow(cells);
      boolean goesOn = row && (rows.isEmpty() || rows.get(0).size() == cells.size());
      if (!goesOn && !blank && !rows.isEmpty()) {
        runs.add(new RowRun(start, i, rows));
        rows = new ArrayList<>();
      }
      if (row) {
        start = rows.isEmpty() ? i : start;
        rows.add(cells);
      }
    }
    if (!rows.isEmpty()) {
      runs.add(new RowRun(start, lines.size(), rows));
    }
    return runs;
  }

  /**
   * Whether cells are a row: two cells or more, with more numbers and times than text, or nothing
   * but words for missing numbers.
   */
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
    return numbers > texts || (texts == 0 && cells.stream().anyMatch(Cell::saysMissing));
  }

  int cells() {
    return rows.get(0).size();
  }

  /** Whether a column has no cell that holds anything. */
  boolean empty(int column) {
    return rows.stream().allMatch(row -> row.size() <= column || row.get(column).isEmpty());
  }

  /** How many cells are neither numbers nor missing. */
  long texts() {
    return rows.stream().flatMap(List::stream).filter(c -> Cell.of(c) == Cell.TEXT).count();
  }

  /**
   * The decimal mark: as thousands separators show it, else the one found; a point if there is
   * none.
   */
  DecimalMark mark() {
    return cellsWhere(Thousands::sure)
        .map(Thousands::decimalMark)
        .findFirst()
        .orElseGet(
            () ->
                cellsWhere(c -> c.indexOf(',') >= 0 && Cell.of(c) == Cell.NUMBER)
                    .map(c -> DecimalMark.COMMA)
                    .findFirst()
                    .orElse(DecimalMark.POINT));
  }

  private Stream<String> cellsWhere(Predicate<String> condition) {
    return rows.stream().flatMap(List::stream).filter(condition);
  }

  /**
   * Whether cells show that the other mark than the decimal one parts thousands.
   *
   * @param stated whether the decimal mark is stated, and not concluded from the cells
   */
  boolean thousands(DecimalMark mark, boolean stated) {
    return cellsWhere(c -> Thousands.sure(c) && Thousands.decimalMark(c) == mark)
            .findAny()
            .isPresent()
        || (stated
            && cellsWhere(c -> c.indexOf(mark.other().character()) >= 0)
                .allMatch(Thousands::possible));
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

  /** Whether every comma could as well part thousands. */
  boolean thousandsPossible() {
    List<String> commas = cellsWhere(c -> c.indexOf(',') >= 0).toList();
    return !commas.isEmpty() && commas.stream().allMatch(Thousands::possible);
  }
}
