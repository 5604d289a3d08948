package caryatid.recording.model;

/**
 * The accuracy of a plate, as standard uncertainties.
 *
 * @param copMm of the centre of pressure in each direction, mm
 * @param levelRad of the plate's level in each plane, rad
 * @param forceFraction of a force, as a fraction of it
 * @param leanRad of the lean of a mean force from the vertical, in each plane, rad
 */
public record PlateAccuracy(double copMm, double levelRad, double forceFraction, double leanRad) {
  /**
   * Where the description says nothing: 2 mm, 2 mrad (about 2 mm in a metre) and 0.5 % (common
   * practice, no source), and a lean of 0.7 deg, amid the 0.3 to 1.2 deg seen in real recordings
   * under both feet, where it must be about zero.
   */
  public static final PlateAccuracy ASSUMED =
      new PlateAccuracy(2, 0.002, 0.005, Math.toRadians(0.7));

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
}
