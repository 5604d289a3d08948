package caryatid.entry;

/** How much of a deviation of walking is seen. */
public enum Severity {
  SLIGHT("slight"),
  MODERATE("moderate"),
  MARKED("marked");

  private final String code;

  Severity(String code) {
    this.code = code;
  }

  /** The code that files hold; never changed. */
  public String code() {
    return code;
  }
}
