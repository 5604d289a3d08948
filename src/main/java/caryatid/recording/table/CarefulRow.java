package caryatid.recording.table;

import caryatid.recording.model.ImportProblem;
import caryatid.recording.model.RecordingRemark;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** Reads a row through the CSV library, and says what is wrong with one that cannot be read. */
final class CarefulRow {
  /** What a line turned out to be. */
  enum LineKind {
    /** A row, or the damaged rest of one, with its problems. */
    ROW,
    BLANK,
    /** Something else: the table ends above it. */
    OTHER
  }

  private final GrowingTable table;
  private final Dialect dialect;
  private final TruncatedCellCheck cut;
  private final String file;
  private final boolean markOpen;
  private final StageMessages nothing;
  private final TimeOfDayParser clockTime = new TimeOfDayParser();
  private final WrongTimes times = new WrongTimes();

  /**
   * @param table takes the rows' numbers
   * @param cut knows a number that the file's end cuts off
   * @param earlier what was found in the file above
   */
  CarefulRow(GrowingTable table, TruncatedCellCheck cut, StageMessages earlier) {
    this.cut = cut;
    this.table = table;
    this.dialect = table.head().dialect();
    this.file = earlier.file();
    this.markOpen = earlier.has(ImportProblem.THOUSANDS);
    this.nothing = StageMessages.none(file);
  }

  /** Reads a line into the table's columns. */
  Outcome<LineKind> read(String line, int number, boolean ended) {
    if (line.isBlank()) {
      return new Outcome<>(LineKind.BLANK, nothing);
    }
    List<String> cells = dialect.delimiter().split(line);
    boolean starts = startsLikeARow(cells);
    if (fits(cells) && (starts || RowRun.isRow(cells))) {
      return row(!ended && cut.seems(cells) ? keepCut(cells, number) : keep(cells, number));
    }
    if (!ended && starts && cells.size() < table.head().named()) {
      return row(misshapen(ImportProblem.CUT_SHORT, cells, number));
    }
    if (RowRun.isRow(cells)) {
      boolean apart = table.mapping().time().isPresent() || table.mapping().index().isPresent();
      return row(
          misshapen(apart ? ImportProblem.RAGGED : ImportProblem.RAGGED_UNTIMED, cells, number));
    }
    return new Outcome<>(LineKind.OTHER, nothing);
  }

  private static Outcome<LineKind> row(StageMessages messages) {
    return new Outcome<>(LineKind.ROW, messages);
  }

  private StageMessages misshapen(ImportProblem problem, List<String> cells, int line) {
    return nothing.withProblem(
        Place.of(file, line), problem, count(table.head().named()), count(cells.size()));
  }

  /** A number that seems cut off is left out with a remark; a time is not guessed. */
  private StageMessages keepCut(List<String> cells, int line) {
    int last = cells.size() - 1;
    StageMessages messages = nothing;
    if (tellsRowsApart(last)) {
      times.wrong(place(line, last), cells.get(last));
    } else if (table.columns().containsKey(last)) {
      messages =
          messages.withRemark(
              RecordingRemark.LAST_CUT, Argument.text(cells.get(last)), count(line));
    }
    return messages.and(keep(cells.subList(0, last), line));
  }

  private static Argument count(int count) {
    return Argument.count(count);
  }

  private Place place(int line, int column) {
    return Place.of(file, line, table.head().columnName(column));
  }

  private static boolean startsLikeARow(List<String> cells) {
    Cell first = Cell.of(cells.get(0));
    return first == Cell.NUMBER || first == Cell.CLOCK;
  }

  /** As many cells as columns, give or take empty ones at the end. */
  private boolean fits(List<String> cells) {
    int columns = table.head().columns().size();
    return cells.size() >= Math.max(table.head().named(), 2)
        && cells.stream().skip(columns).allMatch(String::isEmpty);
  }

  private StageMessages keep(List<String> cells, int line) {
    StageMessages messages = nothing;
    table.lines().add(line);
    for (Map.Entry<Integer, GrowingColumn> each : table.columns().entrySet()) {
      int index = each.getKey();
      String cell = index < cells.size() ? cells.get(index) : "";
      OptionalDouble number = number(cell, index);
      if (number.isPresent()) {
        each.getValue().add(number.getAsDouble());
        continue;
      }
      each.getValue().addHole();
      if (Cell.of(cell) != Cell.HOLE) {
        messages = messages.and(notANumber(cell, line, index));
      }
    }
    return messages;
  }

  private StageMessages notANumber(String cell, int line, int column) {
    Place place = place(line, column);
    if (tellsRowsApart(column)) {
      times.wrong(place, cell);
      return nothing;
    }
    DecimalMark mark = dialect.mark();
    boolean other = Cell.of(cell) == Cell.NUMBER && cell.indexOf(mark.other().character()) >= 0;
    if (other) {
      return markOpen
          ? nothing
          : nothing.withProblem(
              place, ImportProblem.OTHER_MARK, Excerpt.of(cell), Argument.term(mark));
    }
    return nothing.withProblem(place, ImportProblem.NO_NUMBER, Excerpt.of(cell));
  }

  private boolean tellsRowsApart(int column) {
    return isTime(column) || table.mapping().index().equals(OptionalInt.of(column));
  }

  private boolean isTime(int column) {
    return table.mapping().time().equals(OptionalInt.of(column));
  }

  private OptionalDouble number(String cell, int column) {
    if (isTime(column) && Cell.of(cell) == Cell.CLOCK) {
      table.clockSeen();
      return clockTime.seconds(cell);
    }
    return Cell.number(cell, dialect);
  }

  /** What is wrong with the times or numbers of the rows, once all are read. */
  StageMessages finish() {
    return markOpen ? nothing : times.complain(table, file);
  }

  /**
   * Cells of a column of times or samples' numbers that are neither: a few of them are reported one
   * by one, a column of nothing else once.
   */
  private static final class WrongTimes {
    private record Wrong(Place place, String cell) {}

    private final List<Wrong> first = new ArrayList<>();
    private int count;

    void wrong(Place place, String cell) {
      count++;
      if (first.size() < BadInput.CAP) {
        first.add(new Wrong(place, cell));
      }
    }

    /** What is wrong with them; a column that is only named like a sample counter is not needed. */
    StageMessages complain(GrowingTable table, String file) {
      boolean all = count > 0 && count == table.rows();
      boolean timed = table.mapping().time().isPresent();
      StageMessages messages = StageMessages.none(file);
      if (all && timed) {
        Wrong one = first.get(0);
        return messages.withProblem(
            one.place(), ImportProblem.TIMES_UNREADABLE, Excerpt.of(one.cell()));
      }
      if (!all) {
        ImportProblem problem = timed ? ImportProblem.WRONG_TIME : ImportProblem.WRONG_INDEX;
        for (Wrong wrong : first) {
          messages = messages.withProblem(wrong.place(), problem, Excerpt.of(wrong.cell()));
        }
      }
      return messages;
    }
  }
}
