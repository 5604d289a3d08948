package caryatid.uncertainty;

/**
 * What one source adds to a value's uncertainty.
 *
 * @param source the source
 * @param standardUncertainty the source's own standard uncertainty, in its own unit, not negative
 * @param sensitivity partial derivative of the value by the source, signed; in the value's unit for
 *     each unit of the source
 * @param degreesOfFreedom of the standard uncertainty, above 0; infinite for a value taken as known
 */
public record Contribution(
    Source source, double standardUncertainty, double sensitivity, double degreesOfFreedom) {
  /**
   * Degrees of freedom of a standard uncertainty that is stated or assumed and was not measured:
   * such a number is itself known to about a quarter of it (JCGM 100:2008, G.4.2 and its example,
   * 8).
   */
  public static final double STATED_DEGREES = 8;

  /**
   * @throws IllegalArgumentException if a number is out of its range
   */
  public Contribution {
    if (!(standardUncertainty >= 0) || !Double.isFinite(standardUncertainty)) {
      throw new IllegalArgumentException("standard uncertainty: " + standardUncertainty);
    }
    if (!Double.isFinite(sensitivity)) {
      throw new IllegalArgumentException("sensitivity: " + sensitivity);
    }
    if (!(degreesOfFreedom > 0)) {
      throw new IllegalArgumentException("degrees of freedom: " + degreesOfFreedom);
    }
  }

  /** The signed share in the value's uncertainty, in the value's unit. */
  public double amount() {
    return sensitivity * standardUncertainty;
  }
}
