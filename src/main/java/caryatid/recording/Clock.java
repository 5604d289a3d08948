package caryatid.recording;

import caryatid.remark.Argument;
import caryatid.remark.Place;
import caryatid.remark.Unit;
import java.util.BitSet;
import java.util.Optional;
import java.util.function.BiPredicate;

/**
 * From the times or numbers of a table's rows to even times. Stated rule: times that only look
 * uneven because they are rounded are even; a row printed twice counts once; of several rows at one
 * time the first counts; where rows are missing, samples without a value are put in; a time that
 * runs back is refused.
 */
final class Clock {
  /**
   * Where more rows than this share their time with another, times are coarser than the sampling.
   */
  private static final double COARSE_SHARE = 0.05;

  /**
   * More missing samples than this share are no recording of one stand (common practice, no
   * source).
   */
  private static final double MOST_MISSING = 0.1;

  /** What the rows are told apart by. */
  enum Kind {
    TIMES(Reading.NO_TIME, Reading.TIME_BACK, Unit.S),
    NUMBERS(Reading.NO_INDEX, Reading.INDEX_BACK, Unit.COUNT);

    private final Reading missing;
    private final Reading back;
    private final Unit unit;

    Kind(Reading missing, Reading back, Unit unit) {
      this.missing = missing;
      this.back = back;
      this.unit = unit;
    }
  }

  private final Table table;
  private final int column;
  private final Kind kind;
  private final double unitS;
  private final Notebook notes;

  Clock(Table table, int column, Kind kind, double unitS, Notebook notes) {
    this.kind = kind;
    this.table = table;
    this.column = column;
    this.unitS = unitS;
    this.notes = notes;
  }

  /** The even times; empty, with a problem noted, where there are none. */
  Optional<Timeline> timeline(double[] times, BiPredicate<Integer, Integer> sameRow) {
    if (runsBack(times)) {
      return Optional.empty();
    }
    int[] rows = oncePerTime(times, sameRow);
    if (rows.length < 2) {
      notes.problem(Reading.TOO_FEW_ROWS, Argument.count(rows.length));
      return Optional.empty();
    }
    Gaps gaps = new Gaps(times, rows);
    if (gaps.missing() > MOST_MISSING * rows.length) {
      notes.problem(
          place(gaps.afterLongest()),
          Reading.GAPS,
          Argument.count(gaps.missing()),
          Argument.count(rows.length));
      return Optional.empty();
    }
    remark(gaps);
    int[] filled = gaps.count() == 0 ? rows : gaps.filled();
    return Optional.of(new Timeline(rateHz(times, rows, filled), filled));
  }

  /**
   * All steps over the whole time. Of coarse times the first and the last stand for samples that
   * lie anywhere within them; there it is the steps between the first and the last change.
   */
  private double rateHz(double[] times, int[] rows, int[] filled) {
    int from = rows[0];
    int to = rows[rows.length - 1];
    int steps = filled.length - 1;
    if (rows == filled && rows.length == times.length) {
      int firstChange = changeAfter(times, from);
      int lastChange = changeBefore(times, to);
      if (firstChange < lastChange) {
        from = firstChange;
        to = lastChange;
        steps = to - from;
      }
    }
    return steps / ((times[to] - times[from]) * unitS);
  }

  /** The first row of the next time; the row itself where it shares its time with no other. */
  private static int changeAfter(double[] times, int row) {
    int change = row + 1;
    while (change < times.length && times[change] == times[row]) {
      change++;
    }
    return change == row + 1 ? row : change;
  }

  /** The first row of a last time. */
  private static int changeBefore(double[] times, int row) {
    int change = row;
    while (change > 0 && times[change - 1] == times[row]) {
      change--;
    }
    return change;
  }

  private void remark(Gaps gaps) {
    if (gaps.count() > 0) {
      notes.remark(
          RecordingRemark.GAPS, Argument.count(gaps.count()), Argument.count(gaps.missing()));
    }
    if (gaps.outOfPlace() > 0) {
      notes.remark(RecordingRemark.OUT_OF_PLACE, Argument.count(gaps.outOfPlace()));
    }
  }

  private boolean runsBack(double[] times) {
    boolean back = false;
    BitSet holes = table.column(column).holes();
    boolean whole = holes.isEmpty();
    for (int i = 0; i < times.length; i++) {
      if (!whole && holes.get(i)) {
        back = true;
        notes.problem(place(i), kind.missing);
      } else if (i > 0 && times[i] < times[i - 1] && (whole || !holes.get(i - 1))) {
        back = true;
        notes.problem(place(i), kind.back, said(times[i - 1]), said(times[i]));
      }
    }
    return back;
  }

  private Argument said(double time) {
    return Argument.of(time * unitS, kind.unit);
  }

  private Place place(int row) {
    return Place.of(notes.file(), table.lines().line(row), table.columnName(column));
  }

  /**
   * Leaves out rows at a time that is already there, unless times are coarser than the sampling.
   */
  private int[] oncePerTime(double[] times, BiPredicate<Integer, Integer> sameRow) {
    int same = 0;
    int other = 0;
    for (int i = 1; i < times.length; i++) {
      if (times[i] == times[i - 1]) {
        same += sameRow.test(i - 1, i) ? 1 : 0;
        other += sameRow.test(i - 1, i) ? 0 : 1;
      }
    }
    if (other > COARSE_SHARE * times.length) {
      notes.remark(RecordingRemark.COARSE_TIMES);
      return Timeline.everyRow(1, times.length).rows();
    }
    if (same > 0) {
      notes.remark(RecordingRemark.PRINTED_TWICE, Argument.count(same));
    }
    if (other > 0) {
      notes.remark(RecordingRemark.SAME_TIME, Argument.count(other));
    }
    int[] rows = new int[times.length - same - other];
    int next = 0;
    for (int i = 0; i < times.length; i++) {
      if (i == 0 || times[i] != times[i - 1]) {
        rows[next++] = i;
      }
    }
    return rows;
  }
}
