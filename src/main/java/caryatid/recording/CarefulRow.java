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
  private final Notebook notes;
  private final ClockTime times = new ClockTime();

  CarefulRow(Table table, Notebook notes) {
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
      keep(cells, number);
      return Outcome.ROW;
    }
    if (!ended && starts && cells.size() < table.head().named()) {
      notes.problem(
          place(number), Reading.CUT_SHORT, count(table.head().named()), count(cells.size()));
      return Outcome.ROW;
    }
    if (Rows.isRow(cells)) {
      notes.problem(
          place(number), Reading.RAGGED, count(table.head().named()), count(cells.size()));
      return Outcome.ROW;
    }
    return Outcome.OTHER;
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
        notes.problem(
            place, wrongMark(cell) ? Reading.OTHER_MARK : Reading.NO_NUMBER, Argument.text(cell));
      }
    }
  }

  private boolean wrongMark(String cell) {
    return Cell.of(cell) == Cell.NUMBER && cell.indexOf(dialect.mark().other().character()) >= 0;
  }

  private OptionalDouble number(String cell, int index) {
    boolean clock = table.plan().time().orElse(-1) == index && Cell.of(cell) == Cell.CLOCK;
    if (clock) {
      table.clockSeen();
      return times.seconds(cell);
    }
    return Cell.number(cell, dialect.mark());
  }
}
