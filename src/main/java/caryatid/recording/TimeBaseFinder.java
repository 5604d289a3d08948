package caryatid.recording;

import caryatid.recording.Understood.Basis;
import caryatid.remark.Argument;
import caryatid.remark.Place;
import caryatid.remark.Unit;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.BiPredicate;

/** Finds a recording's times: from a column and its unit, or from a rate. */
final class TimeBaseFinder {
  /** Rates at which force plates are sampled, Hz (common practice, no source). */
  static final double SLOWEST_HZ = 10;

  static final double FASTEST_HZ = 10_000;

  /** A stated rate further than this from the one of the times contradicts them. */
  private static final double SAME_RATE = 0.01;

  private final Table table;
  private final TimeBase described;
  private final Preamble preamble;
  private final Notebook notes;

  TimeBaseFinder(Table table, TimeBase described, Preamble preamble, Notebook notes) {
    this.table = table;
    this.described = described;
    this.preamble = preamble;
    this.notes = notes;
  }

  /** The times; empty, with a problem noted, where they cannot be known. */
  Optional<Timeline> find(BiPredicate<Integer, Integer> sameRow) {
    OptionalInt column = table.plan().time();
    boolean timed = column.isPresent() && described.rateHz().isEmpty();
    Optional<Timeline> timeline = timed ? fromColumn(column.getAsInt(), sameRow) : fromRate();
    timeline.ifPresent(t -> noteRate(t, timed));
    return timeline;
  }

  private void noteRate(Timeline timeline, boolean timed) {
    Basis stated = described.rateHz().isPresent() ? Basis.DESCRIBED : Basis.STATED;
    Basis basis = timed ? Basis.CONCLUDED : stated;
    notes.understood(
        Aspect.DURATION,
        basis,
        Argument.of(timeline.rateHz(), Unit.HZ),
        Argument.of((timeline.size() - 1) / timeline.rateHz(), Unit.S));
  }

  private Optional<Timeline> fromRate() {
    OptionalDouble rate = statedRate();
    if (rate.isEmpty()) {
      String unclear = preamble.unclearRates();
      notes.problem(
          unclear.isEmpty() ? Reading.NO_RATE : Reading.RATE_UNCLEAR,
          Argument.count(table.rows()),
          Argument.text(unclear));
      return Optional.empty();
    }
    if (table.rows() < 2) {
      notes.problem(Reading.TOO_FEW_ROWS, Argument.count(table.rows()));
      return Optional.empty();
    }
    return Optional.of(Timeline.everyRow(rate.getAsDouble(), table.rows()));
  }

  private OptionalDouble statedRate() {
    if (described.rateHz().isPresent()) {
      return described.rateHz();
    }
    return preamble.rateHz().map(s -> OptionalDouble.of(s.value())).orElse(OptionalDouble.empty());
  }

  private Optional<Timeline> fromColumn(int column, BiPredicate<Integer, Integer> sameRow) {
    double[] times = table.column(column).take();
    Optional<TimeUnit> unit = unit(column, times);
    if (unit.isEmpty()) {
      return Optional.empty();
    }
    note(column, unit.get());
    Optional<Timeline> timeline =
        new Clock(table, column, unit.get().seconds(), notes).timeline(times, sameRow);
    timeline.ifPresent(t -> compare(t.rateHz(), column));
    return timeline;
  }

  private void note(int column, TimeUnit unit) {
    table.timesIn(unit);
    ColumnName name = table.head().columns().get(column);
    boolean stated = name.unit().flatMap(TimeUnit::named).filter(u -> u == unit).isPresent();
    Basis basis = stated ? Basis.STATED : Basis.CONCLUDED;
    notes.understood(
        table.clock() ? Aspect.TIMES_OF_DAY : Aspect.TIMES,
        described.unit().isPresent() ? Basis.DESCRIBED : basis,
        Argument.text(table.columnName(column)),
        Argument.term(unit));
  }

  private void compare(double rateHz, int column) {
    OptionalDouble stated = statedRate();
    if (stated.isPresent() && Math.abs(stated.getAsDouble() / rateHz - 1) > SAME_RATE) {
      notes.problem(
          new Place(notes.file(), OptionalInt.empty(), Optional.of(table.columnName(column))),
          Reading.RATES_DIFFER,
          Argument.of(rateHz, Unit.HZ),
          Argument.of(stated.getAsDouble(), Unit.HZ));
    }
  }

  /** The unit as stated, else the only one that makes a force plate's rate. */
  private Optional<TimeUnit> unit(int column, double[] times) {
    if (table.clock()) {
      return Optional.of(TimeUnit.S);
    }
    ColumnName name = table.head().columns().get(column);
    List<TimeUnit> possible = possible(times);
    Optional<TimeUnit> inHeader = name.unit().flatMap(TimeUnit::named);
    if (name.unit().isPresent() && inHeader.isEmpty() && described.unit().isEmpty()) {
      notes.problem(
          place(name), Reading.UNKNOWN_TIME_UNIT, Argument.text(name.unit().orElseThrow()));
      return Optional.empty();
    }
    Optional<TimeUnit> stated = described.unit().or(() -> inHeader);
    if (stated.isPresent()) {
      return possible.isEmpty() || possible.contains(stated.get())
          ? stated
          : wrong(name, stated.get(), possible.get(0), times);
    }
    if (possible.size() == 1 && (possible.get(0) == TimeUnit.S || !counts(times))) {
      notes.remark(
          RecordingRemark.TIME_UNIT,
          Argument.term(possible.get(0)),
          Argument.of(rate(times, possible.get(0)), Unit.HZ));
      return Optional.of(possible.get(0));
    }
    notes.problem(place(name), Reading.TIME_UNIT, Argument.text(name.name()));
    return Optional.empty();
  }

  private Optional<TimeUnit> wrong(
      ColumnName name, TimeUnit stated, TimeUnit possible, double[] times) {
    notes.problem(
        place(name),
        described.unit().isPresent() ? Reading.TIME_UNIT_DESCRIBED : Reading.TIME_UNIT_WRONG,
        Argument.term(stated),
        Argument.of(rate(times, stated), Unit.HZ),
        Argument.text(name.name()),
        Argument.term(possible),
        Argument.of(rate(times, possible), Unit.HZ));
    return Optional.empty();
  }

  private Place place(ColumnName name) {
    return new Place(notes.file(), table.head().headerLine(), Optional.of(name.full()));
  }

  /** Steps of one: such a column may as well count samples. */
  private static boolean counts(double[] times) {
    return times.length > 1 && times[1] - times[0] == 1;
  }

  private static List<TimeUnit> possible(double[] times) {
    return Arrays.stream(TimeUnit.values())
        .filter(u -> rate(times, u) >= SLOWEST_HZ && rate(times, u) <= FASTEST_HZ)
        .toList();
  }

  private static double rate(double[] times, TimeUnit unit) {
    int n = times.length;
    double span = n < 2 ? 0 : times[n - 1] - times[0];
    return span > 0 ? (n - 1) / (span * unit.seconds()) : 0;
  }
}
