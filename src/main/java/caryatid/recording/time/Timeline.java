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
  /**
   * A straight line over 0.1 s misses a centre of pressure by 0.19 mm in the median and by 2.1 mm
   * in one of 1,000 places (60 stands at 100 Hz of the open data set of Santos and Duarte 2016,
   * PeerJ 4:e2648, computed).
   */
  private static final double LONGEST_BRIDGE_S = 0.1;

  /** More lines would make what is measured too much of their own (common practice, no source). */
  private static final double MOST_BRIDGED = 0.01;

  public int size() {
    return rows.size();
  }

  /**
   * The samples in gaps of at most 0.1 s; none where they are more than a hundredth of all, since
   * then too much is missing.
   */
  BitSet shortGaps() {
    BitSet gaps = rows.shortGaps((int) Math.floor(LONGEST_BRIDGE_S * rateHz * (1 + 1e-9)));
    return gaps.cardinality() <= MOST_BRIDGED * size() ? gaps : new BitSet();
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
