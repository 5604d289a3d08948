package caryatid.recording.model;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** Counts and hashes the bytes that are read through it. */
final class HashingStream extends FilterInputStream {
  private final MessageDigest digest;
  private long bytes;

  HashingStream(InputStream in) {
    super(in);
    try {
      digest = MessageDigest.getInstance("SHA-512");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-512 in practice", e);
    }
  }

  @Override
  public int read() throws IOException {
    byte[] one = new byte[1];
    return read(one, 0, 1) < 0 ? -1 : one[0] & 0xff;
  }

  @Override
  public int read(byte[] into, int offset, int length) throws IOException {
    int count = in.read(into, offset, length);
    if (count > 0) {
      digest.update(into, offset, count);
      bytes += count;
    }
    return count;
  }

  /** What passed; to be asked for once. */
  Provenance provenance(String name) {
    return new Provenance(name, bytes, HexFormat.of().formatHex(digest.digest()));
  }
}
