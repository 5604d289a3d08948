package caryatid.entry;

/** Where a body mass in a stand's entry comes from. */
public enum BodyMassSource {
  /** The force plates, where they carried the whole body. */
  PLATE("plate"),
  /** The trial sheet. */
  SHEET("sheet");

  private final String code;

  BodyMassSource(String code) {
    this.code = code;
  }

  /** The code that files hold; never changed. */
  public String code() {
    return code;
  }
}
