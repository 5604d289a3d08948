package caryatid.entry;

/** How strongly a deviation of walking shows. */
public enum Severity {
  /** It was looked for and is gone. */
  NONE("none"),
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
