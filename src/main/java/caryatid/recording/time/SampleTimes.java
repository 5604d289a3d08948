package caryatid.recording.time;

import caryatid.recording.model.ImportProblem;
import caryatid.recording.model.RecordingRemark;
import caryatid.recording.table.NumberColumn;
import caryatid.recording.table.Outcome;
import caryatid.recording.table.ParsedTable;
import caryatid.recording.table.StageMessages;
import caryatid.remark.Argument;
import caryatid.remark.Place;
import caryatid.remark.Unit;
import java.util.BitSet;
import java.util.Optional;
import java.util.function.BiPredicate;
import java.util.stream.IntStream;

/**
 * Turns the times or numbers of a table's rows into evenly spaced times. Stated rule: times that
 * only look uneven because they are rounded are even; a row printed twice counts once; of several
 * rows at one time the first counts, unless a computer's clock stamped them; where rows are
 * missing, samples without a value are put in; a time that runs back is refused.
 */
final class SampleTimes {
  /** What identifies the rows. */
  enum RowKey {
    TIMES(ImportProblem.NO_TIME, ImportProblem.TIME_BACK, Unit.S),
    NUMBERS(ImportProblem.NO_INDEX, ImportProblem.INDEX_BACK, Unit.COUNT);

    private final ImportProblem missing;
    private final ImportProblem back;
    private final Unit unit;

    RowKey(ImportProblem missing, ImportProblem back, Unit unit) {
      this.missing = missing;
      this.back = back;
      this.unit = unit;
    }
  }

  private final ParsedTable table;
  private final int column;
  private final NumberColumn times;
  private final RowKey kind;
  private final double unitS;
  private final StageMessages nothing;

  /**
   * @param column of the times or numbers
   * @param unitS seconds in one of their unit
   */
  SampleTimes(ParsedTable table, int column, RowKey kind, double unitS, String file) {
    this.kind = kind;
    this.table = table;
    this.column = column;
    this.times = table.column(column);
    this.unitS = unitS;
    this.nothing = StageMessages.none(file);
  }

  /**
   * The even times; empty, with a problem, where there are none.
   *
   * @param sameRow whether two rows hold the same numbers
   */
  Outcome<Optional<Timeline>> timeline(BiPredicate<Integer, Integer> sameRow) {
    StageMessages back = runsBack();
    if (!back.clean()) {
      return none(back);
    }
    Outcome<int[]> once = rows(sameRow);
    int[] rows = once.value();
    if (rows.length < 2) {
      return none(
          once.messages().withProblem(ImportProblem.TOO_FEW_ROWS, Argument.count(rows.length)));
    }
    double spanS = (times.at(rows[rows.length - 1]) - times.at(rows[0])) * unitS;
    if (!Double.isFinite(rows.length / spanS)) {
      return none(once.messages().withProblem(ImportProblem.NO_TIME_PASSES));
    }
    Gaps gaps = new Gaps(times, rows);
    if (gaps.missing() > TimeLimits.MOST_MISSING * rows.length) {
      return none(
          once.messages()
              .withProblem(
                  place(gaps.afterLongest()),
                  ImportProblem.GAPS,
                  Argument.count(gaps.missing()),
                  Argument.count(rows.length)));
    }
    Timeline timeline = timeline(rows, gaps);
    return new Outcome<>(
        Optional.of(timeline), once.messages().and(remarks(gaps)).and(uneven(gaps, timeline)));
  }

  private StageMessages uneven(Gaps gaps, Timeline timeline) {
    if (!gaps.uneven()) {
      return nothing;
    }
    double[] steps = gaps.extremes();
    return nothing.withRemark(
        RecordingRemark.UNEVEN,
        Argument.count(Math.round(1000 * steps[0] * unitS)),
        Argument.count(Math.round(1000 * steps[1] * unitS)),
        Argument.of(timeline.rateHz(), Unit.HZ));
  }

  private static Outcome<Optional<Timeline>> none(StageMessages messages) {
    return new Outcome<>(Optional.empty(), messages);
  }

  private Timeline timeline(int[] rows, Gaps gaps) {
    boolean everyRow = rows.length == times.size();
    if (gaps.count() > 0) {
      SampleRows filled = gaps.filled();
      return new Timeline(rateHz(rows, filled.size() - 1), filled);
    }
    return everyRow
        ? new Timeline(rateOfEveryRow(rows), SampleRows.every(rows.length))
        : new Timeline(rateHz(rows, rows.length - 1), SampleRows.of(rows, new BitSet()));
  }

