package caryatid.exchange;

import java.util.Base64;
import java.util.HexFormat;

/** SHA-512 sums as names (RFC 6920): {@code ni:///sha-512;} and the sum in base64url. */
final class Sha512 {
  private Sha512() {}

  /** The name of what has a sum in hexadecimal. */
  static String name(String hex) {
    byte[] sum = HexFormat.of().parseHex(hex);
    return "ni:///sha-512;" + Base64.getUrlEncoder().withoutPadding().encodeToString(sum);
  }
}
