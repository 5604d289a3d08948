package caryatid.fitting;

import caryatid.remark.Topic;

/** Why something could not be done with the records. */
enum Keeping implements Topic {
  NOT_A_CODE("Keeping.NOT_A_CODE"),
  CODE_LIKE_NAME("Keeping.CODE_LIKE_NAME"),
  CODE_LIKE_DATE("Keeping.CODE_LIKE_DATE"),
  /** A name that Windows keeps for devices. */
  DEVICE_NAME("Keeping.DEVICE_NAME"),
  /** Arguments: the field, what it looks like. */
  TEXT_LIKE_NAME("Keeping.TEXT_LIKE_NAME"),
  /** Arguments: the field, what it looks like. */
  TEXT_LIKE_BIRTH("Keeping.TEXT_LIKE_BIRTH"),
  NO_SUCH_RECORD("Keeping.NO_SUCH_RECORD"),
  RECORD_EXISTS("Keeping.RECORD_EXISTS"),
  WAS_ERASED("Keeping.WAS_ERASED"),
  IN_USE("Keeping.IN_USE"),
  CANNOT_WRITE("Keeping.CANNOT_WRITE"),
  /** It is there and whole, but the disk complained. */
  WRITTEN_BUT("Keeping.WRITTEN_BUT"),
  CANNOT_READ("Keeping.CANNOT_READ"),
  DAMAGED("Keeping.DAMAGED"),
  NO_SUCH_ENTRY("Keeping.NO_SUCH_ENTRY"),
  CORRECTED_BEFORE("Keeping.CORRECTED_BEFORE"),
  OTHER_KIND("Keeping.OTHER_KIND"),
  STARTED_BEFORE("Keeping.STARTED_BEFORE"),
  NO_SUCH_FILE("Keeping.NO_SUCH_FILE"),
  NO_STAND("Keeping.NO_STAND"),
  /** Arguments: the number that was named as a stand's. */
  NO_SUCH_STAND("Keeping.NO_SUCH_STAND"),
  /** Arguments: whose stand it is, whose record. */
  OTHER_PROSTHESIS("Keeping.OTHER_PROSTHESIS"),
  /** Arguments: the entry that holds the same stand. */
  EXACT_DOUBLE("Keeping.EXACT_DOUBLE");

  private final String code;

  Keeping(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }
}
