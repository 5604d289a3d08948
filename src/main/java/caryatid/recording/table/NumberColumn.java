package caryatid.recording.table;

import java.util.BitSet;

/** A column of numbers, one a row, and which rows have none. */
public final class NumberColumn {
  private final double[] numbers;
  private final BitSet holes;

  /**
   * @param numbers belong to the column from now on; 0 for each hole
   * @param holes likewise
   */
  NumberColumn(double[] numbers, BitSet holes) {
    this.numbers = numbers;
    this.holes = holes;
  }

  /**
   * Numbers of a file that is no text; what is no number is a hole.
   *
   * @param numbers belong to the column from now on
   */
  public static NumberColumn of(double[] numbers) {
    BitSet holes = new BitSet();
    for (int row = 0; row < numbers.length; row++) {
      if (!Double.isFinite(numbers[row])) {
        holes.set(row);
        numbers[row] = 0;
      }
    }
    return new NumberColumn(numbers, holes);
  }

  public int size() {
    return numbers.length;
  }

  /** A row's number; 0 for a hole. */
  public double at(int row) {
    return numbers[row];
  }

  /** The numbers as a series, which shares them. */
  public SampleSeries series() {
    return new SampleSeries(numbers);
  }

  /** The sum over rows, a hole counting 0. */
  public double sum(int from, int to) {
    double sum = 0;
    for (int row = from; row < to; row++) {
      sum += numbers[row];
    }
    return sum;
  }

  /** Whether every number is 0 or missing. */
  public boolean allZero() {
    for (double number : numbers) {
      if (number != 0) {
        return false;
      }
    }
    return true;
  }

  /** Whether some row has no number. */
  public boolean hasHoles() {
    return !holes.isEmpty();
  }

  /** Whether a row has no number. */
  public boolean isHole(int row) {
    return holes.get(row);
  }

  /** Adds the rows without a number to some others. */
  public void addHolesTo(BitSet rows) {
    rows.or(holes);
  }
}
