package caryatid.views;

import caryatid.remark.Topic;
import caryatid.remark.Weight;

/** The ways in which a fitting can exceed a limit that a component's maker states. */
enum LimitRemark implements Topic {
  /** Arguments: component, body mass as written, highest. */
  BODY_MASS_ABOVE("LimitRemark.BODY_MASS_ABOVE"),
  /** Arguments: component, body mass as measured by the plates, highest. */
  MEASURED_MASS_ABOVE("LimitRemark.MEASURED_MASS_ABOVE"),
  MOBILITY_GRADE_OUTSIDE("LimitRemark.MOBILITY_GRADE_OUTSIDE"),
  HEEL_HEIGHT_OUTSIDE("LimitRemark.HEEL_HEIGHT_OUTSIDE"),
  /** The wearer's own setting. Arguments: component, heel height, leg, lowest, highest. */
  OWN_SETTING_OUTSIDE("LimitRemark.OWN_SETTING_OUTSIDE");

  private final String code;

  LimitRemark(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }

  @Override
  public Weight weight() {
    return this == BODY_MASS_ABOVE || this == MEASURED_MASS_ABOVE
        ? Weight.SAFETY
        : Weight.IMPORTANT;
  }
}
