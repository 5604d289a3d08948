package caryatid.recording;

import caryatid.recording.Understood.Basis;
import caryatid.remark.Argument;
import caryatid.remark.Place;
import caryatid.remark.Unit;
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
    Optional<Timeline> timeline =
        timed ? fromColumn(column.getAsInt(), sameRow) : fromRate(sameRow);
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

  private Optional<Timeline> fromRate(BiPredicate<Integer, Integer> sameRow) {
    described.rateHz().ifPresent(this::compareWithTimes);
    RowNumbers numbers = new RowNumbers(table, notes);
    Optional<int[]> rows = numbers.rows(sameRow);
    OptionalDouble rate = statedRate();
    if (rate.isEmpty()) {
      String unclear = preamble.unclearRates();
      notes.problem(
          unclear.isEmpty() ? Reading.NO_RATE : Reading.RATE_UNCLEAR,
          Argument.count(table.rows()),
          Argument.text(unclear));
      return Optional.empty();
    }
    if (described.rateHz().isEmpty()) {
      numbers.askWhetherRowsHave(rate.getAsDouble());
    }
    return rows.map(known -> new Timeline(rate.getAsDouble(), known));
  }

  private OptionalDouble statedRate() {
    if (described.rateHz().isPresent()) {
      return described.rateHz();
    }
    return preamble.rateHz().map(s -> OptionalDouble.of(s.value())).orElse(OptionalDouble.empty());
  }

  private Optional<Timeline> fromColumn(int column, BiPredicate<Integer, Integer> sameRow) {
    double[] times = table.column(column).take();
    Optional<TimeUnit> unit =
        new TimeUnitFinder(table, described.unit(), notes).find(column, times);
    if (unit.isEmpty()) {
      return Optional.empty();
    }
    note(column, unit.get());
    Optional<Timeline> timeline =
        new Clock(table, column, Clock.Kind.TIMES, unit.get().seconds(), notes)
            .timeline(times, sameRow);
    timeline.ifPresent(t -> compare(t.rateHz(), column));
    return timeline;
  }

  /** A described rate counts, but not in silence where the file's own times show another one. */
  private void compareWithTimes(double rateHz) {
    int column = table.plan().index().orElse(-1);
    Optional<TimeUnit> unit =
        column < 0
            ? Optional.empty()
            : table.head().columns().get(column).unit().flatMap(TimeUnit::named);
    if (unit.isEmpty() || table.rows() < 2 || !table.column(column).holes().isEmpty()) {
      return;
    }
    Column times = table.column(column);
    int steps = times.size() - 1;
    double shownHz = steps / ((times.at(steps) - times.at(0)) * unit.get().seconds());
    if (Double.isFinite(shownHz) && Math.abs(shownHz / rateHz - 1) > SAME_RATE) {
      notes.remark(
          RecordingRemark.RATE_OVER_TIMES,
          Argument.of(rateHz, Unit.HZ),
          Argument.text(table.columnName(column)),
          Argument.of(shownHz, Unit.HZ));
    }
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
}
