package caryatid.web.safe;

import static java.nio.charset.StandardCharsets.US_ASCII;

import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.HexFormat;

/** A secret of 256 random bits, in hexadecimal digits. */
final class Token {
  private static final int BYTES = 32;

  private final String text;

  private Token(String text) {
    this.text = text;
  }

  /** A new one. */
  static Token random() {
    byte[] bytes = new byte[BYTES];
    new SecureRandom().nextBytes(bytes);
    return new Token(HexFormat.of().formatHex(bytes));
  }

  /** Whether a text is this token; how long the answer takes tells nothing about it. */
  boolean is(String other) {
    return MessageDigest.isEqual(text.getBytes(US_ASCII), other.getBytes(US_ASCII));
  }

  /** The token itself, for its cookie and the start file. */
  String reveal() {
    return text;
  }
}
