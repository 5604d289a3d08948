package caryatid.recording.model;

import caryatid.remark.Topic;

/** The kinds of facts that are understood from an export. */
public enum ImportFact implements Topic {
  ENCODING("Aspect.ENCODING"),
  PACKED("Aspect.PACKED"),
  /** Of a workbook; arguments: the sheet, how many there are. */
  SHEET("Aspect.SHEET"),
  DELIMITER("Aspect.DELIMITER"),
  DECIMAL_MARK("Aspect.DECIMAL_MARK"),
  PREAMBLE("Aspect.PREAMBLE"),
  DEVICES("Aspect.DEVICES"),
  HEADER("Aspect.HEADER"),
  NO_HEADER("Aspect.NO_HEADER"),
  UNITS_ROW("Aspect.UNITS_ROW"),
  ROWS("Aspect.ROWS"),
  OTHER_TABLES("Aspect.OTHER_TABLES"),
  COLUMNS("Aspect.COLUMNS"),
  CELLS("Aspect.CELLS"),
  UNUSED("Aspect.UNUSED"),
  DERIVED("Aspect.DERIVED"),
  /** Columns of times or sample numbers in addition to the one that is used. */
  NOT_NEEDED("Aspect.NOT_NEEDED"),
  /** Columns that hold all plates together. */
  SUM("Aspect.SUM"),
  SUM_OF_COP("Aspect.SUM_OF_COP"),
  UNIT("Aspect.UNIT"),
  /** Units that belong to each other, where one is open. */
  UNITS_TOGETHER("Aspect.UNITS_TOGETHER"),
  TIMES("Aspect.TIMES"),
  NUMBERS("Aspect.NUMBERS"),
  /** A column named like a sample counter that does not count up. */
  NO_NUMBERS("Aspect.NO_NUMBERS"),
  TIMES_OF_DAY("Aspect.TIMES_OF_DAY"),
  RATE("Aspect.RATE"),
  DURATION("Aspect.DURATION"),
  ROWS_AGREE("Aspect.ROWS_AGREE"),
  PLATE_SIZE("Aspect.PLATE_SIZE"),
  /** Arguments: frames, rate, channels, samples of each. */
  MOTION_FILE("Aspect.MOTION_FILE"),
  /** Axes by plates and markers; arguments: how far the toes point off anterior, degrees. */
  MOTION_AXES("Aspect.MOTION_AXES"),
  /** Arguments: side, plate. */
  MOTION_FOOT("Aspect.MOTION_FOOT"),
  AXES("Aspect.AXES"),
  VERTICAL("Aspect.VERTICAL"),
  FORCE_SENSE("Aspect.FORCE_SENSE");

  private final String code;

  ImportFact(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }
}
