package caryatid.recording.table;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Recognises a number that was cut off by the end of the file: with no line end behind it, it has
 * fewer digits than every other in its column of which some were looked at.
 */
final class TruncatedCellCheck {
  /** Fewer rows show no way of writing numbers (common practice, no source). */
  private static final int ENOUGH = 2;

  private final List<String> rows;
  private final Delimiter delimiter;
  private final DecimalMark mark;

  /**
   * @param rows complete rows of the table
   */
  TruncatedCellCheck(List<String> rows, Dialect dialect) {
    this.mark = dialect.mark();
    this.rows = rows;
    this.delimiter = dialect.delimiter();
  }

  /** Whether the last cell of a row that no line end closes seems to be cut. */
  boolean seems(List<String> cells) {
    int last = cells.size() - 1;
    List<String> others =
        rows.stream()
            .map(delimiter::split)
            .filter(row -> RowRun.isRow(row) && row.size() > last)
            .map(row -> row.get(last))
            .toList();
    String cell = cells.get(last);
    if (others.size() < ENOUGH || Cell.of(cell) != Cell.NUMBER || exponent(cell)) {
      return false;
    }
    boolean decimals = others.stream().allMatch(o -> decimals(o).isPresent());
    boolean whole = others.stream().noneMatch(o -> decimals(o).isPresent());
    return decimals
        ? decimals(cell).orElse(0) < fewest(others.stream().map(o -> decimals(o).orElseThrow()))
        : whole && digits(cell) < fewest(others.stream().map(TruncatedCellCheck::digits));
  }

  private static int fewest(Stream<Integer> counts) {
    return counts.mapToInt(c -> c).min().orElse(0);
  }

  private static boolean exponent(String cell) {
    return cell.indexOf('e') >= 0 || cell.indexOf('E') >= 0;
  }

  /** How many decimals a cell has; empty without a decimal mark. */
  private Optional<Integer> decimals(String cell) {
    int at = cell.indexOf(mark.character());
    return at < 0 ? Optional.empty() : Optional.of(cell.length() - at - 1);
  }

  private static int digits(String cell) {
    return (int) cell.chars().filter(Character::isDigit).count();
  }
}
