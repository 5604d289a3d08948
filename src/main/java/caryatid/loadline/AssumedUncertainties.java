package caryatid.loadline;

import caryatid.geometry.Plane;
import caryatid.uncertainty.Contribution;

/**
 * Uncertainties of every stand other than those of the recording and the marks, as standard
 * uncertainties.
 *
 * @param levelRad of the plate's level in each plane, rad
 * @param yawRad of the wearer's turn on the plate about the vertical, rad
 * @param footLeverMm how far a foot's own line is taken to run from a landmark in the other plane
 *     where that is not known, mm
 * @param bodyLeverMm the same for the whole body's line, mm
 * @param pendulumMm height at which the body swings by as much as the centre of pressure, mm, above
 *     0
 * @param sagittalRepeatMm usual standard deviation between stands of one alignment, fore and aft,
 *     the sway of each included, mm
 * @param frontalRepeatMm the same sideways, mm
 * @param repeatDegreesOfFreedom how well the two are known, as degrees of freedom, above 0
 * @param degrees how well level and turn are known
 */
public record AssumedUncertainties(
    double levelRad,
    double yawRad,
    double footLeverMm,
    double bodyLeverMm,
    double pendulumMm,
    double sagittalRepeatMm,
    double frontalRepeatMm,
    double repeatDegreesOfFreedom,
    KnownLevelAndYaw degrees) {
  /**
   * Degrees of freedom, above 0.
   *
   * @param level of the plate's level
   * @param yaw of the wearer's turn
   */
  public record KnownLevelAndYaw(double level, double yaw) {
    /** Those of what was not measured. */
    public static final KnownLevelAndYaw STATED =
        new KnownLevelAndYaw(Contribution.STATED_DEGREES, Contribution.STATED_DEGREES);

    /**
     * @throws IllegalArgumentException if one is not above 0
     */
    public KnownLevelAndYaw {
      if (!(level > 0 && yaw > 0)) {
        throw new IllegalArgumentException(level + ", " + yaw);
      }
    }
  }

  /**
   * Where nothing else is stated.
   *
   * <ul>
   *   <li>Level 2 mrad, about 2 mm in a metre; yaw 3 deg; levers 30 mm and 100 mm: common practice,
   *       no source.
   *   <li>Pendulum 1000 mm: about the height of the body's centre of mass, which swings by little
   *       less than the centre of pressure.
   *   <li>Between stands, sway included, 5.5 mm fore and aft and 4 mm sideways, with 5 degrees of
   *       freedom for how persons differ: scale and degrees of a scaled inverse chi-square
   *       distribution (Smyth 2004). Fitted to five runs of twelve stands of the open data set of
   *       Santos and Duarte 2016, PeerJ 4:e2648 (both feet on one plate, firm ground and foam,
   *       first 20 s, root mean square of the differences of successive means over root 2 in each
   *       run, 7.3 degrees each): 7.6 mm and 4.8 degrees fore and aft, 5.0 mm and 2.5 sideways. One
   *       foot's line of 22 persons on two plates differs between successive stands by 7.2 and 7.9
   *       mm (root mean square of the differences, so 5.1 and 5.6 mm of a stand), which with 5
   *       degrees is a scale of 3.9 and 4.3 mm. Fore and aft the geometric mean is taken, sideways
   *       the foot's own, rounded, because there the whole body's line moves otherwise.
   * </ul>
   */
  public static final AssumedUncertainties ASSUMED =
      new AssumedUncertainties(0.002, Math.toRadians(3), 30, 100, 1000, 5.5, 4, 5);

  /**
   * @throws IllegalArgumentException if a number is out of its range
   */
  public AssumedUncertainties {
    boolean fine =
        levelRad >= 0
            && yawRad >= 0
            && footLeverMm >= 0
            && bodyLeverMm >= 0
            && pendulumMm > 0
            && sagittalRepeatMm >= 0
            && frontalRepeatMm >= 0
            && repeatDegreesOfFreedom > 0;
    if (!fine) {
      throw new IllegalArgumentException("a doubt is negative or not a number");
    }
  }

  /** Uncertainties of which level and turn were not measured. */
  public AssumedUncertainties(
      double levelRad,
      double yawRad,
      double footLeverMm,
      double bodyLeverMm,
      double pendulumMm,
      double sagittalRepeatMm,
      double frontalRepeatMm,
      double repeatDegreesOfFreedom) {
    this(
        levelRad,
        yawRad,
        footLeverMm,
        bodyLeverMm,
        pendulumMm,
        sagittalRepeatMm,
        frontalRepeatMm,
        repeatDegreesOfFreedom,
        KnownLevelAndYaw.STATED);
  }

  /** These, with the plate's level as its description states it or its proof shows it, rad. */
  public AssumedUncertainties withLevel(double rad, double degreesOfFreedom) {
    return new AssumedUncertainties(
        rad,
        yawRad,
        footLeverMm,
        bodyLeverMm,
        pendulumMm,
        sagittalRepeatMm,
        frontalRepeatMm,
        repeatDegreesOfFreedom,
        new KnownLevelAndYaw(degreesOfFreedom, degrees.yaw()));
  }

  /** These, with the wearer's turn as it was measured, rad. */
  public AssumedUncertainties withYaw(double rad, double degreesOfFreedom) {
    return new AssumedUncertainties(
        levelRad,
        rad,
        footLeverMm,
        bodyLeverMm,
        pendulumMm,
        sagittalRepeatMm,
        frontalRepeatMm,
        repeatDegreesOfFreedom,
        new KnownLevelAndYaw(degrees.level(), degreesOfFreedom));
  }

  /** Standard deviation between stands in a plane, mm. */
  public double repeatMm(Plane plane) {
    return plane == Plane.SAGITTAL ? sagittalRepeatMm : frontalRepeatMm;
  }
}
