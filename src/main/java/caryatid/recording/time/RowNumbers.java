package caryatid.recording.time;

import caryatid.recording.model.ImportFact;
import caryatid.recording.model.ImportProblem;
import caryatid.recording.model.UnderstoodFact.Basis;
import caryatid.recording.table.ColumnMeaning;
import caryatid.recording.table.NumberColumn;
import caryatid.recording.table.Outcome;
import caryatid.recording.table.ParsedTable;
import caryatid.recording.table.StageMessages;
import caryatid.remark.Argument;
import caryatid.remark.Unit;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.BiPredicate;

/**
 * The rows of a table whose rate is stated. Where a column counts the samples, its steps are
 * checked by the rules for times, so that a row that is lost, doubled or out of order is not read
 * as an even one.
 */
final class RowNumbers {
  private final ParsedTable table;
  private final StageMessages nothing;

  RowNumbers(ParsedTable table, String file) {
    this.table = table;
    this.nothing = StageMessages.none(file);
  }

  /**
   * What the numbers tell.
   *
   * @param rows the row of each sample; empty, with a problem, where the numbers contradict each
   *     other
   * @param step by how much the numbers usually rise from row to row; 0 where there are none
   * @param messages what was found on the way
   */
  record Counted(Optional<SampleRows> rows, double step, StageMessages messages) {}

  Counted counted(BiPredicate<Integer, Integer> sameRow) {
    if (table.rows() < 2) {
      return new Counted(
          Optional.empty(),
          0,
          nothing.withProblem(ImportProblem.TOO_FEW_ROWS, Argument.count(table.rows())));
    }
    OptionalInt column = column();
    return column.isPresent()
        ? counted(column.getAsInt(), sameRow)
        : new Counted(Optional.of(SampleRows.every(table.rows())), 0, nothing);
  }

  /** The column of numbers; one of times only where it can be seen to count samples. */
  private OptionalInt column() {
    return table.mapping().index().isPresent() ? table.mapping().index() : table.mapping().time();
  }

  private Counted counted(int column, BiPredicate<Integer, Integer> sameRow) {
    NumberColumn numbers = table.column(column);
    double usual = UsualStep.of(numbers);
    boolean named =
        ColumnMeaning.of(table.head().columns().get(column)).kind()
            == ColumnMeaning.ColumnKind.INDEX;
    boolean counts =
        wholeNumbers(numbers) && (named ? usual >= 1 && usual == Math.rint(usual) : usual == 1);
    StageMessages messages =
        counts || named
            ? nothing.withFact(
                counts ? ImportFact.NUMBERS : ImportFact.NO_NUMBERS,
                Basis.CONCLUDED,
                Argument.text(table.columnName(column)))
            : nothing;
    if (!counts) {
      return new Counted(Optional.of(SampleRows.every(numbers.size())), usual, messages);
    }
    Outcome<Optional<Timeline>> even =
        new SampleTimes(table, column, SampleTimes.RowKey.NUMBERS, 1, nothing.file())
            .timeline(sameRow);
    return new Counted(even.value().map(Timeline::rows), usual, messages.and(even.messages()));
  }

  private static boolean wholeNumbers(NumberColumn numbers) {
    for (int row = 0; row < numbers.size(); row++) {
      if (numbers.at(row) != Math.rint(numbers.at(row))) {
        return false;
      }
    }
    return true;
  }

  /**
   * Where the numbers rise by more than one a row, a rate stated in the file may be that of all
   * samples or of the rows.
   */
  StageMessages askWhetherRowsHave(double rateHz, double step) {
    return step > 1
        ? nothing.withProblem(
            ImportProblem.RATE_OF_ROWS,
            Argument.text(table.columnName(column().orElseThrow())),
            Argument.count(Math.round(step)),
            Argument.of(rateHz, Unit.HZ),
            Argument.of(rateHz / step, Unit.HZ))
        : nothing;
  }
}
