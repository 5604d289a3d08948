package caryatid.recording.workbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;

/** What a sheet's text does not show. Rows count from 1, columns from 0. */
public final class SheetOddities {
  /** So many are remembered of a kind and column. */
  private static final int MOST = 10_000;

  /**
   * A cell.
   *
   * @param column from 0
   * @param row from 1
   */
  public record At(int column, int row) {}

  /**
   * Cells shown as one.
   *
   * @param first the top left one
   * @param last the bottom right one
   */
  public record Merged(At first, At last) {}

  private final List<Merged> merged = new ArrayList<>();
  private final List<At> formulas = new ArrayList<>();
  private final List<At> hidden = new ArrayList<>();
  private final TreeMap<Integer, List<Integer>> textNumbers = new TreeMap<>();

  /** Nothing found yet. */
  public SheetOddities() {}

  void formula(int column, int row) {
    add(formulas, new At(column, row));
  }

  void hidden(int column, int row) {
    add(hidden, new At(column, row));
  }

  void textNumber(int column, int row) {
    add(textNumbers.computeIfAbsent(column, c -> new ArrayList<>()), row);
  }

  void merged(String range) throws WorkbookFault {
    String[] ends = range.split(":", 2);
    At first = new At(CellName.column(ends[0]), CellName.row(ends[0]));
    At last = new At(CellName.column(ends[ends.length - 1]), CellName.row(ends[ends.length - 1]));
    if (first.column() < 0 || first.row() < 1 || last.column() < 0 || last.row() < 1) {
      throw WorkbookFault.damaged(range);
    }
    add(merged, new Merged(first, last));
  }

  /** With many of them, the last stands for those that follow. */
  private static <T> void add(List<T> all, T one) {
    if (all.size() < MOST) {
      all.add(one);
    } else {
      all.set(MOST - 1, one);
    }
  }

  /** Formulas of which the file keeps no value. */
  public List<At> formulas() {
    return List.copyOf(formulas);
  }

  /** Cells that hold something in hidden rows and columns. */
  public List<At> hidden() {
    return List.copyOf(hidden);
  }

  /** A merged range with a cell between two rows, if there is one. */
  public Optional<Merged> mergedIn(int firstRow, int lastRow) {
    return merged.stream()
        .filter(m -> m.first().row() <= lastRow && m.last().row() >= firstRow)
        .findFirst();
  }

  /** The rows in which a column holds digits as text. */
  public List<Integer> textNumbers(int column) {
    return List.copyOf(textNumbers.getOrDefault(column, List.of()));
  }
}
