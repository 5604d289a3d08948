package caryatid.sheet;

import caryatid.remark.Coded;

/** Levels of amputation of the lower limb, as ISO 8549-4 names them (from memory). */
public enum AmputationLevel implements Coded {
  PARTIAL_FOOT("AmputationLevel.PARTIAL_FOOT", false),
  ANKLE_DISARTICULATION("AmputationLevel.ANKLE_DISARTICULATION", false),
  TRANSTIBIAL("AmputationLevel.TRANSTIBIAL", false),
  KNEE_DISARTICULATION("AmputationLevel.KNEE_DISARTICULATION", true),
  TRANSFEMORAL("AmputationLevel.TRANSFEMORAL", true),
  HIP_DISARTICULATION("AmputationLevel.HIP_DISARTICULATION", true),
  /** The wearer's ankle, turned about, moves the prosthesis's knee joint. */
  ROTATIONPLASTY("AmputationLevel.ROTATIONPLASTY", false);

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
