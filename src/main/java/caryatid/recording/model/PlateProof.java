package caryatid.recording.model;

import java.time.OffsetDateTime;
import java.util.List;

/**
 * What known weights and a person who moved as asked showed of a plate under its description.
 *
 * @param at when
 * @param by initials of who did it
 * @param weightKg the mean mass of the weights, kg, above 0
 * @param bodyKg the mass for which the plate is used, kg, above 0
 * @param accuracy how well the plates' numbers are known at that load
 * @param plates what each plate showed
 * @param recordings the recordings it was found in
 */
public record PlateProof(
    OffsetDateTime at,
    String by,
    double weightKg,
    double bodyKg,
    PlateAccuracy accuracy,
    List<Shown> plates,
    List<Provenance> recordings) {
  /**
   * @throws IllegalArgumentException if a mass is out of its range
   */
  public PlateProof {
    if (!(weightKg > 0) || !(bodyKg > 0)) {
      throw new IllegalArgumentException(weightKg + " kg, " + bodyKg + " kg");
    }
    plates = List.copyOf(plates);
    recordings = List.copyOf(recordings);
  }

  /**
   * The share of a person's load at which weights show nothing: of what is assumed without a proof,
   * so much is still assumed (common practice, no source).
   *
   * @param weightKg of the weights, kg
   * @param bodyKg of the person, kg
   */
  public static double unseen(double weightKg, double bodyKg) {
    return Math.max(0, 1 - weightKg / bodyKg);
  }

  /**
   * A measured number.
   *
   * @param value the number
   * @param halfWidth of its interval of 95 %, not negative
   */
  public record MeasuredValue(double value, double halfWidth) {
    /**
     * @throws IllegalArgumentException if a number is out of its range
     */
    public MeasuredValue {
      if (!Double.isFinite(value) || !(halfWidth >= 0) || !Double.isFinite(halfWidth)) {
        throw new IllegalArgumentException(value + " +/- " + halfWidth);
      }
    }

    /** Whether another number lies outside the interval. */
    public boolean excludes(double other) {
      return Math.abs(value - other) > halfWidth;
    }
  }

  /**
   * What a plate showed.
   *
   * @param name the plate
   * @param marks the number of places at which a weight stood
   * @param scaleRight how long it shows a true millimetre to the right
   * @param scaleAnterior how long it shows a true anterior millimetre
   * @param turnDeg how far what it shows is turned to the left, seen from above, degrees
   * @param zeroRightMm where it shows the zero, to the right, mm
   * @param zeroAnteriorMm where it shows the zero, anteriorly, mm
   */
  public record Shown(
      String name,
      int marks,
      MeasuredValue scaleRight,
      MeasuredValue scaleAnterior,
      MeasuredValue turnDeg,
      MeasuredValue zeroRightMm,
      MeasuredValue zeroAnteriorMm) {

    /** Whether one of them is not what a true description has: 1, 1, 0, 0 and 0. */
    public boolean deviates() {
      return scaleRight.excludes(1)
          || scaleAnterior.excludes(1)
          || turnDeg.excludes(0)
          || zeroRightMm.excludes(0)
          || zeroAnteriorMm.excludes(0);
    }
  }
}
