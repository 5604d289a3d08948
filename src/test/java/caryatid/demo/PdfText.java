package caryatid.demo;

import java.io.IOException;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;

/** The text of a PDF, as PDFBox finds it. */
public final class PdfText {
  private PdfText() {}

  /** The text with its lines. */
  public static String lines(byte[] pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      return new PDFTextStripper().getText(document);
    }
  }

  /** The text with one blank for each gap between words. */
  public static String running(byte[] pdf) throws IOException {
    return lines(pdf).replaceAll("\\s+", " ");
  }
}
