package caryatid.report.pdf;

import caryatid.chart.mark.Fonts;
import caryatid.chart.mark.Fonts.FontFile;
import caryatid.chart.mark.Fonts.TextRun;
import caryatid.chart.mark.Style.Lettering;
import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2DFontTextDrawer;
import java.awt.Font;
import java.io.IOException;
import java.io.InputStream;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/**
 * The drawings' letters, embedded once in a document for its text and its drawings alike; those for
 * signs only where there are such signs.
 */
final class PdfFonts {
  private final PDDocument document;
  private final Map<FontFile, PDFont> embedded = new EnumMap<>(FontFile.class);

  PdfFonts(PDDocument document) throws IOException {
    this.document = document;
    embedded(FontFile.REGULAR);
    embedded(FontFile.BOLD);
  }

  private PDFont embedded(FontFile file) throws IOException {
    if (!embedded.containsKey(file)) {
      embedded.put(file, PDType0Font.load(document, parsed(file), true));
    }
    return embedded.get(file);
  }

  /**
   * A font, each letter drawn as it is: none is replaced for its neighbours, which would take a
   * third of a report's time. It lies in memory until the document is saved, and holds no file.
   */
  private static TrueTypeFont parsed(FontFile file) throws IOException {
    try (InputStream stream = file.open()) {
      TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(stream));
      font.setEnableGsub(false);
      return font;
    }
  }

  /** Writes a line of text in a text object that has just begun, points from left and foot. */
  void show(PDPageContentStream stream, float left, float up, String words, Lettering lettering)
      throws IOException {
    List<TextRun> runs = Fonts.runs(words, lettering);
    for (int i = 0; i < runs.size(); i++) {
      stream.setFont(embedded(runs.get(i).file()), (float) lettering.points());
      if (i == 0) {
        stream.newLineAtOffset(left, up);
      }
      stream.showText(runs.get(i).words());
    }
  }

  /** Writes a canvas's text with these fonts. */
  PdfBoxGraphics2DFontTextDrawer forCanvas() {
    return new PdfBoxGraphics2DFontTextDrawer() {
      @Override
      protected PDFont mapFont(Font font, IFontTextDrawerEnv env) throws IOException {
        return embedded(file(font));
      }
    };
  }

  private static FontFile file(Font font) {
    return Arrays.stream(FontFile.values())
        .filter(file -> file.font().getFontName().equals(font.getFontName()))
        .findFirst()
        .orElseThrow();
  }
}
