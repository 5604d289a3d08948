package caryatid.recording.workbook;

import caryatid.recording.model.ImportProblem;
import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;

/**
 * What is unpacked of a zip, up to a multiple of the file's own size; and no piece of markup longer
 * than a cell can be, since the parser holds each as a whole.
 */
final class BoundedPart extends FilterInputStream {
  /** Sheets of recordings unpack to 5 to 15 times their size (tried with made ones). */
  private static final int TIMES = 100;

  private static final int LONGEST_PIECE = 1 << 20;

  private long left;
  private int piece;

  private BoundedPart(InputStream in, long most) {
    super(in);
    this.left = most;
  }

  static BoundedPart of(InputStream in, int fileBytes) {
    return new BoundedPart(in, (long) TIMES * fileBytes + LONGEST_PIECE);
  }

  @Override
  public int read() throws IOException {
    byte[] one = new byte[1];
    return read(one, 0, 1) < 0 ? -1 : one[0] & 0xff;
  }

  @Override
  public int read(byte[] into, int offset, int length) throws IOException {
    int count = in.read(into, offset, length);
    left -= Math.max(0, count);
    for (int i = offset; i < offset + count; i++) {
      piece = into[i] == '>' ? 0 : piece + 1;
      if (piece > LONGEST_PIECE) {
        throw new WorkbookFault(ImportProblem.WORKBOOK_LARGE);
      }
    }
    if (left < 0) {
      throw new WorkbookFault(ImportProblem.WORKBOOK_LARGE);
    }
    return count;
  }

  @Override
  public long skip(long count) throws IOException {
    throw new UnsupportedOperationException("parts are read, not skipped");
  }
}
