package caryatid.recording.table;

import caryatid.recording.model.ImportProblem;
import caryatid.recording.model.NamedBytes;
import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.io.Reader;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.zip.GZIPInputStream;

/**
 * An export opened for reading: unpacked where it is gz-compressed, without byte order mark, in an
 * encoding whose digits and delimiters are single bytes.
 */
final class ExportInput implements AutoCloseable {
  /** How many bytes are examined before the encoding is decided. */
  private static final int START = 1 << 16;

  private final InputStream raw;
  private final InputStream text;
  private final Charset charset;
  private final Encoding found;
  private final boolean packed;
  private final byte[] start;

  private ExportInput(
      InputStream raw, InputStream unpacked, boolean packed, Optional<Charset> stated)
      throws IOException {
    this.raw = raw;
    this.packed = packed;
    BufferedInputStream in = new BufferedInputStream(unpacked, START);
    this.start = peek(in, START);
    Encoding encoding =
        stated.map(s -> Encoding.stated(s, start)).orElseGet(() -> Encoding.of(start));
    in.skipNBytes(encoding.markBytes());
    this.found = encoding;
    this.text = encoding.singleByteDigits() ? in : new Utf8Stream(in, encoding.charset());
    this.charset = encoding.singleByteDigits() ? encoding.charset() : StandardCharsets.UTF_8;
  }

  static ExportInput open(NamedBytes export, Optional<Charset> stated) throws IOException {
    BufferedInputStream raw = new BufferedInputStream(export.open(), START);
    try {
      byte[] magic = peek(raw, 2);
      boolean packed = magic.length == 2 && magic[0] == 0x1f && magic[1] == (byte) 0x8b;
      InputStream unpacked = packed ? new GZIPInputStream(raw, START) : raw;
      return new ExportInput(raw, unpacked, packed, stated);
    } catch (IOException | RuntimeException e) {
      raw.close();
      throw e;
    }
  }

  private static byte[] peek(BufferedInputStream in, int count) throws IOException {
    in.mark(count);
    byte[] seen = in.readNBytes(count);
    in.reset();
    return seen;
  }

  /** The text from its first character. */
  InputStream text() {
    return text;
  }

  /** The encoding of {@link #text()}. */
  Charset charset() {
    return charset;
  }

  /** The encoding of the file. */
  Encoding found() {
    return found;
  }

  /** Whether the file is gz-compressed. */
  boolean packed() {
    return packed;
  }

  /** Whether the file holds bytes no text has: zeros although it is no UTF-16. */
  boolean binary() {
    if (!charset.equals(found.charset())) {
      return false;
    }
    for (byte b : start) {
      if (b == 0) {
        return true;
      }
    }
    return false;
  }

  /** Whether the file is another program's, known by its first bytes, or empty. */
  Optional<ImportProblem> foreign() {
    if (starts(0x50, 0x4b, 0x03, 0x04) || starts(0xd0, 0xcf, 0x11, 0xe0)) {
      return Optional.of(ImportProblem.SPREADSHEET);
    }
    return Optional.empty();
  }

  private boolean starts(int... magic) {
    return start.length >= magic.length
        && IntStream.range(0, magic.length).allMatch(i -> (start[i] & 0xff) == magic[i]);
  }

  /** What ends a line: a carriage return where the text's start has no line feed at all. */
  byte lineEnd() {
    boolean returns = false;
    for (byte b : start) {
      if (b == '\n') {
        return '\n';
      }
      returns |= b == '\r';
    }
    return (byte) (returns ? '\r' : '\n');
  }

  /** Reads what is left behind the text, so that all the file's bytes have passed. */
  void finish() throws IOException {
    raw.transferTo(OutputStream.nullOutputStream());
  }

  @Override
  public void close() throws IOException {
    text.close();
  }

  /** Text of any encoding as UTF-8 bytes. */
  private static final class Utf8Stream extends InputStream {
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
}
