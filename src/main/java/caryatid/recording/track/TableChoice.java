package caryatid.recording.track;

import caryatid.recording.model.ImportProblem;
import caryatid.recording.table.Findings;
import caryatid.recording.table.Outcome;
import caryatid.recording.table.Table;
import caryatid.remark.Argument;
import caryatid.remark.Place;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;

/** Chooses the table that holds the plate, among the sections and recordings of a file. */
public final class TableChoice {
  private final OptionalInt stated;
  private final Findings nothing;

  /**
   * @param stated number of the recording in the file, as a description states it
   */
  public TableChoice(OptionalInt stated, String file) {
    this.stated = stated;
    this.nothing = Findings.none(file);
  }

  /**
   * The table; empty, with a problem, where there is none. Of several of which none is chosen,
   * which is a problem, the first is shown.
   */
  public Outcome<Optional<Table>> choose(List<Table> tables) {
    List<Table> withPlate = tables.stream().filter(t -> !t.plan().plates().isEmpty()).toList();
    if (withPlate.isEmpty()) {
      return new Outcome<>(Optional.empty(), refused(tables));
    }
    if (stated.isPresent()) {
      return stated(withPlate);
    }
    Findings several =
        withPlate.size() == 1
            ? nothing
            : nothing.withProblem(
                ImportProblem.WHICH_RECORDING,
                Argument.count(withPlate.size()),
                Argument.text(lines(withPlate)));
    return checked(withPlate.get(0), several);
  }

  private Outcome<Optional<Table>> stated(List<Table> withPlate) {
    int number = stated.getAsInt();
    if (number < 1 || number > withPlate.size()) {
      return new Outcome<>(
          Optional.of(withPlate.get(0)),
          nothing.withProblem(
              ImportProblem.NO_SUCH_RECORDING, Argument.count(number), Argument.count(withPlate.size())));
    }
    return checked(withPlate.get(number - 1), nothing);
  }

  private static Outcome<Optional<Table>> checked(Table table, Findings earlier) {
    return new Outcome<>(Optional.of(table), earlier.withProblems(table.plan().problems()));
  }

  private Findings refused(List<Table> tables) {
    if (tables.isEmpty()) {
      return nothing;
    }
    Table first = tables.get(0);
    if (!first.plan().problems().isEmpty()) {
      return nothing.withProblems(first.plan().problems());
    }
    String names = first.head().names();
    return nothing.withProblem(
        new Place(nothing.file(), first.head().headerLine(), Optional.empty()),
        names.isEmpty() ? ImportProblem.NO_NAMES : ImportProblem.NO_PLATE,
        names.isEmpty() ? Argument.count(first.head().columns().size()) : Argument.text(names));
  }

  /** First and last line of each table. */
  private static String lines(List<Table> tables) {
    return tables.stream()
        .map(t -> t.head().firstDataLine() + "-" + t.lines().line(t.rows() - 1))
        .collect(Collectors.joining(", "));
  }
}
