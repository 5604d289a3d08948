package caryatid.recording.time;

import caryatid.recording.table.NumberColumn;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;

/**
 * Where rows are missing: a step of more than half as much again as usual, which the next step does
 * not make up for. A step that is made up for is one time out of its place, and no row is missing.
 */
final class Gaps {
  /** A step longer than this many usual steps is a gap. */
  private static final double STEPS = 1.5;

  private final NumberColumn times;
  private final int[] rows;
  private final double usual;
  private final List<Integer> longSteps = new ArrayList<>();
  private int gaps;
  private long missing;

  /**
   * @param times of all the table's rows, not falling
   * @param rows the rows that count, at least two
   */
  Gaps(NumberColumn times, int[] rows) {
    this.times = times;
    this.rows = rows;
    this.usual = usualStep();
    for (int i = 1; usual > 0 && i < rows.length; i++) {
      if (step(i) > STEPS * usual) {
        longSteps.add(i);
        long lacking = lacking(i);
        gaps += lacking > 0 ? 1 : 0;
        missing += lacking;
      }
    }
  }

  /** How many gaps there are. */
  int count() {
    return regular() ? 0 : gaps;
  }

  /** How many rows are missing in them. */
  long missing() {
    return regular() ? 0 : missing;
  }

  /** How many times are out of their place without a row missing. */
  int outOfPlace() {
    return regular() ? 0 : longSteps.size() - gaps;
  }

  /** The table's row behind the longest step. */
  int afterLongest() {
    int longest = 1;
    for (int i : longSteps) {
      longest = step(i) > step(longest) ? i : longest;
    }
    return rows[longest];
  }

  /** The samples, with one that lacks its row for each that is missing. */
  SampleRows filled() {
    int[] filled = new int[rows.length + (int) missing];
    BitSet lacking = new BitSet(filled.length);
    lacking.set(0, filled.length);
    int next = 0;
    for (int i = 0; i < rows.length; i++) {
      next += i > 0 && step(i) > STEPS * usual ? (int) lacking(i) : 0;
      lacking.clear(next);
      filled[next++] = rows[i];
    }
    return SampleRows.of(filled, lacking);
  }

  private double step(int i) {
    return times.at(rows[i]) - times.at(rows[i - 1]);
  }

  /** The rows missing before one, judged by the row after it as well. */
  private long lacking(int i) {
    long before = Math.round(step(i) / usual) - 1;
    return i + 1 == rows.length
        ? before
        : Math.max(0, Math.min(before, Math.round((step(i) + step(i + 1)) / usual) - 2));
  }

  /** The median step; the mean one where all are so even that none is a gap beside either. */
  private double usualStep() {
    int last = rows.length - 1;
    double mean = (times.at(rows[last]) - times.at(rows[0])) / last;
    double shortest = mean;
    double longest = mean;
    for (int i = 1; i <= last; i++) {
      shortest = Math.min(shortest, step(i));
      longest = Math.max(longest, step(i));
    }
    return longest <= STEPS * shortest ? mean : medianStep();
  }

  private double medianStep() {
    double[] steps = new double[rows.length - 1];
    Arrays.setAll(steps, i -> step(i + 1));
    Arrays.sort(steps);
    return steps[steps.length / 2];
  }

  /** Rounding makes a long step every so many steps, give or take one. */
  private boolean regular() {
    int shortest = Integer.MAX_VALUE;
    int longest = 0;
    for (int i = 1; i < longSteps.size(); i++) {
      shortest = Math.min(shortest, longSteps.get(i) - longSteps.get(i - 1));
      longest = Math.max(longest, longSteps.get(i) - longSteps.get(i - 1));
    }
    return longSteps.size() >= 3 && longest - shortest <= 1;
  }
}
