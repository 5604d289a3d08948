package caryatid.views;

import caryatid.remark.Topic;
import caryatid.remark.Weight;

/** What the user should know about the place of a newly added entry in the record. */
enum AdditionRemark implements Topic {
  /** Arguments: the entry, its time, a later entry that was there before, that one's time. */
  OLDER("AdditionRemark.OLDER"),
  /** Arguments: the correction, the time it takes, the entry it corrects. */
  TAKES_TIME("AdditionRemark.TAKES_TIME");

  private final String code;

  AdditionRemark(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }

  @Override
  public Weight weight() {
    return Weight.IMPORTANT;
  }
}
