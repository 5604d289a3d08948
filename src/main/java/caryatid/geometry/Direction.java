package caryatid.geometry;

import caryatid.remark.Coded;

/** An axis of an export with its sense. */
public enum Direction implements Coded {
  PLUS_X("Direction.PLUS_X", Axis.X, 1),
  MINUS_X("Direction.MINUS_X", Axis.X, -1),
  PLUS_Y("Direction.PLUS_Y", Axis.Y, 1),
  MINUS_Y("Direction.MINUS_Y", Axis.Y, -1),
  PLUS_Z("Direction.PLUS_Z", Axis.Z, 1),
  MINUS_Z("Direction.MINUS_Z", Axis.Z, -1);

  private final String code;
  private final Axis axis;
  private final int sign;

  Direction(String code, Axis axis, int sign) {
    this.code = code;
    this.axis = axis;
    this.sign = sign;
  }

  @Override
  public String code() {
    return code;
  }

  /** The axis. */
  public Axis axis() {
    return axis;
  }

  /** +1 along the axis, -1 against it. */
  public int sign() {
    return sign;
  }
}
