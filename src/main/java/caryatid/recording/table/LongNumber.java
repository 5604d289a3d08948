package caryatid.recording.table;

import ch.randelshofer.fastdoubleparser.JavaDoubleParser;
import java.util.Arrays;

/** Numbers of a plain row that one division does not round correctly: many digits, an exponent. */
final class LongNumber {
  private static final int NONE = FastRow.NOT_PLAIN;

  private LongNumber() {}

  /**
   * Reads a number into a place.
   *
   * @param from its first byte
   * @param digitsEnd past its digits and its mark
   * @param mark what stands before its decimals
   * @return the index past it; {@link FastRow#NOT_PLAIN} if there is none, or none so large
   */
  static int read(byte[] bytes, int from, int digitsEnd, byte mark, double[] into, int place) {
    int to = (bytes[digitsEnd] | 0x20) == 'e' ? pastExponent(bytes, digitsEnd + 1) : digitsEnd;
    if (to < 0) {
      return NONE;
    }
    byte[] plain = Arrays.copyOfRange(bytes, from, to);
    for (int i = 0; i < plain.length; i++) {
      plain[i] = plain[i] == mark ? (byte) '.' : plain[i];
    }
    into[place] = JavaDoubleParser.parseDouble(plain, 0, plain.length);
    return Double.isFinite(into[place]) ? to : NONE;
  }

  /** The index past an exponent's digits. */
  private static int pastExponent(byte[] bytes, int from) {
    int at = bytes[from] == '-' || bytes[from] == '+' ? from + 1 : from;
    int digits = at;
    while (bytes[at] >= '0' && bytes[at] <= '9') {
      at++;
    }
    return at > digits ? at : NONE;
  }
}
