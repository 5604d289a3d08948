package caryatid.recording.time;

import caryatid.recording.model.ImportProblem;
import caryatid.recording.model.RecordingRemark;
import caryatid.recording.model.TimeBase;
import caryatid.recording.model.TimeUnit;
import caryatid.recording.table.ColumnName;
import caryatid.recording.table.Outcome;
import caryatid.recording.table.ParsedTable;
import caryatid.recording.table.StageMessages;
import caryatid.remark.Argument;
import caryatid.remark.Place;
import caryatid.remark.Unit;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Finds the unit of a column of times: as stated, else the only one that makes a plate's rate. */
final class TimeUnitFinder {
  private final ParsedTable table;
  private final Optional<TimeUnit> described;
  private final StageMessages nothing;

  TimeUnitFinder(ParsedTable table, Optional<TimeUnit> described, String file) {
    this.table = table;
    this.described = described;
    this.nothing = StageMessages.none(file);
  }

  /** The unit; empty, with a problem, where it cannot be known. */
  Outcome<Optional<TimeUnit>> find(int column) {
    if (table.clock()) {
      return known(TimeUnit.S, nothing);
    }
    ColumnName name = table.head().columns().get(column);
    Optional<TimeUnit> inHeader = name.unit().flatMap(TimeUnit::named);
    if (name.unit().isPresent() && inHeader.isEmpty() && described.isEmpty()) {
      return unknown(
          name, ImportProblem.UNKNOWN_TIME_UNIT, Argument.text(name.unit().orElseThrow()));
    }
    double step = UsualStep.of(table.column(column));
    Optional<TimeUnit> stated = described.or(() -> inHeader);
    return stated.isPresent() ? checked(name, stated.get(), step) : concluded(name, step);
  }

  private static Outcome<Optional<TimeUnit>> known(TimeUnit unit, StageMessages messages) {
    return new Outcome<>(Optional.of(unit), messages);
  }

  private Outcome<Optional<TimeUnit>> unknown(
      ColumnName name, ImportProblem problem, Argument... arguments) {
    Place place = new Place(nothing.file(), table.head().headerLine(), Optional.of(name.full()));
    return new Outcome<>(Optional.empty(), nothing.withProblem(place, problem, arguments));
  }

  private Outcome<Optional<TimeUnit>> checked(ColumnName name, TimeUnit stated, double step) {
    List<TimeUnit> possible = possible(step);
    if (possible.isEmpty() || possible.contains(stated)) {
      return known(stated, nothing);
    }
    return unknown(
        name,
        described.isPresent() ? ImportProblem.TIME_UNIT_DESCRIBED : ImportProblem.TIME_UNIT_WRONG,
        Argument.term(stated),
        rate(step, stated),
        Argument.text(name.name()),
        Argument.term(possible.get(0)),
        rate(step, possible.get(0)));
  }

  private Outcome<Optional<TimeUnit>> concluded(ColumnName name, double step) {
    List<TimeUnit> possible = possible(step);
    // A column in steps of one may as well count samples.
    if (possible.size() == 1 && (possible.get(0) == TimeUnit.S || step != 1)) {
      TimeUnit unit = possible.get(0);
      return known(
          unit,
          nothing.withRemark(RecordingRemark.TIME_UNIT, Argument.term(unit), rate(step, unit)));
    }
    return unknown(name, ImportProblem.TIME_UNIT, Argument.text(name.name()));
  }

  private static List<TimeUnit> possible(double step) {
    return Arrays.stream(TimeUnit.values())
        .filter(unit -> hz(step, unit) >= TimeBase.SLOWEST_HZ * (1 - TimeLimits.STEP_ROUNDED))
        .filter(unit -> hz(step, unit) <= TimeBase.FASTEST_HZ * (1 + TimeLimits.STEP_ROUNDED))
        .toList();
  }

  private static Argument rate(double step, TimeUnit unit) {
    return Argument.of(hz(step, unit), Unit.HZ);
  }

  private static double hz(double step, TimeUnit unit) {
    return step > 0 ? 1 / (step * unit.seconds()) : 0;
  }
}
