package caryatid.recording.time;

import caryatid.recording.model.ImportFact;
import caryatid.recording.model.ImportProblem;
import caryatid.recording.model.RecordingRemark;
import caryatid.recording.model.TimeBase;
import caryatid.recording.model.TimeUnit;
import caryatid.recording.model.UnderstoodFact.Basis;
import caryatid.recording.table.ColumnName;
import caryatid.recording.table.NumberColumn;
import caryatid.recording.table.Outcome;
import caryatid.recording.table.ParsedTable;
import caryatid.recording.table.Preamble;
import caryatid.recording.table.StageMessages;
import caryatid.remark.Argument;
import caryatid.remark.Place;
import caryatid.remark.Unit;
import java.util.BitSet;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.BiPredicate;

/** Finds a recording's times: from a column and its unit, or from a rate. */
public final class TimeBaseFinder {
  private final ParsedTable table;
  private final TimeBase described;
  private final Preamble preamble;
  private final StageMessages nothing;

  public TimeBaseFinder(ParsedTable table, TimeBase described, Preamble preamble, String file) {
    this.table = table;
    this.described = described;
    this.preamble = preamble;
    this.nothing = StageMessages.none(file);
  }

  /**
   * The times; empty, with a problem, where they cannot be known.
   *
   * @param sameRow whether two rows hold the same numbers
   */
  public Timed find(BiPredicate<Integer, Integer> sameRow) {
    OptionalInt column = table.mapping().time();
    boolean timed = column.isPresent() && described.rateHz().isEmpty();
    Timed found = timed ? fromColumn(column.getAsInt(), sameRow) : fromRate(sameRow);
    return found
        .timeline()
        .map(t -> bridged(t, found.unit(), withRate(t, timed, found.messages())))
        .orElse(found);
  }

  private static Timed bridged(Timeline timeline, Optional<TimeUnit> unit, StageMessages messages) {
    BitSet gaps = timeline.shortGaps();
    if (gaps.isEmpty()) {
      return new Timed(Optional.of(timeline), unit, messages);
    }
    long runs = gaps.stream().filter(i -> !gaps.get(i - 1)).count();
    double longest = gaps.stream().map(i -> gaps.nextClearBit(i) - i).max().orElseThrow();
    return new Timed(
        Optional.of(timeline.bridging(gaps)),
        unit,
        messages.withRemark(
            RecordingRemark.BRIDGED,
            Argument.count(runs),
            Argument.count(gaps.cardinality()),
            Argument.count(Math.round(1000 * longest / timeline.rateHz()))));
  }

  private StageMessages withRate(Timeline timeline, boolean timed, StageMessages earlier) {
    Basis stated = described.rateHz().isPresent() ? Basis.DESCRIBED : Basis.STATED;
    StageMessages shorter = new PreambleFacts(preamble, nothing.file()).shorter(timeline);
    return earlier
        .and(shorter)
        .withFact(
            ImportFact.DURATION,
            timed ? Basis.CONCLUDED : stated,
            Argument.of(timeline.rateHz(), Unit.HZ),
            Argument.of((timeline.size() - 1) / timeline.rateHz(), Unit.S));
  }

  private Timed fromRate(BiPredicate<Integer, Integer> sameRow) {
    RowNumbers numbers = new RowNumbers(table, nothing.file());
    RowNumbers.Counted counted = numbers.counted(sameRow);
    StageMessages messages =
        new DescribedRate(table, described, preamble, nothing.file())
            .contradictions(counted.step())
            .and(counted.messages());
    OptionalDouble rate = statedRate();
    if (rate.isEmpty()) {
      String unclear = preamble.unclearRates();
      return withoutUnit(
          Optional.empty(),
          messages.withProblem(
              unclear.isEmpty() ? ImportProblem.NO_RATE : ImportProblem.RATE_UNCLEAR,
              Argument.count(table.rows()),
              Argument.text(unclear)));
    }
    if (described.rateHz().isEmpty()) {
      messages = messages.and(numbers.askWhetherRowsHave(rate.getAsDouble(), counted.step()));
    }
    return withoutUnit(
        counted.rows().map(rows -> new Timeline(rate.getAsDouble(), rows)), messages);
  }

