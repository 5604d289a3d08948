package caryatid.advice;

import caryatid.remark.Topic;
import caryatid.remark.Weight;

/** What is said with an advice, or instead of one. */
public enum AdviceRemark implements Topic {
  NO_STAND("Advice.NO_STAND", Weight.NOTE),
  NO_TARGET("Advice.NO_TARGET", Weight.NOTE),
  NO_ADJUSTMENT("Advice.NO_ADJUSTMENT", Weight.NOTE),
  REFUSED("Advice.REFUSED", Weight.IMPORTANT),
  LOCKED("Advice.LOCKED", Weight.IMPORTANT),
  HAND_HELD("Advice.HAND_HELD", Weight.IMPORTANT),
  GEOMETRY_UNKNOWN("Advice.GEOMETRY_UNKNOWN", Weight.NOTE),
  CHANGED_SINCE("Advice.CHANGED_SINCE", Weight.IMPORTANT),
  KNEE_NOT_MARKED("Advice.KNEE_NOT_MARKED", Weight.IMPORTANT),
  AXIS_NOT_NAMED("Advice.AXIS_NOT_NAMED", Weight.IMPORTANT),
  LENGTH_NOT_NOTED("Advice.LENGTH_NOT_NOTED", Weight.NOTE),
  SEAT_NOT_NOTED("Advice.SEAT_NOT_NOTED", Weight.NOTE),
  PAIN("Advice.PAIN", Weight.NOTE),
  LOAD_SHARE_LOW("Advice.LOAD_SHARE_LOW", Weight.NOTE),
  AXIS_ASKED("Advice.AXIS_ASKED", Weight.NOTE),
  CAUSES_FIRST("Advice.CAUSES_FIRST", Weight.IMPORTANT),
  KNEE_WARNING("Advice.KNEE_WARNING", Weight.SAFETY),
  ONE_UNDECIDED_STAND("Advice.ONE_UNDECIDED_STAND", Weight.NOTE),
  ONE_UNDECIDED_STAND_WARNED("Advice.ONE_UNDECIDED_STAND_WARNED", Weight.NOTE),
  MEASURE_AGAIN("Advice.MEASURE_AGAIN", Weight.NOTE),
  ALL_WITHIN("Advice.ALL_WITHIN", Weight.NOTE),
  NO_CHANGE_HELPS("Advice.NO_CHANGE_HELPS", Weight.NOTE),
  NO_CHANGE_STEADIES_KNEE("Advice.NO_CHANGE_STEADIES_KNEE", Weight.IMPORTANT),
  FROM_GEOMETRY("Advice.FROM_GEOMETRY", Weight.NOTE),
  CONTRADICTS("Advice.CONTRADICTS", Weight.IMPORTANT),
  CONTRACTURE_NOT_NOTED("Advice.CONTRACTURE_NOT_NOTED", Weight.NOTE),
  EXTENSION_KEPT("Advice.EXTENSION_KEPT", Weight.NOTE),
  KNEE_KEPT("Advice.KNEE_KEPT", Weight.NOTE),
  OWN_KNEE_KEPT("Advice.OWN_KNEE_KEPT", Weight.NOTE),
  OWN_KNEE_NOT_MARKED("Advice.OWN_KNEE_NOT_MARKED", Weight.IMPORTANT),
  BACK_BELOW_CONTRACTURE("Advice.BACK_BELOW_CONTRACTURE", Weight.IMPORTANT),
  ONE_AT_A_TIME("Advice.ONE_AT_A_TIME", Weight.SAFETY),
  WALKING_DECIDES("Advice.WALKING_DECIDES", Weight.SAFETY);

  private final String code;
  private final Weight weight;

  AdviceRemark(String code, Weight weight) {
    this.code = code;
    this.weight = weight;
  }

  @Override
  public String code() {
    return code;
  }

  @Override
  public Weight weight() {
    return weight;
  }
}
