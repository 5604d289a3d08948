package caryatid.entry;

/** The phase of the stride in which a deviation of walking is seen. */
public enum GaitPhase {
  EARLY_STANCE("early stance"),
  MID_STANCE("mid-stance"),
  LATE_STANCE("late stance"),
  SWING("swing"),
  WHOLE_STRIDE("whole stride");

  private final String code;

  GaitPhase(String code) {
    this.code = code;
  }

  /** The code that files hold; never changed. */
  public String code() {
    return code;
  }
}
