package caryatid.recording;

import caryatid.remark.Topic;
import caryatid.remark.Weight;

/** What the reader of a result should know about a recording. */
public enum RecordingRemark implements Topic {
  COARSE_TIMES,
  PRINTED_TWICE,
  SAME_TIME(Weight.IMPORTANT),
  GAPS(Weight.IMPORTANT),
  /** Times off the even ones, with no row missing. */
  OUT_OF_PLACE,
  /** The description's rate counts, although the file's times show another one. */
  RATE_OVER_TIMES,
  TIME_UNIT,
  FORCE_SENSE(Weight.IMPORTANT),
  MOMENT_UNIT,
  COP_AGREES,
  COP_DISAGREES(Weight.IMPORTANT),
  NOT_CROSS_CHECKED,
  UNLOADED,
  UNLOADED_PATTERN,
  /** Under load, but where no plate is. */
  FAR_OFF(Weight.IMPORTANT),
  /** The file ends without a line end, and its last number is shorter than the others. */
  LAST_CUT(Weight.IMPORTANT),
  MISSING(Weight.IMPORTANT),
  EMPTY_PLATE,
  SPIKES(Weight.IMPORTANT),
  SATURATED(Weight.IMPORTANT),
  REPEATED,
  OFFSET(Weight.IMPORTANT),
  OFFSET_REMOVED(Weight.IMPORTANT),
  NEVER_UNLOADED(Weight.IMPORTANT),
  CELLS_DISAGREE(Weight.IMPORTANT),
  OFF_PLATE(Weight.IMPORTANT),
  ROWS_STATED(Weight.IMPORTANT);

  private final Weight weight;

  RecordingRemark() {
    this(Weight.NOTE);
  }

  RecordingRemark(Weight weight) {
    this.weight = weight;
  }

  @Override
  public Weight weight() {
    return weight;
  }
}
