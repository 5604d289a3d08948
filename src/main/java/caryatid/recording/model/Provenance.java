package caryatid.recording.model;

import caryatid.remark.BadInput;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;

/**
 * Which bytes something was read from.
 *
 * @param name the input's name; folders before it are dropped, since they say where the file lay on
 *     one machine, not what it is
 * @param bytes how many bytes it had
 * @param sha512 their SHA-512 (FIPS 180-4), lower-case hexadecimal
 */
public record Provenance(String name, long bytes, String sha512) {
  /**
   * @throws IllegalArgumentException if the length is negative or the digest is no SHA-512
   */
  public Provenance {
    name = fileName(name);
    if (bytes < 0 || !sha512.matches("[0-9a-f]{128}")) {
      throw new IllegalArgumentException("length " + bytes + ", digest " + sha512);
    }
  }

  /** A name without the folders before it. */
  public static String fileName(String name) {
    return name.substring(Math.max(name.lastIndexOf('/'), name.lastIndexOf('\\')) + 1);
  }

  /**
   * The provenance of an input, which is read to its end.
   *
   * @throws BadInput if it cannot be read
   */
  public static Provenance of(NamedBytes input) throws BadInput {
    try (InputStream in = input.open();
        HashingStream fingerprint = new HashingStream(in)) {
      fingerprint.transferTo(OutputStream.nullOutputStream());
      return fingerprint.provenance(input.name());
    } catch (IOException e) {
      throw input.unreadable(e);
    }
  }
}
