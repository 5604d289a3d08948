package caryatid.report.pdf;

import caryatid.report.pages.Paper;
import caryatid.report.pages.ReportContent;
import caryatid.wording.Wording;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.OffsetDateTime;
import java.util.OptionalInt;
import org.apache.pdfbox.filter.Filter;
import org.apache.pdfbox.pdmodel.PDDocument;

/** What every report has as a PDF: tagged pages with footers, made to last. */
public final class PdfFrame {
  /** A report with its recording has about so many. */
  private static final int USUAL_BYTES = 1 << 19;

  static {
    // The library has no other place for it.
    System.setProperty(Filter.SYSPROP_DEFLATELEVEL, Integer.toString(Packed.LEVEL));
  }

  private PdfFrame() {}

  /**
   * Where a report comes from, as its PDF says.
   *
   * @param program name and version of the program
   * @param layout number of the page's layout, where it has one
   * @param at the time the document is dated: that of what it shows, so that its bytes repeat
   */
  public record DocumentOrigin(String program, OptionalInt layout, OffsetDateTime at) {}

  /**
   * A report as a PDF. The same arguments give the same bytes.
   *
   * @param attachments kept inside
   */
  public static byte[] pdf(
      ReportContent content,
      DocumentOrigin origin,
      Attachments attachments,
      Wording wording,
      Paper paper) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream(USUAL_BYTES);
    try (PDDocument document = new PDDocument()) {
      PdfArchive archive = new PdfArchive(document, content.title(), wording.locale(), origin.at());
      archive.describe(origin.program(), origin.layout());
      archive.attach(attachments);
      write(document, content, wording, paper);
      document.save(bytes);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.toByteArray();
  }

  private static void write(
      PDDocument document, ReportContent content, Wording wording, Paper paper) throws IOException {
    PdfFonts fonts = new PdfFonts(document);
    StructureTags tags = new StructureTags(document);
    try (PdfPen pen = new PdfPen(document, fonts, tags, paper)) {
      new PdfLayout(pen).lay(content);
    }
    tags.finish();
    PdfFooters.write(document, fonts, content.title(), wording);
  }
}
