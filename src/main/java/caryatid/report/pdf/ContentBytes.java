package caryatid.report.pdf;

import static java.nio.charset.StandardCharsets.US_ASCII;

import java.util.Arrays;

/** What a drawing's content stream says (ISO 32000-1, 7.8.2): numbers and operators behind them. */
final class ContentBytes {
  private static final byte[] HEXADECIMAL = "0123456789ABCDEF".getBytes(US_ASCII);
  private static final int FIRST_SIZE = 1 << 14;

  private byte[] bytes = new byte[FIRST_SIZE];
  private int length;

  /**
   * A number to a hundredth, and a blank.
   *
   * @param value a size on paper, points
   */
  ContentBytes number(double value) {
    return hundredths(Math.round(value * 100));
  }

  /**
   * A number to a tenth, and a blank: a twentieth of a point is less than half a printer's dot.
   *
   * @param value a size on paper, points
   */
  ContentBytes roughNumber(double value) {
    return hundredths(10 * Math.round(value * 10));
  }

  private ContentBytes hundredths(long hundredths) {
    if (hundredths < 0) {
      put('-');
    }
    long rest = Math.abs(hundredths);
    whole(rest / 100);
    int part = (int) (rest % 100);
    if (part > 0) {
      put('.');
      put('0' + part / 10);
      if (part % 10 > 0) {
        put('0' + part % 10);
      }
    }
    put(' ');
    return this;
  }

  private void whole(long value) {
    if (value >= 10) {
      whole(value / 10);
    }
    put('0' + (int) (value % 10));
  }

  /** Letters by their numbers in a font, and a blank. */
  ContentBytes letters(byte[] codes) {
    put('<');
    for (byte code : codes) {
      put(HEXADECIMAL[code >> 4 & 0xf]);
      put(HEXADECIMAL[code & 0xf]);
    }
    put('>');
    put(' ');
    return this;
  }

  /** An operator, with what stands before it where that is always the same, and a line end. */
  void operator(String words) {
    for (int i = 0; i < words.length(); i++) {
      put(words.charAt(i));
    }
    put('\n');
  }

  private void put(int letter) {
    if (length == bytes.length) {
      bytes = Arrays.copyOf(bytes, 2 * length);
    }
    bytes[length++] = (byte) letter;
  }

  byte[] toBytes() {
    return Arrays.copyOf(bytes, length);
  }
}
