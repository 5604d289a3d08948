package caryatid.loadline;

/**
 * Where a quantity can hardly be, and where it cannot be.
 *
 * @param askBelow asked below, in the quantity's unit
 * @param askAbove asked above
 * @param refuseBelow no result below
 * @param refuseAbove no result above
 */
public record Bounds(double askBelow, double askAbove, double refuseBelow, double refuseAbove) {
  /**
   * @throws IllegalArgumentException if what is asked does not lie within what is refused
   */
  public Bounds {
    if (!(refuseBelow <= askBelow && askBelow <= askAbove && askAbove <= refuseAbove)) {
      throw new IllegalArgumentException(
          refuseBelow + " <= " + askBelow + " <= " + askAbove + " <= " + refuseAbove);
    }
  }

  /** The same on both sides of 0. */
  static Bounds within(double ask, double refuse) {
    return new Bounds(-ask, ask, -refuse, refuse);
  }

  /** Whether a value has to be asked about, or more. */
  public boolean isOdd(double value) {
    return !(value >= askBelow && value <= askAbove);
  }

  /** Whether a value cannot be. */
  public boolean isImpossible(double value) {
    return !(value >= refuseBelow && value <= refuseAbove);
  }
}
