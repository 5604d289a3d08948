package caryatid.fitting;

import caryatid.remark.Topic;

/** Why a record, its code or an addition to it is refused. */
public enum RecordProblem implements Topic {
  NOT_A_CODE("Keeping.NOT_A_CODE"),
  CODE_LIKE_NAME("Keeping.CODE_LIKE_NAME"),
  CODE_LIKE_DATE("Keeping.CODE_LIKE_DATE"),
  /** A name that Windows keeps for devices. */
  DEVICE_NAME("Keeping.DEVICE_NAME"),
  /** Arguments: the field, what it looks like. */
  TEXT_LIKE_NAME("Keeping.TEXT_LIKE_NAME"),
  /** Arguments: the field, what it looks like. */
  TEXT_LIKE_BIRTH("Keeping.TEXT_LIKE_BIRTH"),
  /** Arguments: the field, what it looks like. */
  TEXT_LIKE_CONTACT("Keeping.TEXT_LIKE_CONTACT"),
  WAS_ERASED("Keeping.WAS_ERASED"),
  NO_SUCH_ENTRY("Keeping.NO_SUCH_ENTRY"),
  CORRECTED_BEFORE("Keeping.CORRECTED_BEFORE"),
  OTHER_KIND("Keeping.OTHER_KIND"),
  STARTED_BEFORE("Keeping.STARTED_BEFORE"),
  NO_STAND("Keeping.NO_STAND"),
  /** Arguments: the number that was named as a stand's. */
  NO_SUCH_STAND("Keeping.NO_SUCH_STAND"),
  /** Arguments: the number that was named as an entry's. */
  NO_SUCH_ENTRY_NAMED("Keeping.NO_SUCH_ENTRY_NAMED"),
  /** Arguments: the field. */
  WHICH_FASTENER("Keeping.WHICH_FASTENER"),
  /** Arguments: the field, the unit that was found. */
  TORQUE_UNIT("Keeping.TORQUE_UNIT"),
  /** Arguments: the field. */
  WHICH_LEG("Keeping.WHICH_LEG"),
  /** Arguments: the field, its side, the record's. */
  OTHER_LEG("Keeping.OTHER_LEG"),
  /** Arguments: the field. */
  NO_UNCERTAINTY("Keeping.NO_UNCERTAINTY"),
  LEVEL_OF_ONE_LEG("Keeping.LEVEL_OF_ONE_LEG"),
  /** Arguments: whose stand it is, whose record. */
  OTHER_PROSTHESIS("Keeping.OTHER_PROSTHESIS");

  private final String code;

  RecordProblem(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }
}
