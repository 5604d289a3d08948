package caryatid.sheet;

/** Levels of amputation of the lower limb, as ISO 8549-4 names them (from memory). */
public enum AmputationLevel {
  ANKLE_DISARTICULATION(false),
  TRANSTIBIAL(false),
  KNEE_DISARTICULATION(true),
  TRANSFEMORAL(true),
  HIP_DISARTICULATION(true);

  private final boolean prostheticKnee;

  AmputationLevel(boolean prostheticKnee) {
    this.prostheticKnee = prostheticKnee;
  }

  /** Whether the prosthesis has a knee. */
  public boolean prostheticKnee() {
    return prostheticKnee;
  }
}
