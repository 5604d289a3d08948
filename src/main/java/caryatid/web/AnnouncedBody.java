package caryatid.web;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;

/**
 * A body of which as many bytes come as were announced: where a connection ends early, the server's
 * stream only ends, and half a recording would look like a short one.
 */
final class AnnouncedBody extends FilterInputStream {
  private long missing;

  AnnouncedBody(InputStream body, long bytes) {
    super(body);
    this.missing = bytes;
  }

  @Override
  public int read() throws IOException {
    int read = super.read();
    count(read < 0 ? -1 : 1);
    return read;
  }

  @Override
  public int read(byte[] bytes, int offset, int length) throws IOException {
    int read = super.read(bytes, offset, length);
    count(read);
    return read;
  }

  private void count(int read) throws IOException {
    if (read < 0 && missing > 0) {
      throw new IOException(missing + " bytes are missing of what was announced");
    }
    missing -= Math.max(0, read);
  }
}
