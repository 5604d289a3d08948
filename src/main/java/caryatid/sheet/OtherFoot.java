package caryatid.sheet;

import caryatid.remark.Coded;

/**
 * What is under the foot that is not on the measuring plate.
 *
 * @param on what it stands on
 * @param heightDifferenceMm how much higher it stands than the measuring plate's top, mm; negative
 *     when lower
 */
public record OtherFoot(Ground on, double heightDifferenceMm) {
  /** What a foot can stand on. */
  public enum Ground implements Coded {
    PLATE("Ground.PLATE"),
    BLOCK("Ground.BLOCK"),
    FLOOR("Ground.FLOOR");

    private final String code;

    Ground(String code) {
      this.code = code;
    }

    @Override
    public String code() {
      return code;
    }
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
