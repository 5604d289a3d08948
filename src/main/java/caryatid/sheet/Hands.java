package caryatid.sheet;

import caryatid.remark.Coded;

/** What the wearer's hands did during the stand. */
public enum Hands implements Coded {
  FREE("Hands.FREE"),
  /** Touching the rail without leaning on it. */
  TOUCHING("Hands.TOUCHING"),
  HOLDING("Hands.HOLDING");

  private final String code;

  Hands(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }
}
