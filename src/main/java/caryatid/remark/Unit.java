package caryatid.remark;

/** Units in which numbers are shown to people. */
public enum Unit {
  MM("mm", 1),
  MM2("mm²", 0),
  MM_PER_S("mm/s", 1),
  N("N", 0),
  NM("N m", 1),
  NM_PER_KG("N m/kg", 3),
  S("s", 2),
  HZ("Hz", 1),
  DEG("°", 1),
  KG("kg", 1),
  PERCENT("%", 1),
  COUNT("", 0),
  PLAIN("", 2);

  private final String symbol;
  private final int decimals;

  Unit(String symbol, int decimals) {
    this.symbol = symbol;
    this.decimals = decimals;
  }

  /** The symbol written after the number; empty for a plain count. */
  public String symbol() {
    return symbol;
  }

  /** Digits after the decimal mark when shown to a person. */
  public int decimals() {
    return decimals;
  }
}
