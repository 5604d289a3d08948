package caryatid.loadline;

import caryatid.remark.Topic;

/** Why a stand gives no result. */
enum LoadLineProblem implements Topic {
  HAND_HOLDS("LoadLineProblem.HAND_HOLDS"),
  FLOOR_NOT_LEVEL("LoadLineProblem.FLOOR_NOT_LEVEL"),
  FEET_NOT_LEVEL("LoadLineProblem.FEET_NOT_LEVEL"),
  /** Arguments: the upper joint and its height, the lower one and its height. */
  LANDMARKS_OUT_OF_ORDER("LoadLineProblem.LANDMARKS_OUT_OF_ORDER"),
  /** Arguments: landmark, limits, its height. */
  HEIGHT_IMPOSSIBLE("LoadLineProblem.HEIGHT_IMPOSSIBLE"),
  /** Arguments: landmark, plane, offset, limits. */
  FAR_FROM_LANDMARK("LoadLineProblem.FAR_FROM_LANDMARK"),
  /** Arguments: distance, limits. */
  FEET_APART("LoadLineProblem.FEET_APART"),
  /** Arguments: side, share, limits. */
  SHARE_IMPOSSIBLE("LoadLineProblem.SHARE_IMPOSSIBLE");

  private final String code;

  LoadLineProblem(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }
}
