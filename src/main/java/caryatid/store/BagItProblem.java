package caryatid.store;

import caryatid.remark.Topic;

/** Why a packed record cannot be imported. */
enum BagItProblem implements Topic {
  NOT_A_ZIP("BagFault.NOT_A_ZIP"),
  UNSAFE_NAME("BagFault.UNSAFE_NAME"),
  NAME_TWICE("BagFault.NAME_TWICE"),
  LINK("BagFault.LINK"),
  ENCRYPTED("BagFault.ENCRYPTED"),
  TOO_LARGE("BagFault.TOO_LARGE"),
  NOT_A_BAG("BagFault.NOT_A_BAG"),
  NO_MANIFEST("BagFault.NO_MANIFEST"),
  FETCHES("BagFault.FETCHES"),
  NOT_LISTED("BagFault.NOT_LISTED"),
  LISTED_TWICE("BagFault.LISTED_TWICE"),
  LISTED_BUT_MISSING("BagFault.LISTED_BUT_MISSING"),
  WRONG_SUM("BagFault.WRONG_SUM"),
  NOT_ONE_RECORD("BagFault.NOT_ONE_RECORD"),
  NOT_SOUND("BagFault.NOT_SOUND");

  private final String code;

  BagItProblem(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }
}
