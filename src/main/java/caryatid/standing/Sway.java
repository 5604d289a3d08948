package caryatid.standing;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Sway of the centre of pressure over the quiet stretch (Prieto et al. 1996, IEEE Trans Biomed Eng
 * 43:956-966; ellipse: Schubert and Kirchner 2014, Gait Posture 39:518-522).
 *
 * @param of whose it is
 * @param lowPassHz cutoff of the zero-phase low-pass the series went through, Hz; empty where it
 *     was not filtered
 * @param sdAnteriorMm standard deviation (n - 1) fore and aft, mm
 * @param rangeAnteriorMm largest less smallest, fore and aft, mm
 * @param effectiveAnterior as how many independent samples the series fore and aft counts for its
 *     mean; too large if the stretch is short compared with the sway's memory
 * @param both what takes both directions; empty where a plate measures fore and aft only
 */
public record Sway(
    LoadLineOwner of,
    OptionalDouble lowPassHz,
    double sdAnteriorMm,
    double rangeAnteriorMm,
    double effectiveAnterior,
    Optional<BothDirections> both) {

  /**
   * The sway sideways, and what takes both directions.
   *
   * @param sdRightMm standard deviation (n - 1) sideways, mm
   * @param rangeRightMm largest less smallest, sideways, mm
   * @param pathMm length of the path, mm; depends on rate and filter
   * @param meanSpeedMmPerS path over time, mm/s; depends on rate and filter
   * @param ellipseMm2 area of the 95 % prediction ellipse, mm2
   * @param covarianceMm2 covariance of sideways and fore-aft, mm2
   * @param meanFrequencyHz mean speed over 2 pi times the mean distance from the mean, Hz
   * @param effectiveRight as how many independent samples the sideways series counts for its mean
   */
  public record BothDirections(
      double sdRightMm,
      double rangeRightMm,
      double pathMm,
      double meanSpeedMmPerS,
      double ellipseMm2,
      double covarianceMm2,
      double meanFrequencyHz,
      double effectiveRight) {}
}
