package caryatid.report.pdf;

import caryatid.chart.mark.Fonts;
import caryatid.chart.mark.Fonts.FontFile;
import caryatid.chart.mark.Fonts.TextRun;
import caryatid.chart.mark.Style.Lettering;
import java.io.IOException;
import java.io.InputStream;
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
  /** The fonts as they were read, the same for all documents. */
  private static final Map<FontFile, TrueTypeFont> PARSED = new EnumMap<>(FontFile.class);

  private final PDDocument document;
  private final Map<FontFile, PDFont> embedded = new EnumMap<>(FontFile.class);

  PdfFonts(PDDocument document) throws IOException {
    this.document = document;
    embedded(FontFile.REGULAR);
    embedded(FontFile.BOLD);
  }

  PDFont embedded(FontFile file) throws IOException {
    if (!embedded.containsKey(file)) {
      embedded.put(file, PDType0Font.load(document, parsed(file), true));
    }
    return embedded.get(file);
  }

  private static TrueTypeFont parsed(FontFile file) throws IOException {
    synchronized (PARSED) {
      if (!PARSED.containsKey(file)) {
        PARSED.put(file, parse(file));
      }
      return PARSED.get(file);
    }
  }

  /**
   * A font, each letter drawn as it is: none is replaced for its neighbours, which would take a
   * third of a report's time. It holds no file. The tables that are asked for are read now: what is
   * read later would be read by several threads at a time.
   */
  private static TrueTypeFont parse(FontFile file) throws IOException {
    try (InputStream stream = file.open()) {
      TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(stream));
      font.setEnableGsub(false);
      font.getOS2Windows();
      font.getUnicodeCmapLookup();
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

  /** The numbers of a run's letters in its font, which from now on holds these. */
  byte[] codes(TextRun run) throws IOException {
    PDFont font = embedded(run.file());
    run.words().codePoints().forEach(font::addToSubset);
    return font.encode(run.words());
  }
}