  private static Timed withoutUnit(Optional<Timeline> timeline, StageMessages messages) {
    return new Timed(timeline, Optional.empty(), messages);
  }

  private OptionalDouble statedRate() {
    if (described.rateHz().isPresent()) {
      return described.rateHz();
    }
    return preamble.rateHz().map(s -> OptionalDouble.of(s.value())).orElse(OptionalDouble.empty());
  }

  private Timed fromColumn(int column, BiPredicate<Integer, Integer> sameRow) {
    Outcome<Optional<TimeUnit>> unit =
        new TimeUnitFinder(table, described.unit(), nothing.file()).find(column);
    if (unit.value().isEmpty()) {
      return withoutUnit(Optional.empty(), unit.messages());
    }
    double unitS = unit.value().get().seconds();
    Outcome<Optional<Timeline>> timeline =
        new SampleTimes(table, column, SampleTimes.RowKey.TIMES, unitS, nothing.file())
            .timeline(sameRow);
    StageMessages messages =
        withUnit(column, unit.value().get(), unit.messages())
            .and(timeline.messages())
            .and(timeline.value().map(t -> askOfWholeSeconds(column, unitS, t)).orElse(nothing));
    return new Timed(
        timeline.value(),
        unit.value(),
        timeline.value().map(t -> messages.and(compared(t, column, messages))).orElse(messages));
  }

  /** Times in whole seconds tell the rate of the rows only roughly, so it is asked for. */
  private StageMessages askOfWholeSeconds(int column, double unitS, Timeline timeline) {
    NumberColumn times = table.column(column);
    boolean whole = DescribedRate.noStepBelow(times, (1 - TimeLimits.SAME_RATE) / unitS);
    boolean shared = timeline.rateHz() > 1 + TimeLimits.SAME_RATE;
    return whole && shared
        ? nothing.withProblem(
            new Place(nothing.file(), OptionalInt.empty(), Optional.of(table.columnName(column))),
            ImportProblem.WHOLE_SECONDS,
            Argument.text(table.columnName(column)),
            Argument.of(timeline.rateHz(), Unit.HZ))
        : nothing;
  }

  private StageMessages withUnit(int column, TimeUnit unit, StageMessages earlier) {
    ColumnName name = table.head().columns().get(column);
    boolean stated = name.unit().flatMap(TimeUnit::named).filter(u -> u == unit).isPresent();
    Basis basis = stated ? Basis.STATED : Basis.CONCLUDED;
    return earlier.withFact(
        table.clock() ? ImportFact.TIMES_OF_DAY : ImportFact.TIMES,
        described.unit().isPresent() ? Basis.DESCRIBED : basis,
        Argument.text(table.columnName(column)),
        Argument.term(unit));
  }

  private StageMessages compared(Timeline timeline, int column, StageMessages found) {
    double rateHz = timeline.rateHz();
    OptionalDouble stated = statedRate();
    if (stated.isEmpty() || !preamble.contradicts(rateHz)) {
      return nothing;
    }
    boolean uneven = found.remarks().stream().anyMatch(r -> r.topic() == RecordingRemark.UNEVEN);
    if (uneven && Math.abs(rateHz / stated.getAsDouble() - 1) < TimeLimits.NOMINAL_RATE) {
      return nothing;
    }
    return nothing.withProblem(
        new Place(nothing.file(), OptionalInt.empty(), Optional.of(table.columnName(column))),
        ImportProblem.RATES_DIFFER,
        Argument.of(rateHz, Unit.HZ),
        Argument.of(stated.getAsDouble(), Unit.HZ));
  }
}
