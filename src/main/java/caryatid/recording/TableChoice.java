package caryatid.recording;

import caryatid.remark.Argument;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;

/** Chooses the table that holds the plate, among the sections and recordings of a file. */
final class TableChoice {
  private final Notebook notes;
  private final OptionalInt stated;

  TableChoice(OptionalInt stated, Notebook notes) {
    this.stated = stated;
    this.notes = notes;
  }

  /**
   * The table; empty, with a problem noted, where there is none. Of several of which none is
   * chosen, which is a problem, the first is shown.
   */
  Optional<Table> choose(List<Table> tables) {
    List<Table> withPlate = tables.stream().filter(t -> !t.plan().plates().isEmpty()).toList();
    if (withPlate.isEmpty()) {
      refuse(tables);
      return Optional.empty();
    }
    if (stated.isPresent()) {
      return Optional.of(stated(withPlate));
    }
    if (withPlate.size() > 1) {
      notes.problem(
          Reading.WHICH_RECORDING,
          Argument.count(withPlate.size()),
          Argument.text(lines(withPlate)));
    }
    return Optional.of(checked(withPlate.get(0)));
  }

  private Table stated(List<Table> withPlate) {
    int number = stated.getAsInt();
    if (number < 1 || number > withPlate.size()) {
      notes.problem(
          Reading.NO_SUCH_RECORDING, Argument.count(number), Argument.count(withPlate.size()));
      return withPlate.get(0);
    }
    return checked(withPlate.get(number - 1));
  }

  private Table checked(Table table) {
    table.plan().problems().forEach(this::note);
    return table;
  }

  private void refuse(List<Table> tables) {
    if (tables.isEmpty()) {
      return;
    }
    Table first = tables.get(0);
    if (!first.plan().problems().isEmpty()) {
      first.plan().problems().forEach(this::note);
      return;
    }
    String names =
        first.head().columns().stream()
            .map(ColumnName::full)
            .filter(n -> !n.isEmpty())
            .limit(40)
            .collect(Collectors.joining(", "));
    Place place = new Place(notes.file(), first.head().headerLine(), Optional.empty());
    notes.problem(
        place,
        names.isEmpty() ? Reading.NO_NAMES : Reading.NO_PLATE,
        names.isEmpty() ? Argument.count(first.head().columns().size()) : Argument.text(names));
  }

  private void note(Problem problem) {
    notes.problem(problem.place(), problem.topic(), problem.arguments().toArray(new Argument[0]));
  }

  /** First and last line of each table. */
  private static String lines(List<Table> tables) {
    return tables.stream()
        .map(t -> t.head().firstDataLine() + "-" + t.lines().line(t.rows() - 1))
        .collect(Collectors.joining(", "));
  }
}
