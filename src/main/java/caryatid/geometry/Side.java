package caryatid.geometry;

/** A side of the person's body. */
public enum Side {
  LEFT(-1),
  RIGHT(1);

  private final int lateral;

  Side(int lateral) {
    this.lateral = lateral;
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
