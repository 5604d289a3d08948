package caryatid.recording.time;

import caryatid.recording.model.ImportProblem;
import caryatid.recording.model.TimeBase;
import caryatid.recording.model.TimeUnit;
import caryatid.recording.table.ColumnMeaning;
import caryatid.recording.table.ColumnName;
import caryatid.recording.table.NumberColumn;
import caryatid.recording.table.ParsedTable;
import caryatid.recording.table.Preamble;
import caryatid.recording.table.StageMessages;
import caryatid.remark.Argument;
import caryatid.remark.Place;
import caryatid.remark.Unit;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** Refuses a described rate that contradicts what the file says or shows. */
final class DescribedRate {
  private final ParsedTable table;
  private final TimeBase described;
  private final Preamble preamble;
  private final StageMessages nothing;

  DescribedRate(ParsedTable table, TimeBase described, Preamble preamble, String file) {
    this.table = table;
    this.described = described;
    this.preamble = preamble;
    this.nothing = StageMessages.none(file);
  }

  /**
   * The contradictions.
   *
   * @param step how far the rows' numbers go from one to the next
   */
  StageMessages contradictions(double step) {
    return comparedWithTimes().and(comparedWithLines(step));
  }

  /**
   * A described rate that is not the one stated above the table is refused, unless rows were left
   * out.
   */
  private StageMessages comparedWithLines(double step) {
    double times = Math.max(1, step);
    return described.rateHz().isPresent()
            && preamble.contradicts(described.rateHz().getAsDouble())
            && preamble.contradicts(described.rateHz().getAsDouble() * times)
        ? preamble.rateHz().stream()
            .map(stated -> contradicted(stated.value(), Place.of(nothing.file(), stated.line())))
            .findFirst()
            .orElse(nothing)
        : nothing;
  }

  private StageMessages contradicted(double shownHz, Place place) {
    return nothing.withProblem(
        place,
        ImportProblem.RATE_DESCRIBED,
        Argument.of(described.rateHz().orElseThrow(), Unit.HZ),
        Argument.of(shownHz, Unit.HZ));
  }

  /** A described rate that is not the one of the file's own times is refused. */
  private StageMessages comparedWithTimes() {
    OptionalInt column =
        described.rateHz().isPresent() ? table.mapping().index() : OptionalInt.empty();
    return column.isPresent() ? compared(column.getAsInt()) : nothing;
  }

  private StageMessages compared(int column) {
    ColumnName name = table.head().columns().get(column);
    NumberColumn times = table.column(column);
    double step = UsualStep.of(times);
    boolean counts = step == 1 || ColumnMeaning.of(name).kind() != ColumnMeaning.ColumnKind.TIME;
    boolean readable = times.size() >= 2 && !times.hasHoles();
    List<TimeUnit> units =
        name.unit()
            .map(unit -> TimeUnit.named(unit).stream().toList())
            .orElse(table.clock() ? List.of(TimeUnit.S) : List.of(TimeUnit.values()));
    if (!readable || counts || units.isEmpty() || units.stream().anyMatch(u -> fits(times, u))) {
      return nothing;
    }
    double shownHz = rateHz(times, units.get(0));
    return Double.isFinite(shownHz) && shownHz > 0
        ? contradicted(
            shownHz,
            new Place(nothing.file(), OptionalInt.empty(), Optional.of(table.columnName(column))))
        : nothing;
  }

  private static double rateHz(NumberColumn times, TimeUnit unit) {
    int steps = times.size() - 1;
    return steps / ((times.at(steps) - times.at(0)) * unit.seconds());
  }

  /**
   * Whether times agree with the described rate, as far as their own coarseness lets it be seen.
   */
  private boolean fits(NumberColumn times, TimeUnit unit) {
    int steps = times.size() - 1;
    double shownS = (times.at(steps) - times.at(0)) * unit.seconds();
    double describedS = steps / described.rateHz().orElseThrow();
    double smallestS = smallestStep(times) * unit.seconds();
    double coarseS = smallestS > TimeLimits.COARSE_STEPS * shownS / steps ? smallestS : 0;
    return Math.abs(shownS - describedS) <= TimeLimits.SAME_RATE * describedS + coarseS;
  }

  /** Whether there are steps forward, and none is shorter than a limit. */
  static boolean noStepBelow(NumberColumn times, double shortest) {
    boolean some = false;
    for (int i = 1; i < times.size(); i++) {
      double step = times.at(i) - times.at(i - 1);
      if (step > 0 && step < shortest) {
        return false;
      }
      some |= step > 0;
    }
    return some;
  }

  /** The smallest step forward; 0 where there is none. */
  private static double smallestStep(NumberColumn times) {
    double smallest = Double.POSITIVE_INFINITY;
    for (int i = 1; i < times.size(); i++) {
      double step = times.at(i) - times.at(i - 1);
      smallest = step > 0 ? Math.min(smallest, step) : smallest;
    }
    return Double.isInfinite(smallest) ? 0 : smallest;
  }
}
