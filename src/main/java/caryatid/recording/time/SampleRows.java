package caryatid.recording.time;

import caryatid.recording.table.NumberColumn;
import caryatid.recording.table.SampleSeries;
import java.util.BitSet;

/** Which row of a table holds each sample of a recording. */
final class SampleRows {
  private final int size;
  private final int[] rows;
  private final BitSet lacking;
  private final boolean everyRow;

  private SampleRows(int size, int[] rows, BitSet lacking, boolean everyRow) {
    this.size = size;
    this.rows = rows;
    this.lacking = lacking;
    this.everyRow = everyRow;
  }

  /** Each row holds one sample. */
  static SampleRows every(int count) {
    return new SampleRows(count, new int[0], new BitSet(), true);
  }

  /**
   * Some rows hold the samples.
   *
   * @param rows one a sample, of a sample without a row any; they belong to this from now on
   * @param lacking the samples without a row
   */
  static SampleRows of(int[] rows, BitSet lacking) {
    return new SampleRows(rows.length, rows, lacking, false);
  }

  int size() {
    return size;
  }

  /** A column's numbers, one a sample; 0 for a sample without a row. */
  SampleSeries series(NumberColumn column) {
    return everyRow
        ? column.series()
        : SampleSeries.of(rows.length, i -> lacking.get(i) ? 0 : column.at(rows[i]));
  }

  /** The samples without a row, and those whose row has no number in a column. */
  BitSet holes(NumberColumn column) {
    BitSet holes = (BitSet) lacking.clone();
    if (everyRow) {
      column.addHolesTo(holes);
      return holes;
    }
    for (int i = 0; column.hasHoles() && i < rows.length; i++) {
      if (!lacking.get(i) && column.isHole(rows[i])) {
        holes.set(i);
      }
    }
    return holes;
  }
}
