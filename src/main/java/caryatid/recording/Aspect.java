package caryatid.recording;

import caryatid.remark.Topic;

/** What is understood of an export. */
public enum Aspect implements Topic {
  ENCODING,
  PACKED,
  DELIMITER,
  DECIMAL_MARK,
  PREAMBLE,
  DEVICES,
  HEADER,
  NO_HEADER,
  UNITS_ROW,
  ROWS,
  OTHER_TABLES,
  COLUMNS,
  CELLS,
  UNUSED,
  DERIVED,
  /** Times or numbers beside those that are used. */
  NOT_NEEDED,
  /** Columns that hold all plates together. */
  SUM,
  SUM_OF_COP,
  UNIT,
  /** Units that belong to each other, where one is open. */
  UNITS_TOGETHER,
  TIMES,
  NUMBERS,
  /** A column named as one of numbers, which does not count. */
  NO_NUMBERS,
  TIMES_OF_DAY,
  RATE,
  DURATION,
  ROWS_AGREE,
  PLATE_SIZE,
  AXES,
  VERTICAL,
  FORCE_SENSE
}
