package caryatid.recording;

import java.util.Arrays;
import java.util.BitSet;

/** The even times of a recording and which row of the table holds each sample. */
final class Timeline {
  private final double rateHz;
  private final int[] rows;

  /**
   * @param rateHz sampling rate, Hz, above 0
   * @param rows row of each sample, -1 inside this package for a sample the file lacks
   */
  Timeline(double rateHz, int[] rows) {
    this.rateHz = rateHz;
    this.rows = rows;
  }

  static Timeline everyRow(double rateHz, int count) {
    int[] rows = new int[count];
    Arrays.setAll(rows, i -> i);
    return new Timeline(rateHz, rows);
  }

  double rateHz() {
    return rateHz;
  }

  int[] rows() {
    return rows;
  }

  int size() {
    return rows.length;
  }

  /** Time of each sample from the first, s. */
  Samples timeS() {
    double[] times = new double[rows.length];
    Arrays.setAll(times, i -> i / rateHz);
    return Samples.adopt(times);
  }

  /** A column's numbers, one a sample; 0 where the file lacks it. Reuses the array where it can. */
  double[] pick(double[] column) {
    if (isEveryRow(column.length)) {
      return column;
    }
    double[] picked = new double[rows.length];
    Arrays.setAll(picked, i -> rows[i] < 0 ? 0 : column[rows[i]]);
    return picked;
  }

  /** The samples whose row is among some, and those the file lacks. */
  BitSet pickHoles(BitSet holes) {
    if (holes.isEmpty() && rows.length > 0 && isEveryRow(rows[rows.length - 1] + 1)) {
      return new BitSet();
    }
    BitSet picked = new BitSet(rows.length);
    for (int i = 0; i < rows.length; i++) {
      picked.set(i, rows[i] < 0 || holes.get(rows[i]));
    }
    return picked;
  }

  private boolean isEveryRow(int count) {
    return rows.length == count && (count == 0 || rows[count - 1] == count - 1);
  }
}
