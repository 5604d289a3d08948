package caryatid.sheet;

/**
 * What is under the foot that is not on the measuring plate.
 *
 * @param on what it stands on
 * @param heightDifferenceMm how much higher it stands than the measuring plate's top, mm; negative
 *     when lower
 */
public record OtherFoot(Ground on, double heightDifferenceMm) {
  /** What a foot can stand on. */
  public enum Ground {
    PLATE,
    BLOCK,
    FLOOR
  }

  /**
   * @throws IllegalArgumentException if the height is not finite
   */
  public OtherFoot {
    if (!Double.isFinite(heightDifferenceMm)) {
      throw new IllegalArgumentException("height: " + heightDifferenceMm);
    }
  }
}
