package caryatid.loadline;

import caryatid.remark.Topic;
import caryatid.remark.Weight;

/** What the reader of a load line should know, and why a target has no finding. */
public enum LoadLineRemark implements Topic {
  LINE_BEHIND_KNEE(Weight.SAFETY),
  LINE_MAY_BE_BEHIND_KNEE(Weight.SAFETY),
  MEASURED_LINE_BEHIND_KNEE(Weight.SAFETY),
  KNEE_NOT_MARKED(Weight.SAFETY),
  OWN_LINE_OF_KNEE_UNKNOWN(Weight.SAFETY),
  WHOLE_BODY_LINE(Weight.IMPORTANT),
  FEET_NOT_LEVEL(Weight.IMPORTANT),
  FAR_FROM_LANDMARK(Weight.IMPORTANT),
  LANDMARKS_OUT_OF_ORDER(Weight.IMPORTANT),
  HAND_TOUCHES(Weight.IMPORTANT),
  KNEE_LOCKED(Weight.IMPORTANT),
  FRONTAL_MOMENT_UNTRUSTED(Weight.NOTE),
  FRONTAL_OF_WHOLE_BODY(Weight.NOTE),
  OWN_LINE_UNKNOWN(Weight.NOTE),
  WHOLE_BODY_LINE_UNKNOWN(Weight.NOTE),
  NOT_MARKED(Weight.NOTE);

  private final Weight weight;

  LoadLineRemark(Weight weight) {
    this.weight = weight;
  }

  @Override
  public Weight weight() {
    return weight;
  }
}
