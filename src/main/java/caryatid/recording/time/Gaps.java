package caryatid.recording.time;

import caryatid.recording.table.NumberColumn;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;

/**
 * Where rows are missing: a step of more than half as much again as usual, which the next step does
 * not make up for. A step that is made up for is one time out of its place, and no row is missing.
 *
 * <p>A computer's clock stamps rows when they arrive, so that many steps are longer or shorter.
 * There a longer step is a gap, and several steps after it may make up for it.
 */
final class Gaps {
  private final NumberColumn times;
  private final int[] rows;
  private final double usual;
  private final boolean uneven;
  private final double longest;
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
    boolean even = alike();
    double middle = even ? mean() : medianStep();
    this.uneven = !even && UnevenSteps.are(rows.length, this::step, middle);
    this.usual = uneven ? meanUpTo(TimeLimits.UNEVEN_GAP_STEPS * middle) : middle;
    this.longest = uneven ? TimeLimits.UNEVEN_GAP_STEPS * middle : TimeLimits.GAP_STEPS * usual;
    for (int i = 1; usual > 0 && i < rows.length; i++) {
      if (step(i) > longest) {
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

  /** Whether the steps are those of a computer's clock. */
  boolean uneven() {
    return uneven;
  }

  /** The shortest and the longest step, in the times' unit. */
  double[] extremes() {
    double[] found = {step(1), step(1)};
    for (int i = 2; i < rows.length; i++) {
      found[0] = Math.min(found[0], step(i));
      found[1] = Math.max(found[1], step(i));
    }
    return found;
  }

  /** How many rows are missing in them. */
  long missing() {
    return regular() ? 0 : missing;
  }

  /** How many times are out of their place without a row missing. */
  int outOfPlace() {
    return uneven || regular() ? 0 : longSteps.size() - gaps;
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
      next += i > 0 && step(i) > longest ? (int) lacking(i) : 0;
      lacking.clear(next);
      filled[next++] = rows[i];
    }
    return SampleRows.of(filled, lacking);
  }

  private double step(int i) {
    return times.at(rows[i]) - times.at(rows[i - 1]);
  }

  /** The rows missing before one, judged by what comes after it as well. */
  private long lacking(int i) {
    long lacking = Long.MAX_VALUE;
    int last = Math.min(rows.length, i + (uneven ? TimeLimits.MADE_UP_WITHIN : 2));
    for (int j = i; j < last; j++) {
      double since = times.at(rows[j]) - times.at(rows[i - 1]);
      lacking = Math.min(lacking, Math.round(since / usual) - (j - i + 1));
    }
    return i + 1 == rows.length ? lacking : Math.max(0, lacking);
  }

  private double meanUpTo(double longest) {
    double sum = 0;
    int count = 0;
    for (int i = 1; i < rows.length; i++) {
      boolean counts = step(i) <= longest;
      sum += counts ? step(i) : 0;
      count += counts ? 1 : 0;
    }
    return sum / count;
  }

  /** Whether all steps are so alike that none is a gap beside another. */
  private boolean alike() {
    double shortest = mean();
    double most = shortest;
    for (int i = 1; i < rows.length; i++) {
      shortest = Math.min(shortest, step(i));
      most = Math.max(most, step(i));
    }
    return most <= TimeLimits.GAP_STEPS * shortest;
  }

  private double mean() {
    int last = rows.length - 1;
    return (times.at(rows[last]) - times.at(rows[0])) / last;
  }

  private double medianStep() {
    double[] steps = new double[rows.length - 1];
    Arrays.setAll(steps, i -> step(i + 1));
    Arrays.sort(steps);
    return steps[steps.length / 2];
  }

  /** Rounding makes a long step every so many steps, give or take one. */
  private boolean regular() {
    int fewest = Integer.MAX_VALUE;
    int most = 0;
    for (int i = 1; i < longSteps.size(); i++) {
      fewest = Math.min(fewest, longSteps.get(i) - longSteps.get(i - 1));
      most = Math.max(most, longSteps.get(i) - longSteps.get(i - 1));
    }
    return !uneven && longSteps.size() >= 3 && most - fewest <= 1;
  }
}
