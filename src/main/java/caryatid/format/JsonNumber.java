package caryatid.format;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * Numbers as files for programs write them: the fewest digits from 15 up that read back as the same
 * double, without zeros at the end. Our own because {@code Double.toString} changed between Java
 * versions and bytes have to repeat.
 */
public final class JsonNumber {
  /**
   * Any decimal number of so few digits survives the way through a double (IEEE 754-2019, 5.12.2).
   */
  private static final int ALWAYS_KEPT = 15;

  private JsonNumber() {}

  /**
   * A finite number in decimal notation.
   *
   * @throws NumberFormatException if it is not finite
   */
  public static String of(double value) {
    if (value == 0) {
      return 1 / value < 0 ? "-0.0" : "0";
    }
    BigDecimal exact = new BigDecimal(value);
    int digits = ALWAYS_KEPT;
    BigDecimal rounded = round(exact, digits);
    while (rounded.doubleValue() != value) {
      rounded = round(exact, ++digits);
    }
    return text(rounded.stripTrailingZeros());
  }

  private static BigDecimal round(BigDecimal exact, int digits) {
    return exact.round(new MathContext(digits, RoundingMode.HALF_EVEN));
  }

  private static String text(BigDecimal number) {
    int magnitude = number.precision() - number.scale();
    return magnitude > -7 && magnitude <= 17 ? number.toPlainString() : number.toString();
  }
}
