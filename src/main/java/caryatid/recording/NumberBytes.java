package caryatid.recording;

import ch.randelshofer.fastdoubleparser.JavaDoubleParser;
import java.util.Arrays;

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

  /**
   * Reads a number and gives the index past it, or -1 if there is none. What follows is the
   * caller's to judge.
   */
  int read(byte[] bytes, int from, int to) {
    boolean negative = from < to && bytes[from] == '-';
    int start = negative || (from < to && bytes[from] == '+') ? from + 1 : from;
    long digits = 0;
    int at = start;
    int digit;
    while (at < to && (digit = bytes[at] - '0') >= 0 && digit <= 9) {
      digits = digits * 10 + digit;
      at++;
    }
    int count = at - start;
    int decimals = 0;
    if (at < to && bytes[at] == mark) {
      int first = ++at;
      while (at < to && (digit = bytes[at] - '0') >= 0 && digit <= 9) {
        digits = digits * 10 + digit;
        at++;
      }
      decimals = at - first;
      count += decimals;
    }
    if (count == 0) {
      return -1;
    }
    boolean exponent = at < to && (bytes[at] | 0x20) == 'e';
    if (exponent || count > MOST_DIGITS || digits > EXACT || decimals >= TEN.length) {
      return full(bytes, from, exponent ? pastExponent(bytes, at + 1, to) : at);
    }
    double magnitude = decimals > 0 ? digits / TEN[decimals] : digits;
    value = negative ? -magnitude : magnitude;
    return at;
  }

  /** For many digits, or an exponent. */
  private int full(byte[] bytes, int from, int to) {
    if (to < 0) {
      return -1;
    }
    byte[] plain = Arrays.copyOfRange(bytes, from, to);
    for (int i = 0; i < plain.length; i++) {
      plain[i] = plain[i] == mark ? (byte) '.' : plain[i];
    }
    value = JavaDoubleParser.parseDouble(plain, 0, plain.length);
    return Double.isFinite(value) ? to : -1;
  }

  /** The index past an exponent's digits; -1 if it has none. */
  private static int pastExponent(byte[] bytes, int from, int to) {
    int at = from;
    if (at < to && (bytes[at] == '-' || bytes[at] == '+')) {
      at++;
    }
    int digits = at;
    while (at < to && bytes[at] >= '0' && bytes[at] <= '9') {
      at++;
    }
    return at > digits ? at : -1;
  }
}
