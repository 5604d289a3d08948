package caryatid.loadline;

import caryatid.remark.Topic;
import caryatid.remark.Weight;

/** Remarks on load lines, and reasons why a target has no finding. */
public enum LoadLineRemark implements Topic {
  LINE_BEHIND_KNEE("LoadLineRemark.LINE_BEHIND_KNEE", Weight.SAFETY),
  LINE_MAY_BE_BEHIND_KNEE("LoadLineRemark.LINE_MAY_BE_BEHIND_KNEE", Weight.SAFETY),
  MEASURED_LINE_BEHIND_KNEE("LoadLineRemark.MEASURED_LINE_BEHIND_KNEE", Weight.SAFETY),
  KNEE_NOT_MARKED("LoadLineRemark.KNEE_NOT_MARKED", Weight.SAFETY),
  OWN_LINE_OF_KNEE_UNKNOWN("LoadLineRemark.OWN_LINE_OF_KNEE_UNKNOWN", Weight.SAFETY),
  WHOLE_BODY_LINE("LoadLineRemark.WHOLE_BODY_LINE", Weight.IMPORTANT),
  FEET_NOT_LEVEL("LoadLineRemark.FEET_NOT_LEVEL", Weight.IMPORTANT),
  FAR_FROM_LANDMARK("LoadLineRemark.FAR_FROM_LANDMARK", Weight.IMPORTANT),
  LANDMARKS_OUT_OF_ORDER("LoadLineRemark.LANDMARKS_OUT_OF_ORDER", Weight.IMPORTANT),
  HAND_TOUCHES("LoadLineRemark.HAND_TOUCHES", Weight.IMPORTANT),
  KNEE_LOCKED("LoadLineRemark.KNEE_LOCKED", Weight.IMPORTANT),
  FRONTAL_MOMENT_UNTRUSTED("LoadLineRemark.FRONTAL_MOMENT_UNTRUSTED", Weight.NOTE),
  FRONTAL_OF_WHOLE_BODY("LoadLineRemark.FRONTAL_OF_WHOLE_BODY", Weight.NOTE),
  OWN_LINE_UNKNOWN("LoadLineRemark.OWN_LINE_UNKNOWN", Weight.NOTE),
  WHOLE_BODY_LINE_UNKNOWN("LoadLineRemark.WHOLE_BODY_LINE_UNKNOWN", Weight.NOTE),
  NOT_MARKED("LoadLineRemark.NOT_MARKED", Weight.NOTE),
  /** The plate measures fore and aft only. */
  NOT_MEASURED("LoadLineRemark.NOT_MEASURED", Weight.NOTE);

  private final String code;
  private final Weight weight;

  LoadLineRemark(String code, Weight weight) {
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
