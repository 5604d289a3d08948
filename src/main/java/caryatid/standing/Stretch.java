package caryatid.standing;

/**
 * A stretch of time set by hand.
 *
 * @param fromS from, s, from the recording's first sample; negative infinity for its start
 * @param toS up to, s; positive infinity for its end
 */
public record Stretch(double fromS, double toS) {
  /**
   * @throws IllegalArgumentException if it ends before it starts
   */
  public Stretch {
    if (!(toS > fromS)) {
      throw new IllegalArgumentException("from " + fromS + " s to " + toS + " s");
    }
  }
}
