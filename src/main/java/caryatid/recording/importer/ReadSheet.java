package caryatid.recording.importer;

import caryatid.recording.model.ImportProblem;
import caryatid.recording.table.HeaderBlock;
import caryatid.recording.table.Outcome;
import caryatid.recording.table.ParsedTable;
import caryatid.recording.table.StageMessages;
import caryatid.recording.workbook.CellName;
import caryatid.recording.workbook.Sheet;
import caryatid.recording.workbook.SheetOddities;
import caryatid.recording.workbook.SheetOddities.At;
import caryatid.recording.workbook.SheetOddities.Merged;
import caryatid.remark.Argument;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * A sheet of a workbook that was read.
 *
 * @param sheet its name and part
 * @param tables its tables, with what was found in them
 * @param oddities what its text does not show
 */
record ReadSheet(Sheet sheet, Outcome<List<ParsedTable>> tables, SheetOddities oddities) {
  private static final int FIRST = 1;

  /** Whether a table is of this sheet. */
  boolean holds(ParsedTable table) {
    return tables.value().contains(table);
  }

  /** What keeps the sheet from being used although its text can be read. */
  StageMessages odd(Optional<ParsedTable> table) {
    StageMessages odd = StageMessages.none(tables.messages().file());
    if (sheet.hidden()) {
      odd = problem(odd, ImportProblem.WORKBOOK_HIDDEN, List.of(new At(0, FIRST)));
    } else {
      odd = problem(odd, ImportProblem.WORKBOOK_HIDDEN, oddities.hidden());
    }
    odd = problem(odd, ImportProblem.WORKBOOK_FORMULA, oddities.formulas());
    return table.isPresent() ? within(table.get(), odd) : odd;
  }

  private StageMessages within(ParsedTable table, StageMessages earlier) {
    HeaderBlock head = table.head();
    int last = table.lines().line(table.rows() - 1);
    int top = head.headerLine().orElse(head.firstDataLine());
    Optional<At> merged = oddities.mergedIn(top, last).map(Merged::first);
    StageMessages messages =
        problem(earlier, ImportProblem.WORKBOOK_MERGED, merged.stream().toList());
    for (int column : table.mapping().wanted().stream().toArray()) {
      List<At> cells =
          oddities.textNumbers(column).stream()
              .filter(row -> row >= head.firstDataLine() && row <= last)
              .map(row -> new At(column, row))
              .toList();
      messages = problem(messages, ImportProblem.WORKBOOK_TEXT, cells);
    }
    return messages;
  }

  /** A problem at the first of some cells, if there are any. */
  private StageMessages problem(StageMessages earlier, ImportProblem problem, List<At> cells) {
    return cells.isEmpty()
        ? earlier
        : earlier.withProblem(
            place(earlier.file(), cells.get(0).column(), cells.get(0).row()),
            problem,
            Argument.count(cells.size()));
  }

  private Place place(String file, int column, int row) {
    return Place.ofCell(file, CellName.of(sheet.name(), column, row));
  }

  /** Problems with their cells for places. */
  List<Problem> located(List<Problem> problems, Optional<ParsedTable> table) {
    return problems.stream().map(problem -> located(problem, table)).toList();
  }

  private Problem located(Problem problem, Optional<ParsedTable> table) {
    Place place = problem.place();
    if (place.line().isEmpty()) {
      return problem;
    }
    int column =
        place.column().isPresent() && table.isPresent()
            ? column(table.get(), place.column().get())
            : 0;
    return new Problem(
        place(place.file(), column, place.line().getAsInt()), problem.topic(), problem.arguments());
  }

  /** The column of a name, from 0; where several have it, or none, the first of all. */
  private static int column(ParsedTable table, String name) {
    int[] named =
        IntStream.range(0, table.head().columns().size())
            .filter(i -> table.columnName(i).equals(name))
            .toArray();
    return named.length == 1 ? named[0] : 0;
  }
}
