package caryatid.recording.model;

/**
 * A line on the plate from which the clinician measures with a ruler: forward from it, or sideways.
 *
 * @param name as the sheets call it, for example {@code rear edge}
 * @param sense the direction in which distances from it count
 * @param positionMm where it lies in the person's frame, mm: its y for FORWARD, its x otherwise
 * @param registrationMm standard uncertainty of its position, mm, not negative
 */
public record MeasuringLine(String name, Sense sense, double positionMm, double registrationMm) {
  /** Along what one measures from a line. */
  public enum Sense {
    /** Anteriorly. */
    FORWARD,
    /** To the person's right. */
    RIGHTWARD
  }

  /**
   * @throws IllegalArgumentException if a number is out of its range
   */
  public MeasuringLine {
    if (!Double.isFinite(positionMm) || !(registrationMm >= 0)) {
      throw new IllegalArgumentException(name + " at " + positionMm + " +/- " + registrationMm);
    }
  }
}
