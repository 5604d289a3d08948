package caryatid.recording;

import ch.randelshofer.fastdoubleparser.JavaDoubleParser;

/**
 * Reads a plain decimal number from bytes without making a String, to the same double as {@link
 * Double#parseDouble}: whole numbers up to 2^53 and powers of ten up to 22 are exact in a double,
 * so that one division rounds correctly (W. D. Clinger, How to read floating point numbers
 * accurately, PLDI 1990; from memory); everything else goes to a full parser.
 */
final class NumberBytes {
  private static final double[] TEN = {
    1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15, 1e16, 1e17,
    1e18, 1e19, 1e20, 1e21, 1e22
  };
  private static final long EXACT = 1L << 53;

  /** More digits may overflow a long. */
  private static final int MOST_DIGITS = 18;

  private final byte mark;
  private double value;

  NumberBytes(DecimalMark mark) {
    this.mark = (byte) mark.character();
  }

  /** The number last read. */
  double value() {
    return value;
  }

  /** Reads bytes that hold a number and nothing else; false if they do not. */
  boolean read(byte[] bytes, int from, int to) {
    int at = from;
    boolean negative = at < to && bytes[at] == '-';
    if (negative || (at < to && bytes[at] == '+')) {
      at++;
    }
    long digits = 0;
    int count = 0;
    int decimals = -1;
    for (; at < to; at++) {
      int digit = bytes[at] - '0';
      if (digit >= 0 && digit <= 9) {
        digits = digits * 10 + digit;
        count++;
        decimals += decimals >= 0 ? 1 : 0;
      } else if (bytes[at] == mark && decimals < 0) {
        decimals = 0;
      } else {
        break;
      }
    }
    if (count == 0) {
      return false;
    }
    if (at < to || count > MOST_DIGITS || digits > EXACT || decimals >= TEN.length) {
      return full(bytes, from, to, at);
    }
    double magnitude = decimals > 0 ? digits / TEN[decimals] : digits;
    value = negative ? -magnitude : magnitude;
    return true;
  }

  /** For many digits, or an exponent from an index on. */
  private boolean full(byte[] bytes, int from, int to, int exponent) {
    if (exponent < to && !isExponent(bytes, exponent, to)) {
      return false;
    }
    byte[] plain = java.util.Arrays.copyOfRange(bytes, from, to);
    for (int i = 0; i < plain.length; i++) {
      plain[i] = plain[i] == mark ? (byte) '.' : plain[i];
    }
    value = JavaDoubleParser.parseDouble(plain, 0, plain.length);
    return Double.isFinite(value);
  }

  private static boolean isExponent(byte[] bytes, int from, int to) {
    int at = from + 1;
    if ((bytes[from] | 0x20) != 'e') {
      return false;
    }
    if (at < to && (bytes[at] == '-' || bytes[at] == '+')) {
      at++;
    }
    boolean digits = at < to;
    for (; at < to; at++) {
      digits &= bytes[at] >= '0' && bytes[at] <= '9';
    }
    return digits;
  }
}
