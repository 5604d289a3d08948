package caryatid.recording.time;

import caryatid.recording.table.NumberColumn;
import caryatid.recording.table.SampleSeries;
import java.util.BitSet;

/**
 * Which row of a table holds each sample of a recording. A sample without a row has no number, or
 * one on the straight line between the rows around it.
 */
final class SampleRows {
  private final int size;
  private final int[] rows;
  private final BitSet lacking;
  private final BitSet bridged;
  private final boolean everyRow;

  private SampleRows(int size, int[] rows, BitSet lacking, BitSet bridged, boolean everyRow) {
    this.size = size;
    this.rows = rows;
    this.lacking = lacking;
    this.bridged = bridged;
    this.everyRow = everyRow;
  }

  /** Each row holds one sample. */
  static SampleRows every(int count) {
    return new SampleRows(count, new int[0], new BitSet(), new BitSet(), true);
  }

  /**
   * Some rows hold the samples.
   *
   * @param rows one a sample, of a sample without a row any; they belong to this from now on
   * @param lacking the samples without a row
   */
  static SampleRows of(int[] rows, BitSet lacking) {
    return new SampleRows(rows.length, rows, lacking, new BitSet(), false);
  }

  int size() {
    return size;
  }

  /** The samples without a row in runs of so many at most. */
  BitSet shortGaps(int longest) {
    BitSet found = new BitSet(size);
    for (int from = lacking.nextSetBit(0); from >= 0; ) {
      int to = lacking.nextClearBit(from);
      if (to - from <= longest) {
        found.set(from, to);
      }
      from = lacking.nextSetBit(to);
    }
    return found;
  }

  /** The same with straight lines over some samples without a row, the first and last excepted. */
  SampleRows bridging(BitSet samples) {
    BitSet left = (BitSet) lacking.clone();
    left.andNot(samples);
    return new SampleRows(size, rows, left, samples, everyRow);
  }

  /** A column's numbers, one a sample; 0 for a sample without a row. */
  SampleSeries series(NumberColumn column) {
    return everyRow ? column.series() : SampleSeries.of(rows.length, i -> number(column, i));
  }

  private double number(NumberColumn column, int i) {
    if (lacking.get(i)) {
      return 0;
    }
    return bridged.get(i) ? onTheLine(column, i) : column.at(rows[i]);
  }

  private double onTheLine(NumberColumn column, int i) {
    int before = bridged.previousClearBit(i);
    int after = bridged.nextClearBit(i);
    double part = (i - before) / (double) (after - before);
    return (1 - part) * column.at(rows[before]) + part * column.at(rows[after]);
  }

  /** The samples without a row, and those whose row has no number in a column. */
  BitSet holes(NumberColumn column) {
    BitSet holes = (BitSet) lacking.clone();
    if (everyRow) {
      column.addHolesTo(holes);
      return holes;
    }
    for (int i = 0; column.hasHoles() && i < rows.length; i++) {
      if (!lacking.get(i) && isHole(column, i)) {
        holes.set(i);
      }
    }
    return holes;
  }

  private boolean isHole(NumberColumn column, int i) {
    return bridged.get(i)
        ? column.isHole(rows[bridged.previousClearBit(i)])
            || column.isHole(rows[bridged.nextClearBit(i)])
        : column.isHole(rows[i]);
  }
}
