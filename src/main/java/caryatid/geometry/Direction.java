package caryatid.geometry;

/** An axis of an export with its sense. */
public enum Direction {
  PLUS_X(0, 1),
  MINUS_X(0, -1),
  PLUS_Y(1, 1),
  MINUS_Y(1, -1),
  PLUS_Z(2, 1),
  MINUS_Z(2, -1);

  private final int axis;
  private final int sign;

  Direction(int axis, int sign) {
    this.axis = axis;
    this.sign = sign;
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
