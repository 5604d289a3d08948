package caryatid.recording.model;

import java.time.OffsetDateTime;
import java.util.List;

/**
 * What known weights and a person who moved as asked showed of a plate under its description.
 *
 * @param at when
 * @param by initials of who did it
 * @param accuracy how well the plates' numbers are known
 * @param plates what each plate showed
 * @param recordings the recordings it was found in
 */
public record PlateProof(
    OffsetDateTime at,
    String by,
    PlateAccuracy accuracy,
    List<Shown> plates,
    List<Provenance> recordings) {
  public PlateProof {
    plates = List.copyOf(plates);
    recordings = List.copyOf(recordings);
  }

  /**
   * A measured number.
   *
   * @param value the number
   * @param halfWidth of its interval of 95 %, not negative
   */
  public record Measure(double value, double halfWidth) {
    /**
     * @throws IllegalArgumentException if a number is out of its range
     */
    public Measure {
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
      Measure scaleRight,
      Measure scaleAnterior,
      Measure turnDeg,
      Measure zeroRightMm,
      Measure zeroAnteriorMm) {

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
