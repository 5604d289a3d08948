package caryatid.repeatability;

import caryatid.remark.Topic;

/** What can be wrong with measurements that were repeated. */
enum RepeatProblem implements Topic {
  /** Arguments: degrees of freedom, how many it takes. */
  FEW_MARKS("RepeatProblem.FEW_MARKS"),
  MARKED_ONCE("RepeatProblem.MARKED_ONCE"),
  /** Arguments: placements, how many it takes. */
  FEW_PLACEMENTS("RepeatProblem.FEW_PLACEMENTS"),
  /** Arguments: the standard uncertainty, the most. */
  TOO_LARGE("RepeatProblem.TOO_LARGE");

  private final String code;

  RepeatProblem(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }
}
