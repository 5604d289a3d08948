package caryatid.recording.table;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.Charset;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;

/**
 * A text's lines as bytes, one after the other, each with its physical number; some may be looked
 * at ahead. Who reads lines in bulk does so in the {@link #buffer()} and says how far it came.
 */
final class LineReader {
  /** A longer line is no row of an export. */
  static final int LONGEST = 1 << 20;

  /** A line kept for later. */
  private static final class Held {
    private final byte[] bytes;
    private final boolean ended;

    Held(byte[] bytes, boolean ended) {
      this.bytes = bytes;
      this.ended = ended;
    }
  }

  private final InputStream in;
  private final Charset charset;
  private final byte end;
  private final Deque<Held> ahead = new ArrayDeque<>();

  /** Holds a line end at the limit, so that who looks for one need not look for the limit. */
  private byte[] buffer = new byte[1 << 18];

  private int next;
  private int limit;
  private byte[] bytes = buffer;
  private int from;
  private int to;
  private boolean ended;
  private int number;

  LineReader(InputStream in, Charset charset, byte end) {
    this.in = in;
    this.charset = charset;
    this.end = end;
    buffer[limit] = end;
  }

  /** A line is longer than {@link #LONGEST} bytes. */
  static final class TooLong extends IOException {
    private static final long serialVersionUID = 1L;
  }

  /** Goes to the next line; false if there is none. */
  boolean next() throws IOException {
    if (ahead.isEmpty()) {
      if (!scan()) {
        return false;
      }
    } else {
      Held held = ahead.removeFirst();
      bytes = held.bytes;
      from = 0;
      to = bytes.length;
      ended = held.ended;
    }
    number++;
    return true;
  }

  /** Whether the next line, if there is one, begins in the buffer. */
  boolean buffered() {
    return ahead.isEmpty();
  }

  /** Bytes with a line end at {@link #limit()}, which need not be one of the text. */
  byte[] buffer() {
    return buffer;
  }

  /** Where the next line begins in the buffer. */
  int unread() {
    return next;
  }

  /** Past the last byte in the buffer. */
  int limit() {
    return limit;
  }

  /** Goes past the next line, which ends before an index of the buffer. */
  void pass(int past) {
    next = past;
    number++;
  }

  /** What ends a line. */
  byte end() {
    return end;
  }

  /** The lines after the present one, as many as there are up to a count; they stay ahead. */
  List<String> ahead(int count) throws IOException {
    byte[] presentBytes = bytes == buffer ? Arrays.copyOfRange(bytes, from, to) : bytes;
    int presentFrom = bytes == buffer ? 0 : from;
    int presentTo = presentFrom + (to - from);
    boolean presentEnded = ended;
    while (ahead.size() < count && scan()) {
      ahead.addLast(new Held(Arrays.copyOfRange(bytes, from, to), ended));
    }
    bytes = presentBytes;
    from = presentFrom;
    to = presentTo;
    ended = presentEnded;
    List<String> texts = new ArrayList<>();
    ahead.forEach(held -> texts.add(new String(held.bytes, charset)));
    return texts;
  }

  /** Puts the present line back, to be the next again. */
  void back() {
    ahead.addFirst(new Held(Arrays.copyOfRange(bytes, from, to), ended));
    number--;
  }

  /** Physical number of the present line, from 1; 0 before the first. */
  int number() {
    return number;
  }

  /** Whether the present line was closed by a line end; false only for a last one. */
  boolean ended() {
    return ended;
  }

  /** The present line as text. */
  String text() {
    return new String(bytes, from, to - from, charset);
  }

  private boolean scan() throws IOException {
    int start = next;
    int at = next;
    while (true) {
      at = lineEnd(at);
      if (at < limit) {
        return found(start, at, at + 1, true);
      }
      int read = at - start;
      if (!refill(start)) {
        return read > 0 && found(next, limit, limit, false);
      }
      start = next;
      at = start + read;
    }
  }

  /** The next line end in the buffer, or its limit. */
  private int lineEnd(int from) {
    byte[] read = buffer;
    byte sought = end;
    int at = from;
    while (read[at] != sought) {
      at++;
    }
    return at;
  }

  private boolean found(int start, int stop, int following, boolean closed) {
    bytes = buffer;
    from = start;
    to = stop > start && buffer[stop - 1] == '\r' ? stop - 1 : stop;
    ended = closed;
    next = following;
    return true;
  }

  private boolean refill(int start) throws IOException {
    int kept = limit - start;
    if (kept > LONGEST) {
      throw new TooLong();
    }
    byte[] larger = kept > buffer.length / 2 ? new byte[buffer.length * 2] : buffer;
    System.arraycopy(buffer, start, larger, 0, kept);
    buffer = larger;
    next = 0;
    limit = kept;
    int count = in.read(buffer, kept, buffer.length - kept - 1);
    limit += Math.max(count, 0);
    buffer[limit] = end;
    return count > 0;
  }
}
