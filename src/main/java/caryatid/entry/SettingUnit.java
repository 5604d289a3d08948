package caryatid.entry;

/** The unit in which an item of the alignment is set. */
public enum SettingUnit {
  MM("mm"),
  DEG("deg"),
  NEWTON_METRE("N m");

  private final String code;

  SettingUnit(String code) {
    this.code = code;
  }

  /** The code that files hold; never changed. */
  public String code() {
    return code;
  }
}
