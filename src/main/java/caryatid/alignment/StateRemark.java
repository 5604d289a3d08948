package caryatid.alignment;

import caryatid.remark.Topic;
import caryatid.remark.Weight;

/** What the reader of an alignment state should know. */
public enum StateRemark implements Topic {
  SHARES_DIFFER(Weight.IMPORTANT),
  SIMPLE_RULE(Weight.IMPORTANT),
  OTHER_CONFIDENCE(Weight.IMPORTANT),
  STANDS_DISAGREE(Weight.IMPORTANT),
  TOLERANCE_TOO_NARROW(Weight.IMPORTANT),
  ONE_STAND(Weight.NOTE),
  LANDMARKS_SHARED(Weight.NOTE),
  SMALLEST_DIFFERENCE(Weight.NOTE);

  private final Weight weight;

  StateRemark(Weight weight) {
    this.weight = weight;
  }

  @Override
  public Weight weight() {
    return weight;
  }
}
