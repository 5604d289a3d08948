package caryatid.recording;

/**
 * Which bytes something was read from.
 *
 * @param name the input's name as the user gave it
 * @param bytes how many bytes it had
 * @param sha512 their SHA-512 (FIPS 180-4), lower-case hexadecimal
 */
public record Provenance(String name, long bytes, String sha512) {
  /**
   * @throws IllegalArgumentException if the length is negative or the digest is no SHA-512
   */
  public Provenance {
    if (bytes < 0 || !sha512.matches("[0-9a-f]{128}")) {
      throw new IllegalArgumentException("length " + bytes + ", digest " + sha512);
    }
  }
}
