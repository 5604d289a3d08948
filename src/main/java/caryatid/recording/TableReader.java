package caryatid.recording;

import caryatid.remark.Place;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;

/** Reads all tables of a text, one below the other, each with its own head. */
final class TableReader {
  private final Lines lines;
  private final HeadFinder finder;
  private final Function<Head, Plan> planner;
  private final Notebook notes;
  private final List<Table> tables = new ArrayList<>();

  /**
   * @param planner what a table's columns are taken for
   */
  TableReader(Lines lines, ExportForm form, Function<Head, Plan> planner, Notebook notes) {
    this.lines = lines;
    this.finder = new HeadFinder(form, notes);
    this.planner = planner;
    this.notes = notes;
  }

  /** The tables in order; those with a full notebook are not read to their end. */
  List<Table> read() throws IOException {
    while (!notes.full()) {
      List<String> ahead = lines.ahead(HeadFinder.LOOK_AHEAD);
      if (ahead.isEmpty()) {
        break;
      }
      Optional<Head> head = finder.find(ahead, lines.number() + 1, lines.number() == 0);
      if (head.isEmpty()) {
        checkNamesAlone(ahead);
        skip(ahead.size());
      } else if (goesOn(head.get())) {
        Place junk = Place.of(notes.file(), lines.number() + 1);
        notes.problem(junk, Reading.NOT_A_ROW, Excerpt.of(ahead.get(0)));
        skip(head.get().firstDataLine() - lines.number() - 1);
        rows(tables.get(tables.size() - 1), ahead);
      } else {
        skip(head.get().firstDataLine() - lines.number() - 1);
        Table table = new Table(head.get(), planner.apply(head.get()));
        tables.add(table);
        rows(table, ahead);
      }
    }
    return tables;
  }

  private void checkNamesAlone(List<String> ahead) {
    OptionalInt names = tables.isEmpty() ? finder.namesAlone(ahead) : OptionalInt.empty();
    names.ifPresent(
        i -> notes.problem(Place.of(notes.file(), lines.number() + 1 + i), Reading.HEADER_ONLY));
  }

  /**
   * Whether rows without names of their own are the rest of the table above, broken by some line.
   */
  private boolean goesOn(Head head) {
    return !tables.isEmpty()
        && head.headerLine().isEmpty()
        && head.columns().size() == tables.get(tables.size() - 1).head().columns().size();
  }

  private void rows(Table table, List<String> ahead) throws IOException {
    CutNumber cut = new CutNumber(ahead.subList(0, ahead.size() - 1), table.head().dialect());
    CarefulRow careful = new CarefulRow(table, cut, notes);
    rows(table, new FastRow(table, lines.end()), careful);
    careful.finish();
  }

  private void rows(Table table, FastRow fast, CarefulRow careful) throws IOException {
    plainRows(fast, table.lines());
    while (!notes.full() && lines.next()) {
      if (careful.read(lines.text(), lines.number(), lines.ended()) == CarefulRow.Outcome.OTHER) {
        lines.back();
        return;
      }
      plainRows(fast, table.lines());
    }
  }

  /** The rows from here on that are plain and wholly in the buffer. */
  private void plainRows(FastRow fast, RowLines rows) {
    while (lines.buffered()) {
      int past = fast.read(lines.buffer(), lines.unread(), lines.limit());
      if (past < 0) {
        return;
      }
      lines.pass(past);
      rows.add(lines.number());
    }
  }

  private void skip(int count) throws IOException {
    for (int i = 0; i < count; i++) {
      lines.next();
    }
  }
}
