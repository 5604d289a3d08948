package caryatid.entry;

/** The plane in which a deviation of walking is seen. */
public enum GaitPlane {
  SAGITTAL("sagittal"),
  FRONTAL("frontal"),
  TRANSVERSE("transverse");

  private final String code;

  GaitPlane(String code) {
    this.code = code;
  }

  /** The code that files hold; never changed. */
  public String code() {
    return code;
  }
}
