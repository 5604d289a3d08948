package caryatid.store;

import java.io.IOException;
import java.io.InputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** SHA-2 sums (FIPS 180-4) as lower-case hexadecimal. */
final class Digests {
  static final String SHA_512 = "SHA-512";
  static final String SHA_256 = "SHA-256";
  private static final int CHUNK = 1 << 16;

  private Digests() {}

  static String of(String algorithm, byte[] bytes) {
    return HexFormat.of().formatHex(digest(algorithm).digest(bytes));
  }

  static String of(String algorithm, InputStream stream) throws IOException {
    MessageDigest digest = digest(algorithm);
    byte[] chunk = new byte[CHUNK];
    for (int n = stream.read(chunk); n >= 0; n = stream.read(chunk)) {
      digest.update(chunk, 0, n);
    }
    return HexFormat.of().formatHex(digest.digest());
  }

  static MessageDigest digest(String algorithm) {
    try {
      return MessageDigest.getInstance(algorithm);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has " + algorithm, e);
    }
  }
}
