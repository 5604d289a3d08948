package caryatid.report.pdf;

import caryatid.chart.mark.PrintableText;
import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2D;
import java.io.IOException;
import org.apache.pdfbox.pdmodel.PDDocument;

/** A canvas that writes no letter which the embedded letters lack. */
final class PrintableCanvas extends PdfBoxGraphics2D {
  PrintableCanvas(PDDocument document, float width, float height) throws IOException {
    super(document, width, height);
  }

  @Override
  public void drawString(String words, int x, int y) {
    super.drawString(PrintableText.letters(words), x, y);
  }

  @Override
  public void drawString(String words, float x, float y) {
    super.drawString(PrintableText.letters(words), x, y);
  }
}
