package caryatid.sheet;

import caryatid.remark.Coded;

/** Levels of amputation of the lower limb, as ISO 8549-4 names them (from memory). */
public enum AmputationLevel implements Coded {
  ANKLE_DISARTICULATION("AmputationLevel.ANKLE_DISARTICULATION", false),
  TRANSTIBIAL("AmputationLevel.TRANSTIBIAL", false),
  KNEE_DISARTICULATION("AmputationLevel.KNEE_DISARTICULATION", true),
  TRANSFEMORAL("AmputationLevel.TRANSFEMORAL", true),
  HIP_DISARTICULATION("AmputationLevel.HIP_DISARTICULATION", true);

  private final String code;
  private final boolean prostheticKnee;

  AmputationLevel(String code, boolean prostheticKnee) {
    this.code = code;
    this.prostheticKnee = prostheticKnee;
  }

  @Override
  public String code() {
    return code;
  }

  /** Whether the prosthesis has a knee. */
  public boolean prostheticKnee() {
    return prostheticKnee;
  }
}
