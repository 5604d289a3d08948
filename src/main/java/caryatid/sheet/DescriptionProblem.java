package caryatid.sheet;

import caryatid.remark.Topic;

/** What can be wrong with what a plate description says. */
enum DescriptionProblem implements Topic {
  UNKNOWN_ENCODING("Describing.UNKNOWN_ENCODING"),
  COMMA_TWICE("Describing.COMMA_TWICE"),
  HEADER_BELOW_DATA("Describing.HEADER_BELOW_DATA"),
  RATE_AND_COLUMN("Describing.RATE_AND_COLUMN"),
  AXIS_TWICE("Describing.AXIS_TWICE"),
  PLATE_TWICE("Describing.PLATE_TWICE"),
  COLUMN_TWICE("Describing.COLUMN_TWICE"),
  /** A centre of pressure in one direction, and nothing that gives the other. */
  ONE_DIRECTION("Describing.ONE_DIRECTION"),
  SENSORS_TWICE("Describing.SENSORS_TWICE"),
  TOO_FEW_CELLS("Describing.TOO_FEW_CELLS"),
  NO_CALIBRATION("Describing.NO_CALIBRATION"),
  EDGES_SWAPPED("Describing.EDGES_SWAPPED"),
  /** Arguments: the plate, one before it. */
  PLATES_OVERLAP("Describing.PLATES_OVERLAP"),
  LINE_TWICE("Describing.LINE_TWICE"),
  LINE_WITHOUT_SENSE("Describing.LINE_WITHOUT_SENSE"),
  LINE_IN_BOTH_SENSES("Describing.LINE_IN_BOTH_SENSES"),
  /** The description was changed after it was proven. */
  PROOF_OF_ANOTHER("Describing.PROOF_OF_ANOTHER"),
  NO_DIGEST("Describing.NO_DIGEST");

  private final String code;

  DescriptionProblem(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }
}
