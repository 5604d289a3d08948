package caryatid.geometry;

/**
 * How an export's axes lie in the person's frame: which of the export's directions points to the
 * person's right, anteriorly and up.
 */
public record Axes(Direction right, Direction anterior, Direction up) {
  /**
   * @throws IllegalArgumentException if two of them share an axis
   */
  public Axes {
    if (right.axis() == anterior.axis()
        || anterior.axis() == up.axis()
        || up.axis() == right.axis()) {
      throw new IllegalArgumentException("each axis once: " + right + ", " + anterior + ", " + up);
    }
  }

  /** Whether the export's axes, taken as x, y, z, form a right-handed frame. */
  public boolean rightHanded() {
    int turn = anterior.axis() == right.axis().next() ? 1 : -1;
    return turn * right.sign() * anterior.sign() * up.sign() > 0;
  }
}
