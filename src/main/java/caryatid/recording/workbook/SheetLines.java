package caryatid.recording.workbook;

import static java.nio.charset.StandardCharsets.UTF_8;

import caryatid.recording.model.ImportProblem;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;

/**
 * A sheet as text while it is read: a line each row, as many cells each line as the first rows
 * have, tabs between them; rows without anything are empty lines, so that lines count as the rows
 * do.
 */
final class SheetLines extends InputStream {
  /** So many rows show how wide the sheet is; more than are looked at for a table's head. */
  private static final int SHOWN = 200;

  /** A recording has fewer columns (common practice, no source). */
  private static final int WIDEST = 1000;

  private final SheetRows rows;
  private final long most;
  private final Deque<SheetRow> ahead = new ArrayDeque<>();
  private int width;
  private int line;
  private long written;
  private byte[] bytes = {};
  private int next;
  private Optional<IOException> failed = Optional.empty();

  /**
   * @param most bytes of text at the most
   */
  SheetLines(SheetRows rows, long most) throws IOException {
    this.rows = rows;
    this.most = most;
    Optional<SheetRow> row = rows.next();
    while (row.isPresent()) {
      ahead.add(row.get());
      width = Math.max(width, row.get().cells().size());
      row = ahead.size() < SHOWN ? rows.next() : Optional.empty();
    }
    if (width > WIDEST) {
      throw new WorkbookFault(ImportProblem.WORKBOOK_LARGE);
    }
  }

  @Override
  public int read() throws IOException {
    return fill() ? bytes[next++] & 0xff : -1;
  }

  @Override
  public int read(byte[] into, int offset, int length) throws IOException {
    int count = 0;
    while (count < length && fill()) {
      int some = Math.min(length - count, bytes.length - next);
      System.arraycopy(bytes, next, into, offset + count, some);
      next += some;
      count += some;
    }
    return count == 0 && length > 0 ? -1 : count;
  }

  /** What failed once fails again: who reads lines may have passed over it. */
  private boolean fill() throws IOException {
    if (next < bytes.length) {
      return true;
    }
    if (failed.isPresent()) {
      throw failed.get();
    }
    try {
      return line();
    } catch (IOException e) {
      failed = Optional.of(e);
      throw e;
    }
  }

  private boolean line() throws IOException {
    Optional<SheetRow> row = ahead.isEmpty() ? rows.next() : Optional.of(ahead.removeFirst());
    if (row.isEmpty()) {
      return false;
    }
    StringBuilder text = new StringBuilder();
    text.append("\n".repeat(row.get().number() - line - 1));
    text.append(String.join("\t", row.get().cells()));
    text.append("\t".repeat(Math.max(0, width - row.get().cells().size())));
    line = row.get().number();
    bytes = text.append('\n').toString().getBytes(UTF_8);
    next = 0;
    written += bytes.length;
    if (written > most) {
      throw new WorkbookFault(ImportProblem.WORKBOOK_LARGE);
    }
    return true;
  }
}
