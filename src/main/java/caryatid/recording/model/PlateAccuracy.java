package caryatid.recording.model;

/**
 * The accuracy of a plate, as standard uncertainties.
 *
 * @param copMm of the centre of pressure in each direction, mm
 * @param levelRad of the plate's level in each plane, rad
 * @param forceFraction of a force, as a fraction of it
 * @param leanRad of the lean of a mean force from the vertical, in each plane, rad
 * @param degrees how well each of them is known
 */
public record PlateAccuracy(
    double copMm, double levelRad, double forceFraction, double leanRad, Degrees degrees) {
  /**
   * Degrees of freedom of what is stated or assumed and was not measured: such a number is itself
   * known to a quarter of it (JCGM 100:2008, G.4.2 and its example, 8).
   */
  public static final double STATED_DEGREES = 8;

  /**
   * Where the description says nothing: 2 mm, 2 mrad (about 2 mm in a metre) and 0.5 % (common
   * practice, no source), and a lean of 0.7 deg, amid the 0.3 to 1.2 deg seen in real recordings
   * under both feet, where it must be about zero.
   */
  public static final PlateAccuracy ASSUMED =
      new PlateAccuracy(2, 0.002, 0.005, Math.toRadians(0.7));

  /**
   * Degrees of freedom of each standard uncertainty, above 0.
   *
   * @param cop of the centre of pressure
   * @param level of the level
   * @param force of a force
   * @param lean of a mean force's lean
   */
  public record Degrees(double cop, double level, double force, double lean) {
    /** Those of what was not measured. */
    static final Degrees STATED =
        new Degrees(STATED_DEGREES, STATED_DEGREES, STATED_DEGREES, STATED_DEGREES);

    /**
     * @throws IllegalArgumentException if one is not above 0
     */
    public Degrees {
      if (!(cop > 0 && level > 0 && force > 0 && lean > 0)) {
        throw new IllegalArgumentException(cop + ", " + level + ", " + force + ", " + lean);
      }
    }
  }

  /**
   * @throws IllegalArgumentException if one is negative or not finite
   */
  public PlateAccuracy {
    if (!(copMm >= 0 && levelRad >= 0 && forceFraction >= 0 && leanRad >= 0)
        || !Double.isFinite(copMm + levelRad + forceFraction + leanRad)) {
      throw new IllegalArgumentException(
          copMm + " mm, " + levelRad + " rad, " + forceFraction + ", " + leanRad + " rad");
    }
  }

  /** An accuracy that is stated or assumed. */
  public PlateAccuracy(double copMm, double levelRad, double forceFraction, double leanRad) {
    this(copMm, levelRad, forceFraction, leanRad, Degrees.STATED);
  }

  /** The same, known to other degrees of freedom. */
  public PlateAccuracy knownTo(Degrees other) {
    return new PlateAccuracy(copMm, levelRad, forceFraction, leanRad, other);
  }

  /** The same with a measured centre of pressure. */
  public PlateAccuracy withCop(double mm, double degreesOfFreedom) {
    Degrees known = new Degrees(degreesOfFreedom, degrees.level(), degrees.force(), degrees.lean());
    return new PlateAccuracy(mm, levelRad, forceFraction, leanRad, known);
  }

  /** The same with a measured level. */
  public PlateAccuracy withLevel(double rad, double degreesOfFreedom) {
    Degrees known = new Degrees(degrees.cop(), degreesOfFreedom, degrees.force(), degrees.lean());
    return new PlateAccuracy(copMm, rad, forceFraction, leanRad, known);
  }

  /** The same with a measured force. */
  public PlateAccuracy withForce(double fraction, double degreesOfFreedom) {
    Degrees known = new Degrees(degrees.cop(), degrees.level(), degreesOfFreedom, degrees.lean());
    return new PlateAccuracy(copMm, levelRad, fraction, leanRad, known);
  }

  /** The same with a measured lean. */
  public PlateAccuracy withLean(double rad, double degreesOfFreedom) {
    Degrees known = new Degrees(degrees.cop(), degrees.level(), degrees.force(), degreesOfFreedom);
    return new PlateAccuracy(copMm, levelRad, forceFraction, rad, known);
  }
}