  /**
   * All steps over the whole time. Of coarse times the first and the last stand for samples that
   * lie anywhere within them; there it is the steps between the first and the last change.
   */
  private double rateOfEveryRow(int[] rows) {
    int from = changeAfter(0);
    int to = changeBefore(rows.length - 1);
    return from < to
        ? (to - from) / ((times.at(to) - times.at(from)) * unitS)
        : rateHz(rows, rows.length - 1);
  }

  private double rateHz(int[] rows, int steps) {
    return steps / ((times.at(rows[rows.length - 1]) - times.at(rows[0])) * unitS);
  }

  /** The first row of the next time; the row itself where it shares its time with no other. */
  private int changeAfter(int row) {
    int change = row + 1;
    while (change < times.size() && times.at(change) == times.at(row)) {
      change++;
    }
    return change == row + 1 ? row : change;
  }

  /** The first row of a last time. */
  private int changeBefore(int row) {
    int change = row;
    while (change > 0 && times.at(change - 1) == times.at(row)) {
      change--;
    }
    return change;
  }

  private StageMessages remarks(Gaps gaps) {
    StageMessages messages = nothing;
    if (gaps.count() > 0) {
      messages =
          messages.withRemark(
              RecordingRemark.GAPS, Argument.count(gaps.count()), Argument.count(gaps.missing()));
    }
    return gaps.outOfPlace() > 0
        ? messages.withRemark(RecordingRemark.OUT_OF_PLACE, Argument.count(gaps.outOfPlace()))
        : messages;
  }

  /** Each row whose time is missing or runs back is a problem. */
  private StageMessages runsBack() {
    StageMessages messages = nothing;
    boolean whole = !times.hasHoles();
    for (int i = 0; i < times.size(); i++) {
      if (!whole && times.isHole(i)) {
        messages = messages.withProblem(place(i), kind.missing);
      } else if (i > 0 && times.at(i) < times.at(i - 1) && (whole || !times.isHole(i - 1))) {
        messages =
            messages.withProblem(place(i), kind.back, said(times.at(i - 1)), said(times.at(i)));
      }
    }
    return messages;
  }

  private Argument said(double time) {
    return Argument.of(time * unitS, kind.unit);
  }

  private Place place(int row) {
    return Place.of(nothing.file(), table.lines().line(row), table.columnName(column));
  }

  /**
   * The rows that count. A computer's clock gives two rows one time where they arrive together, so
   * that there only a row printed twice is left out.
   */
  private Outcome<int[]> rows(BiPredicate<Integer, Integer> sameRow) {
    Outcome<int[]> once = oncePerTime(sameRow);
    int rows = once.value().length;
    boolean judged = kind == RowKey.TIMES && rows >= 2 && rows < times.size();
    return judged && new Gaps(times, once.value()).uneven() ? oncePerRow(sameRow) : once;
  }

  private Outcome<int[]> oncePerRow(BiPredicate<Integer, Integer> sameRow) {
    int[] rows =
        IntStream.range(0, times.size())
            .filter(i -> i == 0 || times.at(i) != times.at(i - 1) || !sameRow.test(i - 1, i))
            .toArray();
    int same = times.size() - rows.length;
    return new Outcome<>(rows, same > 0 ? printedTwice(same) : nothing);
  }

  private StageMessages printedTwice(int rows) {
    return nothing.withRemark(RecordingRemark.PRINTED_TWICE, Argument.count(rows));
  }

  /**
   * Leaves out rows at a time that is already there, unless times are coarser than the sampling.
   */
  private Outcome<int[]> oncePerTime(BiPredicate<Integer, Integer> sameRow) {
    int same = 0;
    int other = 0;
    for (int i = 1; i < times.size(); i++) {
      if (times.at(i) == times.at(i - 1)) {
        same += sameRow.test(i - 1, i) ? 1 : 0;
        other += sameRow.test(i - 1, i) ? 0 : 1;
      }
    }
    if (other > TimeLimits.COARSE_SHARE * times.size()) {
      return new Outcome<>(
          IntStream.range(0, times.size()).toArray(),
          nothing.withRemark(RecordingRemark.COARSE_TIMES));
    }
    StageMessages messages = same > 0 ? printedTwice(same) : nothing;
    if (other > 0) {
      messages = messages.withRemark(RecordingRemark.SAME_TIME, Argument.count(other));
    }
    return new Outcome<>(firstOfEachTime(times.size() - same - other), messages);
  }

  private int[] firstOfEachTime(int count) {
    int[] rows = new int[count];
    int next = 0;
    for (int i = 0; i < times.size(); i++) {
      if (i == 0 || times.at(i) != times.at(i - 1)) {
        rows[next++] = i;
      }
    }
    return rows;
  }
}
