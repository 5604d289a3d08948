package caryatid.loadline;

import caryatid.remark.Topic;

/** Why a stand gives no result. */
enum LoadLineProblem implements Topic {
  HAND_HOLDS("LoadLineProblem.HAND_HOLDS"),
  FLOOR_NOT_LEVEL("LoadLineProblem.FLOOR_NOT_LEVEL"),
  FEET_NOT_LEVEL("LoadLineProblem.FEET_NOT_LEVEL");

  private final String code;

  LoadLineProblem(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }
}
