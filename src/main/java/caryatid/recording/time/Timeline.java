package caryatid.recording.time;

import caryatid.recording.model.Samples;
import caryatid.recording.table.NumberColumn;
import caryatid.recording.table.SampleSeries;
import java.util.Arrays;
import java.util.BitSet;

/**
 * The even times of a recording.
 *
 * @param rateHz sampling rate, Hz, above 0
 * @param rows which row of the table holds each sample
 */
public record Timeline(double rateHz, SampleRows rows) {
  /** Each row holds one sample. */
  public static Timeline every(double rateHz, int rows) {
    return new Timeline(rateHz, SampleRows.every(rows));
  }

  public int size() {
    return rows.size();
  }

  /**
   * The samples in gaps of at most 0.1 s; none where they are more than a hundredth of all, since
   * then too much is missing.
   */
  BitSet shortGaps() {
    BitSet gaps =
        rows.shortGaps((int) Math.floor(TimeLimits.LONGEST_BRIDGE_S * rateHz * (1 + 1e-9)));
    return gaps.cardinality() <= TimeLimits.MOST_BRIDGED * size() ? gaps : new BitSet();
  }

  /** The same with straight lines over such gaps. */
  Timeline bridging(BitSet gaps) {
    return gaps.isEmpty() ? this : new Timeline(rateHz, rows.bridging(gaps));
  }

  /** Time of each sample from the first, s. */
  public Samples timeS() {
    double[] times = new double[size()];
    Arrays.setAll(times, i -> i / rateHz);
    return Samples.adopt(times);
  }

  /** A column's numbers, one a sample; 0 where the file lacks it. */
  public SampleSeries series(NumberColumn column) {
    return rows.series(column);
  }

  /** The samples that have no number in a column. */
  public BitSet holes(NumberColumn column) {
    return rows.holes(column);
  }
}
