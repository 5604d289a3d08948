package caryatid.fitting;

import caryatid.remark.Topic;

/** Why something could not be done with the records. */
enum Keeping implements Topic {
  NOT_A_CODE,
  CODE_LIKE_NAME,
  CODE_LIKE_DATE,
  /** A name that Windows keeps for devices. */
  DEVICE_NAME,
  /** Arguments: the field, what it looks like. */
  TEXT_LIKE_NAME,
  /** Arguments: the field, what it looks like. */
  TEXT_LIKE_BIRTH,
  NO_SUCH_RECORD,
  RECORD_EXISTS,
  WAS_ERASED,
  IN_USE,
  CANNOT_WRITE,
  /** It is there and whole, but the disk complained. */
  WRITTEN_BUT,
  CANNOT_READ,
  DAMAGED,
  NO_SUCH_ENTRY,
  CORRECTED_BEFORE,
  OTHER_KIND,
  STARTED_BEFORE,
  NO_SUCH_FILE,
  NO_STAND,
  /** Arguments: the number that was named as a stand's. */
  NO_SUCH_STAND,
  /** Arguments: whose stand it is, whose record. */
  OTHER_PROSTHESIS,
  /** Arguments: the entry that holds the same stand. */
  EXACT_DOUBLE
}
