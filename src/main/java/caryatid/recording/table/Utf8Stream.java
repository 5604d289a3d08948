package caryatid.recording.table;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;

/** Text of any encoding as UTF-8 bytes. */
final class Utf8Stream extends InputStream {
  private final Reader reader;
  private final char[] characters = new char[1 << 13];
  private byte[] bytes = {};
  private int next;

  Utf8Stream(InputStream in, Charset from) {
    this.reader = new InputStreamReader(in, from);
  }

  @Override
  public int read() throws IOException {
    return fill() ? bytes[next++] & 0xff : -1;
  }

  @Override
  public int read(byte[] into, int offset, int length) throws IOException {
    if (!fill()) {
      return -1;
    }
    int count = Math.min(length, bytes.length - next);
    System.arraycopy(bytes, next, into, offset, count);
    next += count;
    return count;
  }

  private boolean fill() throws IOException {
    while (next == bytes.length) {
      int count = reader.read(characters);
      if (count < 0) {
        return false;
      }
      bytes = new String(characters, 0, count).getBytes(StandardCharsets.UTF_8);
      next = 0;
    }
    return true;
  }

  @Override
  public void close() throws IOException {
    reader.close();
  }
}
