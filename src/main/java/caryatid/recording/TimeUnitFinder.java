package caryatid.recording;

import caryatid.remark.Argument;
import caryatid.remark.Place;
import caryatid.remark.Unit;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Finds the unit of a column of times: as stated, else the only one that makes a plate's rate. */
final class TimeUnitFinder {
  /** A step of rounded times may be off by so much. */
  private static final double ROUNDED = 0.01;

  private final Table table;
  private final Optional<TimeUnit> described;
  private final Notebook notes;

  TimeUnitFinder(Table table, Optional<TimeUnit> described, Notebook notes) {
    this.table = table;
    this.described = described;
    this.notes = notes;
  }

  /** The unit; empty, with a problem noted, where it cannot be known. */
  Optional<TimeUnit> find(int column, double[] times) {
    if (table.clock()) {
      return Optional.of(TimeUnit.S);
    }
    ColumnName name = table.head().columns().get(column);
    Optional<TimeUnit> inHeader = name.unit().flatMap(TimeUnit::named);
    if (name.unit().isPresent() && inHeader.isEmpty() && described.isEmpty()) {
      notes.problem(
          place(name), Reading.UNKNOWN_TIME_UNIT, Argument.text(name.unit().orElseThrow()));
      return Optional.empty();
    }
    double step = UsualStep.of(times);
    Optional<TimeUnit> stated = described.or(() -> inHeader);
    return stated.isPresent() ? checked(name, stated.get(), step) : concluded(name, step);
  }

  private Optional<TimeUnit> checked(ColumnName name, TimeUnit stated, double step) {
    List<TimeUnit> possible = possible(step);
    if (possible.isEmpty() || possible.contains(stated)) {
      return Optional.of(stated);
    }
    notes.problem(
        place(name),
        described.isPresent() ? Reading.TIME_UNIT_DESCRIBED : Reading.TIME_UNIT_WRONG,
        Argument.term(stated),
        rate(step, stated),
        Argument.text(name.name()),
        Argument.term(possible.get(0)),
        rate(step, possible.get(0)));
    return Optional.empty();
  }

  private Optional<TimeUnit> concluded(ColumnName name, double step) {
    List<TimeUnit> possible = possible(step);
    // A column in steps of one may as well count samples.
    if (possible.size() == 1 && (possible.get(0) == TimeUnit.S || step != 1)) {
      notes.remark(
          RecordingRemark.TIME_UNIT, Argument.term(possible.get(0)), rate(step, possible.get(0)));
      return Optional.of(possible.get(0));
    }
    notes.problem(place(name), Reading.TIME_UNIT, Argument.text(name.name()));
    return Optional.empty();
  }

  private Place place(ColumnName name) {
    return new Place(notes.file(), table.head().headerLine(), Optional.of(name.full()));
  }

  private static List<TimeUnit> possible(double step) {
    return Arrays.stream(TimeUnit.values())
        .filter(unit -> hz(step, unit) >= TimeBaseFinder.SLOWEST_HZ * (1 - ROUNDED))
        .filter(unit -> hz(step, unit) <= TimeBaseFinder.FASTEST_HZ * (1 + ROUNDED))
        .toList();
  }

  private static Argument rate(double step, TimeUnit unit) {
    return Argument.of(hz(step, unit), Unit.HZ);
  }

  private static double hz(double step, TimeUnit unit) {
    return step > 0 ? 1 / (step * unit.seconds()) : 0;
  }
}
