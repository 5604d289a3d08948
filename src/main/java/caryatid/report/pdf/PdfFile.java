package caryatid.report.pdf;

import java.io.IOException;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;

/** Opens documents. */
final class PdfFile {
  private PdfFile() {}

  /**
   * Opens a document; the caller closes it.
   *
   * @throws IOException if it is none, whatever the library says of it
   */
  static PDDocument load(byte[] pdf) throws IOException {
    try {
      return Loader.loadPDF(pdf);
    } catch (RuntimeException | StackOverflowError e) {
      throw new IOException(e.getClass().getSimpleName(), e);
    }
  }
}
