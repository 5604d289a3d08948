package caryatid.views;

import caryatid.remark.Topic;
import caryatid.remark.Weight;

/** What somebody who has just added an entry should know of its place in the record. */
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
