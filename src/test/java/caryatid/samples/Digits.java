package caryatid.samples;

/** Writes numbers with a fixed count of decimals, the same on every Java. */
final class Digits {
  private Digits() {}

  /**
   * A number rounded half up, with a point.
   *
   * @param decimals 0 to 9
   */
  static String write(double value, int decimals) {
    long scale = 1;
    for (int i = 0; i < decimals; i++) {
      scale *= 10;
    }
    long all = StrictMath.round(StrictMath.abs(value) * scale);
    String sign = value < 0 && all != 0 ? "-" : "";
    if (decimals == 0) {
      return sign + all;
    }
    String fraction = Long.toString(scale + all % scale).substring(1);
    return sign + all / scale + "." + fraction;
  }
}
