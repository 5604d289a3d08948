package caryatid.geometry;

/** An axis of a frame. */
public enum Axis {
  X('x'),
  Y('y'),
  Z('z');

  private final char letter;

  Axis(char letter) {
    this.letter = letter;
  }

  /** Its small letter, as descriptions and columns' names write it. */
  public char letter() {
    return letter;
  }

  /**
   * The axis of a small letter.
   *
   * @throws IllegalArgumentException if no axis has it
   */
  public static Axis of(char letter) {
    for (Axis axis : values()) {
      if (axis.letter == letter) {
        return axis;
      }
    }
    throw new IllegalArgumentException("no axis " + letter);
  }

  /** The next one in the cycle x, y, z, x. */
  public Axis next() {
    return values()[(ordinal() + 1) % 3];
  }

  /**
   * The axis that is neither this nor another one.
   *
   * @throws IllegalArgumentException if the other one is this one
   */
  public Axis third(Axis other) {
    if (this == other) {
      throw new IllegalArgumentException("no third axis to " + this + " alone");
    }
    return next() == other ? other.next() : next();
  }
}
