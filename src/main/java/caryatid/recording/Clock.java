package caryatid.recording;

import caryatid.remark.Argument;
import caryatid.remark.Place;
import caryatid.remark.Unit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.function.BiPredicate;

/**
 * From the times in a table to even times. Stated rule: times that only look uneven because they
 * are rounded are even; a row printed twice counts once; of several rows at one time the first
 * counts; where rows are missing, samples without a value are put in; a time that runs back is
 * refused.
 */
final class Clock {
  /** A step longer than this many usual steps is a gap. */
  private static final double GAP_STEPS = 1.5;

  /**
   * Where more rows than this share their time with another, times are coarser than the sampling.
   */
  private static final double COARSE_SHARE = 0.05;

  /**
   * More missing samples than this share are no recording of one stand (common practice, no
   * source).
   */
  private static final double MOST_MISSING = 0.1;

  private final Table table;
  private final int column;
  private final double unitS;
  private final Notebook notes;

  Clock(Table table, int column, double unitS, Notebook notes) {
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
    double duration = (times[rows[rows.length - 1]] - times[rows[0]]) * unitS;
    double usual = usualStep(times, rows);
    int missing = missing(times, rows, usual);
    if (missing > MOST_MISSING * rows.length) {
      notes.problem(Reading.GAPS, Argument.count(missing), Argument.count(rows.length));
      return Optional.empty();
    }
    int[] filled = missing == 0 ? rows : filled(times, rows, usual, missing);
    return Optional.of(new Timeline((filled.length - 1) / duration, filled));
  }

  private boolean runsBack(double[] times) {
    boolean back = false;
    BitSet holes = table.column(column).holes();
    for (int i = 0; i < times.length; i++) {
      if (holes.get(i)) {
        back = true;
        notes.problem(place(i), Reading.NO_TIME);
      } else if (i > 0 && times[i] < times[i - 1] && !holes.get(i - 1)) {
        back = true;
        notes.problem(place(i), Reading.TIME_BACK, seconds(times[i - 1]), seconds(times[i]));
      }
    }
    return back;
  }

  private Argument seconds(double time) {
    return Argument.of(time * unitS, Unit.S);
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

  /** The median step; the mean one where all are so even that none is a gap beside either. */
  private static double usualStep(double[] times, int[] rows) {
    int last = rows.length - 1;
    double mean = (times[rows[last]] - times[rows[0]]) / last;
    double shortest = mean;
    double longest = mean;
    for (int i = 1; i <= last; i++) {
      double step = times[rows[i]] - times[rows[i - 1]];
      shortest = Math.min(shortest, step);
      longest = Math.max(longest, step);
    }
    return longest <= GAP_STEPS * shortest ? mean : medianStep(times, rows);
  }

  private static double medianStep(double[] times, int[] rows) {
    double[] steps = new double[rows.length - 1];
    Arrays.setAll(steps, i -> times[rows[i + 1]] - times[rows[i]]);
    Arrays.sort(steps);
    return steps[steps.length / 2];
  }

  /** How many samples are missing at gaps; none where the long steps only come of rounding. */
  private int missing(double[] times, int[] rows, double usual) {
    List<Integer> gaps = new ArrayList<>();
    long missing = 0;
    for (int i = 1; i < rows.length; i++) {
      double steps = (times[rows[i]] - times[rows[i - 1]]) / usual;
      if (steps > GAP_STEPS) {
        gaps.add(i);
        missing += Math.round(steps) - 1;
      }
    }
    if (usual == 0 || regular(gaps)) {
      return 0;
    }
    if (!gaps.isEmpty()) {
      notes.remark(RecordingRemark.GAPS, Argument.count(gaps.size()), Argument.count(missing));
    }
    return (int) Math.min(missing, Integer.MAX_VALUE / 2);
  }

  /** Rounding makes a long step every so many steps, give or take one. */
  private static boolean regular(List<Integer> gaps) {
    int shortest = Integer.MAX_VALUE;
    int longest = 0;
    for (int i = 1; i < gaps.size(); i++) {
      shortest = Math.min(shortest, gaps.get(i) - gaps.get(i - 1));
      longest = Math.max(longest, gaps.get(i) - gaps.get(i - 1));
    }
    return gaps.size() >= 3 && longest - shortest <= 1;
  }

  private static int[] filled(double[] times, int[] rows, double usual, int missing) {
    int[] filled = new int[rows.length + missing];
    int next = 0;
    for (int i = 0; i < rows.length; i++) {
      double steps = i == 0 ? 1 : (times[rows[i]] - times[rows[i - 1]]) / usual;
      for (long lacking = steps > GAP_STEPS ? Math.round(steps) - 1 : 0; lacking > 0; lacking--) {
        filled[next++] = -1;
      }
      filled[next++] = rows[i];
    }
    return Arrays.copyOf(filled, next);
  }
}
