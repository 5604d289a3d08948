package caryatid.geometry;

import caryatid.remark.Coded;

/** A side of the person's body. */
public enum Side implements Coded {
  LEFT("Side.LEFT", -1),
  RIGHT("Side.RIGHT", 1);

  private final String code;
  private final int lateral;

  Side(String code, int lateral) {
    this.code = code;
    this.lateral = lateral;
  }

  @Override
  public String code() {
    return code;
  }

  /** The sign of x that points away from the body's midline on this side: -1 left, +1 right. */
  public int lateral() {
    return lateral;
  }

  /** The opposite side. */
  public Side other() {
    return this == LEFT ? RIGHT : LEFT;
  }
}
