package caryatid.recording;

import caryatid.remark.Argument;
import caryatid.remark.Place;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/** Reads a row through the CSV library, and says what is wrong with one that cannot be read. */
final class CarefulRow {
  /** What a line turned out to be. */
  enum Outcome {
    /** A row, or the damaged rest of one; problems are noted. */
    ROW,
    BLANK,
    /** Something else: the table ends above it. */
    OTHER
  }

  private final Table table;
  private final Dialect dialect;
  private final CutNumber cut;
  private final Notebook notes;
  private final ClockTime clockTime = new ClockTime();
  private final WrongTimes times = new WrongTimes();

  CarefulRow(Table table, CutNumber cut, Notebook notes) {
    this.cut = cut;
    this.table = table;
    this.dialect = table.head().dialect();
    this.notes = notes;
  }

  /** Reads a line into the table's columns. */
  Outcome read(String line, int number, boolean ended) {
    if (line.isBlank()) {
      return Outcome.BLANK;
    }
    List<String> cells = dialect.delimiter().split(line);
    boolean starts = startsLikeARow(cells);
    if (fits(cells) && (starts || Rows.isRow(cells))) {
      keep(!ended && cut.seems(cells) ? withoutLast(cells, number) : cells, number);
      return Outcome.ROW;
    }
    if (!ended && starts && cells.size() < table.head().named()) {
      notes.problem(
          place(number), Reading.CUT_SHORT, count(table.head().named()), count(cells.size()));
      return Outcome.ROW;
    }
    if (Rows.isRow(cells)) {
      boolean apart = table.plan().time().isPresent() || table.plan().index().isPresent();
      notes.problem(
          place(number),
          apart ? Reading.RAGGED : Reading.RAGGED_UNTIMED,
          count(table.head().named()),
          count(cells.size()));
      return Outcome.ROW;
    }
    return Outcome.OTHER;
  }

  /** A number that seems cut is left out, and said; a time is not guessed. */
  private List<String> withoutLast(List<String> cells, int number) {
    int last = cells.size() - 1;
    if (tellsRowsApart(last)) {
      times.wrong(Place.of(notes.file(), number, table.columnName(last)), cells.get(last));
    } else if (table.columns().containsKey(last)) {
      notes.remark(RecordingRemark.LAST_CUT, Argument.text(cells.get(last)), count(number));
    }
    return cells.subList(0, last);
  }

  private static Argument count(int count) {
    return Argument.count(count);
  }

  private Place place(int line) {
    return Place.of(notes.file(), line);
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

  private void keep(List<String> cells, int line) {
    table.lines().add(line);
    for (Map.Entry<Integer, Column> each : table.columns().entrySet()) {
      int index = each.getKey();
      String cell = index < cells.size() ? cells.get(index) : "";
      OptionalDouble number = number(cell, index);
      if (number.isPresent()) {
        each.getValue().add(number.getAsDouble());
        continue;
      }
      each.getValue().addHole();
      if (Cell.of(cell) != Cell.HOLE) {
        Place place = Place.of(notes.file(), line, table.columnName(index));
        if (tellsRowsApart(index)) {
          times.wrong(place, cell);
        } else {
          complain(place, cell);
        }
      }
    }
  }

  private void complain(Place place, String cell) {
    DecimalMark mark = dialect.mark();
    boolean other = Cell.of(cell) == Cell.NUMBER && cell.indexOf(mark.other().character()) >= 0;
    if (other && notes.has(Reading.THOUSANDS)) {
      return;
    }
    if (other) {
      notes.problem(place, Reading.OTHER_MARK, Excerpt.of(cell), Argument.term(mark));
    } else {
      notes.problem(place, Reading.NO_NUMBER, Excerpt.of(cell));
    }
  }

  private boolean tellsRowsApart(int index) {
    return table.plan().time().orElse(-1) == index || table.plan().index().orElse(-1) == index;
  }

  private OptionalDouble number(String cell, int index) {
    boolean clock = table.plan().time().orElse(-1) == index && Cell.of(cell) == Cell.CLOCK;
    if (clock) {
      table.clockSeen();
      return clockTime.seconds(cell);
    }
    return Cell.number(cell, dialect);
  }

  /** Says what is wrong with the times or numbers of the rows, once all are read. */
  void finish() {
    if (!notes.has(Reading.THOUSANDS)) {
      times.complain(table, notes);
    }
  }
}
