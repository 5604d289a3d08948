package caryatid.sheet;

import caryatid.remark.Topic;

/** Why a landmark cannot be brought into the person's frame. */
enum LandmarkProblem implements Topic {
  LANDMARK_UNKNOWN("Placing.LANDMARK_UNKNOWN"),
  LANDMARK_UNKNOWN_MEANT("Placing.LANDMARK_UNKNOWN_MEANT"),
  LANDMARK_NOT_IN_PLANE("Placing.LANDMARK_NOT_IN_PLANE"),
  CIRCLE("Placing.CIRCLE"),
  CHAIN("Placing.CHAIN"),
  LINE_UNKNOWN("Placing.LINE_UNKNOWN"),
  LINE_UNKNOWN_MEANT("Placing.LINE_UNKNOWN_MEANT"),
  LINE_OF_OTHER_SENSE("Placing.LINE_OF_OTHER_SENSE");

  private final String code;

  LandmarkProblem(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }
}
