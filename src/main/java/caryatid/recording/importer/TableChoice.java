package caryatid.recording.importer;

import caryatid.recording.model.ImportProblem;
import caryatid.recording.table.Outcome;
import caryatid.recording.table.ParsedTable;
import caryatid.recording.table.PlateColumns;
import caryatid.recording.table.StageMessages;
import caryatid.remark.Argument;
import caryatid.remark.Place;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Chooses the table that holds the plate, among the sections and recordings of a file. */
final class TableChoice {
  private final OptionalInt stated;
  private final StageMessages nothing;
  private final Function<ParsedTable, String> sheet;

  /**
   * @param stated number of the recording in the file, as a description states it
   * @param sheet what stands before a table's lines where a file has several sheets
   */
  TableChoice(OptionalInt stated, String file, Function<ParsedTable, String> sheet) {
    this.stated = stated;
    this.nothing = StageMessages.none(file);
    this.sheet = sheet;
  }

  /**
   * The table; empty, with a problem, where there is none. Of several of which none is chosen,
   * which is a problem, the first is shown.
   */
  Outcome<Optional<ParsedTable>> choose(List<ParsedTable> tables) {
    boolean some = tables.stream().anyMatch(TableChoice::tellsCop);
    List<ParsedTable> withPlate =
        tables.stream().filter(t -> some ? tellsCop(t) : !t.mapping().plates().isEmpty()).toList();
    if (withPlate.isEmpty()) {
      return new Outcome<>(Optional.empty(), refused(tables));
    }
    if (stated.isPresent()) {
      return stated(withPlate);
    }
    StageMessages several =
        withPlate.size() == 1
            ? nothing
            : nothing.withProblem(
                ImportProblem.WHICH_RECORDING,
                Argument.count(withPlate.size()),
                Argument.text(lines(withPlate)));
    return checked(withPlate.get(0), several);
  }

  private static boolean tellsCop(ParsedTable table) {
    return table.mapping().plates().stream().anyMatch(PlateColumns::tellsCop);
  }

  private Outcome<Optional<ParsedTable>> stated(List<ParsedTable> withPlate) {
    int number = stated.getAsInt();
    if (number < 1 || number > withPlate.size()) {
      return new Outcome<>(
          Optional.of(withPlate.get(0)),
          nothing.withProblem(
              ImportProblem.NO_SUCH_RECORDING,
              Argument.count(number),
              Argument.count(withPlate.size())));
    }
    return checked(withPlate.get(number - 1), nothing);
  }

  private static Outcome<Optional<ParsedTable>> checked(ParsedTable table, StageMessages earlier) {
    return new Outcome<>(Optional.of(table), earlier.withProblems(table.mapping().problems()));
  }

  private StageMessages refused(List<ParsedTable> tables) {
    if (tables.isEmpty()) {
      return nothing;
    }
    ParsedTable first = tables.get(0);
    if (!first.mapping().problems().isEmpty()) {
      return nothing.withProblems(first.mapping().problems());
    }
    String names = first.head().names();
    return nothing.withProblem(
        new Place(nothing.file(), first.head().headerLine(), Optional.empty()),
        names.isEmpty() ? ImportProblem.NO_NAMES : ImportProblem.NO_PLATE,
        names.isEmpty() ? Argument.count(first.head().columns().size()) : Argument.text(names));
  }

  /** First and last line of each table. */
  private String lines(List<ParsedTable> tables) {
    return tables.stream()
        .map(t -> sheet.apply(t) + t.head().firstDataLine() + "-" + t.lines().line(t.rows() - 1))
        .collect(Collectors.joining(", "));
  }
}
