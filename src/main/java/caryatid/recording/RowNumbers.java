package caryatid.recording;

import caryatid.recording.Understood.Basis;
import caryatid.remark.Argument;
import caryatid.remark.Place;
import caryatid.remark.Unit;
import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.BiPredicate;

/**
 * The rows of a table whose rate is stated. Where a column counts the samples, its steps are
 * checked by the rules for times, so that a row that is lost, doubled or out of order is not read
 * as an even one.
 */
final class RowNumbers {
  private final Table table;
  private final Notebook notes;
  private double usual;

  RowNumbers(Table table, Notebook notes) {
    this.table = table;
    this.notes = notes;
  }

  /**
   * The row of each sample; empty, with a problem noted, where the numbers contradict each other.
   */
  Optional<int[]> rows(BiPredicate<Integer, Integer> sameRow) {
    if (table.rows() < 2) {
      notes.problem(Reading.TOO_FEW_ROWS, Argument.count(table.rows()));
      return Optional.empty();
    }
    OptionalInt column = column();
    return column.isPresent()
        ? counted(column.getAsInt(), sameRow)
        : Optional.of(Timeline.everyRow(1, table.rows()).rows());
  }

  /** The column of numbers; one of times only where it can be seen to count samples. */
  private OptionalInt column() {
    return table.plan().index().isPresent() ? table.plan().index() : table.plan().time();
  }

  private Optional<int[]> counted(int column, BiPredicate<Integer, Integer> sameRow) {
    double[] numbers = table.column(column).take();
    usual = UsualStep.of(numbers);
    boolean named = Role.of(table.head().columns().get(column)).kind() == Role.Kind.INDEX;
    boolean whole = Arrays.stream(numbers).allMatch(n -> n == Math.rint(n));
    boolean counts = whole && (named ? usual >= 1 && usual == Math.rint(usual) : usual == 1);
    if (counts || named) {
      notes.understood(
          counts ? Aspect.NUMBERS : Aspect.NO_NUMBERS,
          Basis.CONCLUDED,
          Argument.text(table.columnName(column)));
    }
    return counts
        ? new Clock(table, column, Clock.Kind.NUMBERS, 1, notes)
            .timeline(numbers, sameRow)
            .map(Timeline::rows)
        : Optional.of(Timeline.everyRow(1, numbers.length).rows());
  }

  /**
   * Where the numbers rise by more than one a row, a rate stated in the file may be that of all
   * samples or of the rows.
   */
  void askWhetherRowsHave(double rateHz) {
    if (usual > 1) {
      notes.problem(
          Place.of(notes.file()),
          Reading.RATE_OF_ROWS,
          Argument.text(table.columnName(column().orElseThrow())),
          Argument.count(Math.round(usual)),
          Argument.of(rateHz, Unit.HZ),
          Argument.of(rateHz / usual, Unit.HZ));
    }
  }
}
