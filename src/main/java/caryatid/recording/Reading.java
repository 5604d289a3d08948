package caryatid.recording;

import caryatid.remark.Topic;

/** Why an export cannot be read, or what has to be known before it can. */
public enum Reading implements Topic {
  /** The file cannot be opened or read. */
  UNREADABLE,
  PACKED_DAMAGED,
  EMPTY,
  /** Bytes that are no text. */
  BINARY,
  /** The description names an encoding this platform does not have. */
  UNKNOWN_ENCODING,
  LINE_TOO_LONG,
  NO_TABLE,
  /** Names, but no row below them. */
  HEADER_ONLY,
  /** The decimal mark is the delimiter, too. */
  COMMA_TWICE,
  /** Commas that may part decimals or thousands. */
  THOUSANDS,
  NO_NUMBER,
  OTHER_MARK,
  RAGGED,
  /** The same in a table without times. */
  RAGGED_UNTIMED,
  CUT_SHORT,
  NOT_A_ROW,
  TOO_FEW_ROWS,
  /** Several recordings in one file. */
  WHICH_RECORDING,
  NO_SUCH_RECORDING,
  NO_COLUMN,
  TWICE,
  /** The description gives one column two meanings. */
  TWO_MEANINGS,
  /** Columns of one plate in several versions, as raw and filtered. */
  WHICH_VERSION,
  NO_PLATE_NAMES,
  NO_SUCH_PLATE,
  /** No column of a force plate at all. */
  NO_PLATE,
  /** A table without names. */
  NO_NAMES,
  /** Named as the sum of the plates, which it is not. */
  SUM_OR_PLATE,
  /** Described as a plate, but the sum of others. */
  SUM_DESCRIBED,
  UNKNOWN_UNIT,
  RAW_UNIT,
  UNITS_DIFFER,
  FORCE_UNIT,
  MOMENT_UNIT,
  COP_UNIT,
  AXES,
  LEFT_HANDED,
  TRUE_ORIGIN,
  ORIGIN_ABOVE,
  HORIZONTAL_FORCE,
  VERTICAL_FORCE,
  COP_COLUMNS,
  MOMENT_COLUMNS,
  EXPORT_ORIGIN,
  FORCE_SENSE,
  UNLOADED,
  /** The same where there is no force to tell by. */
  EMPTY_THROUGHOUT,
  FAR_OFF,
  OFF_PLATE,
  OFF_PLATE_BY_MOMENTS,
  OFF_PLATE_BY_SENSORS,
  TOO_HEAVY,
  TOO_STILL,
  /** The exported centre of pressure and the one from forces and moments exclude each other. */
  COP_CONTRADICTS,
  /** They move by amounts that no true origin explains: a unit is not what is stated. */
  COP_SCALE,
  NO_RATE,
  /** Arguments: number of rows, what is stated. */
  RATE_UNCLEAR,
  /** The samples' numbers skip some, evenly. */
  RATE_OF_ROWS,
  NO_TIME,
  /** The same of a column that counts the samples. */
  NO_INDEX,
  TIME_UNIT,
  UNKNOWN_TIME_UNIT,
  TIME_UNIT_WRONG,
  /** The description's unit makes no rate of a force plate, but another one does. */
  TIME_UNIT_DESCRIBED,
  WRONG_TIME,
  WRONG_INDEX,
  /** No cell of the column is a time. */
  TIMES_UNREADABLE,
  TIME_BACK,
  INDEX_BACK,
  GAPS,
  RATES_DIFFER;

  /** Whether this asks for something a description can say, rather than complaining of the file. */
  public boolean asks() {
    return switch (this) {
      case WHICH_RECORDING,
          THOUSANDS,
          TWICE,
          WHICH_VERSION,
          NO_PLATE_NAMES,
          NO_PLATE,
          NO_NAMES,
          SUM_OR_PLATE,
          FORCE_UNIT,
          MOMENT_UNIT,
          COP_UNIT,
          AXES,
          TRUE_ORIGIN,
          EXPORT_ORIGIN,
          NO_RATE,
          RATE_UNCLEAR,
          RATE_OF_ROWS,
          TIME_UNIT,
          TIME_UNIT_WRONG ->
          true;
      default -> false;
    };
  }
}
