package caryatid.chart.mark;

/** A rectangle on paper, mm from the drawing's left and top edge. */
public record Box(double leftMm, double topMm, double rightMm, double bottomMm) {
  /**
   * @throws IllegalArgumentException if an edge is on the wrong side of the opposite one
   */
  public Box {
    if (!(rightMm >= leftMm) || !(bottomMm >= topMm)) {
      throw new IllegalArgumentException(leftMm + " " + topMm + " " + rightMm + " " + bottomMm);
    }
  }

  public double widthMm() {
    return rightMm - leftMm;
  }

  public double heightMm() {
    return bottomMm - topMm;
  }

  /** Whether the other lies inside this one. */
  public boolean holds(Box other) {
    return other.leftMm >= leftMm
        && other.rightMm <= rightMm
        && other.topMm >= topMm
        && other.bottomMm <= bottomMm;
  }
}
