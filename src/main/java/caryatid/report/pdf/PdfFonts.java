package caryatid.report.pdf;

import caryatid.chart.mark.Fonts;
import caryatid.chart.mark.Style.Lettering;
import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2DFontTextDrawer;
import java.awt.Font;
import java.io.IOException;
import java.io.InputStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** The drawings' letters, embedded once in a document for its text and its drawings alike. */
final class PdfFonts {
  private final PDFont regular;
  private final PDFont bold;

  PdfFonts(PDDocument document) throws IOException {
    this.regular = load(document, false);
    this.bold = load(document, true);
  }

  private static PDFont load(PDDocument document, boolean bold) throws IOException {
    try (InputStream file = Fonts.open(bold)) {
      return PDType0Font.load(document, file, true);
    }
  }

  PDFont of(Lettering lettering) {
    return lettering.bold() ? bold : regular;
  }

  /** Writes a canvas's text with these fonts. */
  PdfBoxGraphics2DFontTextDrawer forCanvas() {
    return new PdfBoxGraphics2DFontTextDrawer() {
      @Override
      protected PDFont mapFont(Font font, IFontTextDrawerEnv env) {
        return font.getFontName().contains("Bold") ? bold : regular;
      }
    };
  }
}
