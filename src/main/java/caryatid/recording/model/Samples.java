package caryatid.recording.model;

/** An immutable series of finite numbers; its owner defines the unit and frame. */
public final class Samples {
  private final double[] values;

  private Samples(double[] values) {
    this.values = values;
  }

  /**
   * A copy of the numbers.
   *
   * @throws IllegalArgumentException if one is not finite
   */
  public static Samples of(double... values) {
    return adopt(values.clone());
  }

  /**
   * The array itself; the caller must not touch it again.
   *
   * @throws IllegalArgumentException if a number is not finite
   */
  public static Samples adopt(double[] values) {
    // Zero times anything finite is zero: one sum tells whether to look closer.
    double zero = 0;
    for (double value : values) {
      zero += 0 * value;
    }
    for (int i = 0; zero != 0 && i < values.length; i++) {
      if (!Double.isFinite(values[i])) {
        throw new IllegalArgumentException("sample " + i + " is " + values[i]);
      }
    }
    return new Samples(values);
  }

  /** How many there are. */
  public int size() {
    return values.length;
  }

  /**
   * One of them.
   *
   * @throws IndexOutOfBoundsException if there is no such sample
   */
  public double at(int index) {
    return values[index];
  }

  /**
   * The numbers themselves and no copy, for which a long recording leaves no room; whoever gets
   * them does not change them.
   */
  public double[] shared() {
    return values;
  }
}
