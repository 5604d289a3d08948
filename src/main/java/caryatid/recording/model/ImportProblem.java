package caryatid.recording.model;

import caryatid.remark.Topic;

/** Why an export cannot be read, or what must be stated before it can be. */
public enum ImportProblem implements Topic {
  /** The file cannot be opened or read. */
  UNREADABLE("Reading.UNREADABLE"),
  PACKED_DAMAGED("Reading.PACKED_DAMAGED"),
  EMPTY("Reading.EMPTY"),
  /** Bytes that are no text. */
  BINARY("Reading.BINARY"),
  SPREADSHEET("Reading.SPREADSHEET"),
  /** Of a workbook: a part or a cell that makes no sense. */
  WORKBOOK_DAMAGED("Reading.WORKBOOK_DAMAGED"),
  /** Larger than is read, packed or unpacked, or wider. */
  WORKBOOK_LARGE("Reading.WORKBOOK_LARGE"),
  /** A formula of which the file keeps no value; arguments: how many. */
  WORKBOOK_FORMULA("Reading.WORKBOOK_FORMULA"),
  /** A number kept as text; arguments: how many in the column. */
  WORKBOOK_TEXT("Reading.WORKBOOK_TEXT"),
  /** A cell in a hidden row, column or sheet; arguments: how many. */
  WORKBOOK_HIDDEN("Reading.WORKBOOK_HIDDEN"),
  /** Merged cells among names and numbers. */
  WORKBOOK_MERGED("Reading.WORKBOOK_MERGED"),
  /** Of a C3D file: a byte or a parameter that makes no sense. */
  MOTION_DAMAGED("Reading.MOTION_DAMAGED"),
  /** Arguments: the most, MB. */
  MOTION_LONG("Reading.MOTION_LONG"),
  /** A parameter stands there twice, with different values. */
  MOTION_TWICE("Reading.MOTION_TWICE"),
  /** Header and parameters differ, and the file is as long as neither says. */
  MOTION_LAYOUT("Reading.MOTION_LAYOUT"),
  /** Arguments: frames stated, frames there. */
  MOTION_CUT("Reading.MOTION_CUT"),
  /** A C3D file without force plates. */
  MOTION_FILE("Reading.MOTION_FILE"),
  /** Arguments: plate, its type. */
  MOTION_TYPE("Reading.MOTION_TYPE"),
  MOTION_CORNERS("Reading.MOTION_CORNERS"),
  MOTION_TILTED("Reading.MOTION_TILTED"),
  /** Arguments: plate, channel. */
  MOTION_CHANNEL("Reading.MOTION_CHANNEL"),
  /** Arguments: plate, channel. */
  MOTION_DEAD("Reading.MOTION_DEAD"),
  /** Arguments: plate, units. */
  MOTION_UNITS("Reading.MOTION_UNITS"),
  /** Arguments: plate, unit. */
  MOTION_VOLTS("Reading.MOTION_VOLTS"),
  /** The distances between the sensors of a plate of type 3. */
  MOTION_SENSORS("Reading.MOTION_SENSORS"),
  /** A unit of length in which no plate has a plate's size. */
  MOTION_LENGTH("Reading.MOTION_LENGTH"),
  /** A described plate that is not in the file; arguments: its name, plates in the file. */
  MOTION_WHICH_PLATE("Reading.MOTION_WHICH_PLATE"),
  /** The description has a plate elsewhere; arguments: plate, how far, mm. */
  MOTION_PLACE("Reading.MOTION_PLACE"),
  /** Markers contradict the described axes. */
  MOTION_FACING("Reading.MOTION_FACING"),
  /** Arguments: side, plate, how far the centre of pressure lies off the foot, mm. */
  MOTION_OFF_FOOT("Reading.MOTION_OFF_FOOT"),
  /** The description names an encoding this platform does not have. */
  UNKNOWN_ENCODING("Reading.UNKNOWN_ENCODING"),
  LINE_TOO_LONG("Reading.LINE_TOO_LONG"),
  NO_TABLE("Reading.NO_TABLE"),
  /** Names, but no row below them. */
  HEADER_ONLY("Reading.HEADER_ONLY"),
  /** The decimal mark is the delimiter, too. */
  COMMA_TWICE("Reading.COMMA_TWICE"),
  /** Commas that may part decimals or thousands. */
  THOUSANDS("Reading.THOUSANDS"),
  NO_NUMBER("Reading.NO_NUMBER"),
  OTHER_MARK("Reading.OTHER_MARK"),
  RAGGED("Reading.RAGGED"),
  /** The same in a table without times. */
  RAGGED_UNTIMED("Reading.RAGGED_UNTIMED"),
  CUT_SHORT("Reading.CUT_SHORT"),
  NOT_A_ROW("Reading.NOT_A_ROW"),
  TOO_FEW_ROWS("Reading.TOO_FEW_ROWS"),
  /** Several recordings in one file. */
  WHICH_RECORDING("Reading.WHICH_RECORDING"),
  NO_SUCH_RECORDING("Reading.NO_SUCH_RECORDING"),
  NO_COLUMN("Reading.NO_COLUMN"),
  TWICE("Reading.TWICE"),
  /** The description gives one column two meanings. */
  TWO_MEANINGS("Reading.TWO_MEANINGS"),
  /** Columns of one plate in several versions, as raw and filtered. */
  WHICH_VERSION("Reading.WHICH_VERSION"),
  NO_PLATE_NAMES("Reading.NO_PLATE_NAMES"),
  NO_SUCH_PLATE("Reading.NO_SUCH_PLATE"),
  /** Columns of a plate in one horizontal direction alone. */
  ONE_DIRECTION("Reading.ONE_DIRECTION"),
  /** No column of a force plate at all. */
  NO_PLATE("Reading.NO_PLATE"),
  /** A table without names. */
  NO_NAMES("Reading.NO_NAMES"),
  /** More or fewer names than cells in a row. */
  NAMES_COUNT("Reading.NAMES_COUNT"),
  /** The same of the names that the description gives. */
  NAMES_COUNT_DESCRIBED("Reading.NAMES_COUNT_DESCRIBED"),
  /** Named as the sum of the plates, which it is not. */
  SUM_OR_PLATE("Reading.SUM_OR_PLATE"),
  /** Described as a plate, but the sum of others. */
  SUM_DESCRIBED("Reading.SUM_DESCRIBED"),
  UNKNOWN_UNIT("Reading.UNKNOWN_UNIT"),
  RAW_UNIT("Reading.RAW_UNIT"),
  UNITS_DIFFER("Reading.UNITS_DIFFER"),
  FORCE_UNIT("Reading.FORCE_UNIT"),
  MOMENT_UNIT("Reading.MOMENT_UNIT"),
  COP_UNIT("Reading.COP_UNIT"),
  AXES("Reading.AXES"),
  LEFT_HANDED("Reading.LEFT_HANDED"),
  TRUE_ORIGIN("Reading.TRUE_ORIGIN"),
  ORIGIN_ABOVE("Reading.ORIGIN_ABOVE"),
  /** Deeper than any plate is. */
  ORIGIN_DEEP("Reading.ORIGIN_DEEP"),
  HORIZONTAL_FORCE("Reading.HORIZONTAL_FORCE"),
  VERTICAL_FORCE("Reading.VERTICAL_FORCE"),
  COP_COLUMNS("Reading.COP_COLUMNS"),
  MOMENT_COLUMNS("Reading.MOMENT_COLUMNS"),
  EXPORT_ORIGIN("Reading.EXPORT_ORIGIN"),
  FORCE_SENSE("Reading.FORCE_SENSE"),
  UNLOADED("Reading.UNLOADED"),
  /** The same where there is no force to tell by. */
  EMPTY_THROUGHOUT("Reading.EMPTY_THROUGHOUT"),
  FAR_OFF("Reading.FAR_OFF"),
  OFF_PLATE("Reading.OFF_PLATE"),
  OFF_PLATE_BY_MOMENTS("Reading.OFF_PLATE_BY_MOMENTS"),
  OFF_PLATE_BY_SENSORS("Reading.OFF_PLATE_BY_SENSORS"),
  /** The same of a plate that measures fore and aft only. */
  OFF_PLATE_FORE_AND_AFT("Reading.OFF_PLATE_FORE_AND_AFT"),
  TOO_HEAVY("Reading.TOO_HEAVY"),
  /** A centre of pressure whose mean was subtracted. */
  MEAN_REMOVED("Reading.MEAN_REMOVED"),
  TOO_STILL("Reading.TOO_STILL"),
  /** Arguments: plate, column, samples under load. */
  DEAD_COLUMN("Reading.DEAD_COLUMN"),
  /** The exported centre of pressure and the one from forces and moments exclude each other. */
  COP_CONTRADICTS("Reading.COP_CONTRADICTS"),
  /** They move by amounts that no true origin explains: a unit is not what is stated. */
  COP_SCALE("Reading.COP_SCALE"),
  NO_RATE("Reading.NO_RATE"),
  /** Arguments: number of rows, what is stated. */
  RATE_UNCLEAR("Reading.RATE_UNCLEAR"),
  /** The samples' numbers skip some, evenly. */
  RATE_OF_ROWS("Reading.RATE_OF_ROWS"),
  NO_TIME("Reading.NO_TIME"),
  /** The same of a column that counts the samples. */
  NO_INDEX("Reading.NO_INDEX"),
  TIME_UNIT("Reading.TIME_UNIT"),
  UNKNOWN_TIME_UNIT("Reading.UNKNOWN_TIME_UNIT"),
  TIME_UNIT_WRONG("Reading.TIME_UNIT_WRONG"),
  /** The description's unit makes no rate of a force plate, but another one does. */
  TIME_UNIT_DESCRIBED("Reading.TIME_UNIT_DESCRIBED"),
  WRONG_TIME("Reading.WRONG_TIME"),
  WRONG_INDEX("Reading.WRONG_INDEX"),
  /** No cell of the column is a time. */
  TIMES_UNREADABLE("Reading.TIMES_UNREADABLE"),
  TIME_BACK("Reading.TIME_BACK"),
  /** The last time is the first one. */
  NO_TIME_PASSES("Reading.NO_TIME_PASSES"),
  INDEX_BACK("Reading.INDEX_BACK"),
  GAPS("Reading.GAPS"),
  RATES_DIFFER("Reading.RATES_DIFFER"),
  /** The description's rate is not the one that the file shows. */
  RATE_DESCRIBED("Reading.RATE_DESCRIBED"),
  /** Times in whole seconds. */
  WHOLE_SECONDS("Reading.WHOLE_SECONDS");

  private final String code;

  ImportProblem(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }

  /** Whether this asks for something a description can say, rather than complaining of the file. */
  public boolean asks() {
    return switch (this) {
      case WHICH_RECORDING,
          THOUSANDS,
          TWICE,
          WHICH_VERSION,
          NO_PLATE_NAMES,
          ONE_DIRECTION,
          NO_PLATE,
          NO_NAMES,
          NAMES_COUNT,
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
          WHOLE_SECONDS,
          TIME_UNIT,
          TIME_UNIT_WRONG ->
          true;
      default -> false;
    };
  }
}
