package caryatid.recording.model;

import caryatid.remark.Topic;
import caryatid.remark.Weight;

/** Remarks on a recording. */
public enum RecordingRemark implements Topic {
  COARSE_TIMES("RecordingRemark.COARSE_TIMES"),
  PRINTED_TWICE("RecordingRemark.PRINTED_TWICE"),
  SAME_TIME("RecordingRemark.SAME_TIME", Weight.IMPORTANT),
  GAPS("RecordingRemark.GAPS", Weight.IMPORTANT),
  /** Gaps with straight lines over them; arguments: gaps, samples, longest, ms. */
  BRIDGED("RecordingRemark.BRIDGED"),
  /** Times of a computer's clock; arguments: shortest step, longest step, ms, rate. */
  UNEVEN("RecordingRemark.UNEVEN"),
  /** Times off the even ones, with no row missing. */
  OUT_OF_PLACE("RecordingRemark.OUT_OF_PLACE"),
  /** The description's rate counts, although the file's times show another one. */
  RATE_OVER_TIMES("RecordingRemark.RATE_OVER_TIMES"),
  TIME_UNIT("RecordingRemark.TIME_UNIT"),
  FORCE_SENSE("RecordingRemark.FORCE_SENSE", Weight.IMPORTANT),
  MOMENT_UNIT("RecordingRemark.MOMENT_UNIT"),
  COP_AGREES("RecordingRemark.COP_AGREES"),
  COP_DISAGREES("RecordingRemark.COP_DISAGREES", Weight.IMPORTANT),
  NOT_CROSS_CHECKED("RecordingRemark.NOT_CROSS_CHECKED"),
  UNLOADED("RecordingRemark.UNLOADED"),
  UNLOADED_PATTERN("RecordingRemark.UNLOADED_PATTERN"),
  /** Of a centre of pressure alone, in which no sign can be proven; arguments: the axes. */
  LEFT_HANDED("RecordingRemark.LEFT_HANDED", Weight.IMPORTANT),
  /** Under load, but where no plate is. */
  FAR_OFF("RecordingRemark.FAR_OFF", Weight.IMPORTANT),
  /** The file ends without a line end, and its last number is shorter than the others. */
  LAST_CUT("RecordingRemark.LAST_CUT", Weight.IMPORTANT),
  MISSING("RecordingRemark.MISSING", Weight.IMPORTANT),
  EMPTY_PLATE("RecordingRemark.EMPTY_PLATE"),
  /** Lines that the description's line numbers pass over. */
  PASSED_OVER("RecordingRemark.PASSED_OVER", Weight.IMPORTANT),
  SPIKES("RecordingRemark.SPIKES", Weight.IMPORTANT),
  /** Runs of samples that stick out together; arguments: plate, samples. */
  BURSTS("RecordingRemark.BURSTS", Weight.IMPORTANT),
  /** Arguments: plate, column, longest time, s. */
  FROZEN("RecordingRemark.FROZEN", Weight.IMPORTANT),
  /** Samples of more than any person's weight; arguments: plate, count, weight. */
  HEAVY_SAMPLES("RecordingRemark.HEAVY_SAMPLES", Weight.IMPORTANT),
  SATURATED("RecordingRemark.SATURATED", Weight.IMPORTANT),
  REPEATED("RecordingRemark.REPEATED"),
  /** A horizontal force; arguments: plate, column, samples under load. */
  DEAD_COLUMN("RecordingRemark.DEAD_COLUMN"),
  OFFSET("RecordingRemark.OFFSET", Weight.IMPORTANT),
  OFFSET_REMOVED("RecordingRemark.OFFSET_REMOVED", Weight.IMPORTANT),
  NEVER_UNLOADED("RecordingRemark.NEVER_UNLOADED", Weight.IMPORTANT),
  CELLS_DISAGREE("RecordingRemark.CELLS_DISAGREE", Weight.IMPORTANT),
  /** Of the exported centre of pressure; arguments: plate, how far apart, mm. */
  CELLS_COP_DISAGREES("RecordingRemark.CELLS_COP_DISAGREES", Weight.IMPORTANT),
  OFF_PLATE("RecordingRemark.OFF_PLATE", Weight.IMPORTANT),
  /** A plate that tells nothing sideways, by its description. */
  FORE_AND_AFT_ONLY("RecordingRemark.FORE_AND_AFT_ONLY", Weight.IMPORTANT),
  ROWS_STATED("RecordingRemark.ROWS_STATED", Weight.IMPORTANT),
  /** Shorter than stated; arguments: length stated, length, s. */
  DURATION_STATED("RecordingRemark.DURATION_STATED", Weight.IMPORTANT),
  /** Of a C3D file: header and parameters differ. */
  MOTION_HEADER("RecordingRemark.MOTION_HEADER"),
  /** Arguments: frames stated, frames there. */
  MOTION_MORE("RecordingRemark.MOTION_MORE", Weight.IMPORTANT),
  /** Arguments: first and last frame of the stretch that is called unloaded. */
  MOTION_ZERO("RecordingRemark.MOTION_ZERO"),
  /** A zero-moment point above the plate. */
  MOTION_ORIGIN("RecordingRemark.MOTION_ORIGIN", Weight.IMPORTANT),
  /** A plate whose z axis points up, by its corners. */
  MOTION_UPSIDE_DOWN("RecordingRemark.MOTION_UPSIDE_DOWN", Weight.IMPORTANT),
  /** Arguments: the unit as it is written, the one taken. */
  MOTION_LENGTH("RecordingRemark.MOTION_LENGTH", Weight.IMPORTANT),
  /** Arguments: how far the toes point off anterior, degrees. */
  MOTION_TURNED("RecordingRemark.MOTION_TURNED", Weight.IMPORTANT),
  /** Arguments: how far the plates' heights differ, mm. */
  MOTION_HEIGHTS("RecordingRemark.MOTION_HEIGHTS", Weight.IMPORTANT),
  /** Nothing showed that the plate's description is true. */
  UNPROVEN("RecordingRemark.UNPROVEN"),
  /** Arguments: the day, initials. */
  PROVEN("RecordingRemark.PROVEN");

  private final String code;
  private final Weight weight;

  RecordingRemark(String code) {
    this(code, Weight.NOTE);
  }

  RecordingRemark(String code, Weight weight) {
    this.code = code;
    this.weight = weight;
  }

  @Override
  public String code() {
    return code;
  }

  @Override
  public Weight weight() {
    return weight;
  }
}
