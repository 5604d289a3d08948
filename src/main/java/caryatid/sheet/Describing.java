package caryatid.sheet;

import caryatid.remark.Topic;

/** What can be wrong with what a plate description says. */
public enum Describing implements Topic {
  UNKNOWN_ENCODING,
  COMMA_TWICE,
  HEADER_BELOW_DATA,
  RATE_AND_COLUMN,
  AXIS_TWICE,
  PLATE_TWICE,
  COLUMN_TWICE,
  SENSORS_TWICE,
  TOO_FEW_CELLS,
  NO_CALIBRATION,
  EDGES_SWAPPED,
  LINE_TWICE,
  LINE_WITHOUT_SENSE,
  LINE_IN_BOTH_SENSES
}
