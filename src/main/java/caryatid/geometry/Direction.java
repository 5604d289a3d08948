package caryatid.geometry;

import caryatid.remark.Coded;

/** An axis of an export with its sense. */
public enum Direction implements Coded {
  PLUS_X("Direction.PLUS_X", 0, 1),
  MINUS_X("Direction.MINUS_X", 0, -1),
  PLUS_Y("Direction.PLUS_Y", 1, 1),
  MINUS_Y("Direction.MINUS_Y", 1, -1),
  PLUS_Z("Direction.PLUS_Z", 2, 1),
  MINUS_Z("Direction.MINUS_Z", 2, -1);

  private final String code;
  private final int axis;
  private final int sign;

  Direction(String code, int axis, int sign) {
    this.code = code;
    this.axis = axis;
    this.sign = sign;
  }

  @Override
  public String code() {
    return code;
  }

  /** The axis: 0 for x, 1 for y, 2 for z. */
  public int axis() {
    return axis;
  }

  /** +1 along the axis, -1 against it. */
  public int sign() {
    return sign;
  }
}
