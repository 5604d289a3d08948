package caryatid.report.pdf;

import java.io.IOException;
import java.io.OutputStream;
import java.util.zip.Deflater;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;

/** Puts bytes into streams, packed (ISO 32000-1, 7.4.4). */
final class Packed {
  /** How much effort goes into packing, 1 to 9: 4 takes twice as long and saves a tenth. */
  static final int LEVEL = 1;

  private static final int CHUNK = 1 << 14;

  private Packed() {}

  /** Gives a stream its content. */
  static void put(byte[] bytes, COSStream stream) throws IOException {
    stream.setItem(COSName.FILTER, COSName.FLATE_DECODE);
    Deflater deflater = new Deflater(LEVEL);
    try (OutputStream out = stream.createRawOutputStream()) {
      byte[] chunk = new byte[CHUNK];
      deflater.setInput(bytes);
      deflater.finish();
      while (!deflater.finished()) {
        out.write(chunk, 0, deflater.deflate(chunk));
      }
    } finally {
      deflater.end();
    }
  }
}
