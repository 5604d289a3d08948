package caryatid.remark;

/** How important a remark is; remarks are shown in this order. */
public enum Weight implements Coded {
  /** The wearer may be in danger; shown first, in plain words. */
  SAFETY("Weight.SAFETY"),
  /** Changes how far the numbers can be trusted; belongs on page one. */
  IMPORTANT("Weight.IMPORTANT"),
  /** For readers who want the details. */
  NOTE("Weight.NOTE");

  private final String code;

  Weight(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }
}
