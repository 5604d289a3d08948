package caryatid.recording.table;

import caryatid.recording.model.ExportLayout;
import caryatid.recording.model.ImportProblem;
import caryatid.remark.Argument;
import caryatid.remark.Place;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;

/** Reads all tables of a text, one below the other, each with its own head. */
final class TableReader {
  private final LineReader lines;
  private final HeadFinder finder;
  private final Function<HeaderBlock, ColumnMapping> planner;
  private final List<GrowingTable> tables = new ArrayList<>();
  private StageMessages messages;

  /**
   * @param planner what a table's columns are taken for
   * @param earlier what was found before the first line
   */
  TableReader(
      LineReader lines,
      ExportLayout layout,
      Function<HeaderBlock, ColumnMapping> planner,
      StageMessages earlier) {
    this.lines = lines;
    this.finder = new HeadFinder(layout, earlier.file());
    this.planner = planner;
    this.messages = earlier;
  }

  /** The tables in order; with as many problems as are shown, they are not read to their end. */
  Outcome<List<ParsedTable>> read() {
    try {
      readTables();
    } catch (IOException e) {
      return new Outcome<>(List.of(), messages.and(ExportText.failed(e, messages.file())));
    }
    if (lines.number() == 0) {
      messages = messages.withProblem(ImportProblem.EMPTY);
    } else if (tables.isEmpty() && messages.clean()) {
      messages = messages.withProblem(ImportProblem.NO_TABLE, Argument.count(lines.number()));
    }
    return new Outcome<>(tables.stream().map(GrowingTable::grown).toList(), messages);
  }

  private void readTables() throws IOException {
    while (!messages.full()) {
      List<String> ahead = lines.ahead(HeadFinder.LOOK_AHEAD);
      if (ahead.isEmpty()) {
        return;
      }
      Optional<Outcome<HeaderBlock>> found =
          finder.find(ahead, lines.number() + 1, lines.number() == 0);
      if (found.isEmpty()) {
        checkNamesAlone(ahead);
        skip(ahead.size());
      } else {
        messages = messages.and(found.get().messages());
        readTable(found.get().value(), ahead);
      }
    }
  }

  private void readTable(HeaderBlock head, List<String> ahead) throws IOException {
    boolean goesOn = goesOn(head);
    if (goesOn) {
      messages =
          messages.withProblem(
              Place.of(messages.file(), lines.number() + 1),
              ImportProblem.NOT_A_ROW,
              Excerpt.of(ahead.get(0)));
    }
    skip(head.firstDataLine() - lines.number() - 1);
    if (!goesOn) {
      tables.add(new GrowingTable(head, planner.apply(head)));
    }
    rows(tables.get(tables.size() - 1), ahead);
  }

  private void checkNamesAlone(List<String> ahead) {
    OptionalInt names = tables.isEmpty() ? finder.namesAlone(ahead) : OptionalInt.empty();
    if (names.isPresent()) {
      Place place = Place.of(messages.file(), lines.number() + 1 + names.getAsInt());
      messages = messages.withProblem(place, ImportProblem.HEADER_ONLY);
    }
  }

  /** Whether rows without names are the rest of the table above, broken by some line. */
  private boolean goesOn(HeaderBlock head) {
    return !tables.isEmpty()
        && head.headerLine().isEmpty()
        && head.columns().size() == tables.get(tables.size() - 1).head().columns().size();
  }

  private void rows(GrowingTable table, List<String> ahead) throws IOException {
    TruncatedCellCheck cut =
        new TruncatedCellCheck(ahead.subList(0, ahead.size() - 1), table.head().dialect());
    CarefulRow careful = new CarefulRow(table, cut, messages);
    rows(table, new FastRow(table, lines.end()), careful);
    messages = messages.and(careful.finish());
  }

  private void rows(GrowingTable table, FastRow fast, CarefulRow careful) throws IOException {
    plainRows(fast, table.lines());
    while (!messages.full() && lines.next()) {
      Outcome<CarefulRow.LineKind> row = careful.read(lines.text(), lines.number(), lines.ended());
      if (row.value() == CarefulRow.LineKind.OTHER) {
        lines.back();
        return;
      }
      messages = messages.and(row.messages());
      plainRows(fast, table.lines());
    }
  }

  /** The rows from here on that are plain and wholly in the buffer. */
  private void plainRows(FastRow fast, RowLines.Growing rows) {
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
