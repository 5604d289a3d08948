package caryatid.report;

import caryatid.remark.Argument;
import caryatid.report.pages.Block;
import caryatid.report.pages.Content;
import caryatid.report.pages.FittingEnd;
import caryatid.report.pages.FittingNow;
import caryatid.report.pages.FittingOffsets;
import caryatid.report.pages.FittingStory;
import caryatid.report.pages.FittingTimeline;
import caryatid.report.pages.Paper;
import caryatid.report.pages.Printing;
import caryatid.report.pdf.PdfArchive;
import caryatid.report.pdf.PdfFonts;
import caryatid.report.pdf.PdfFooters;
import caryatid.report.pdf.PdfLayout;
import caryatid.report.pdf.PdfPen;
import caryatid.report.pdf.Tags;
import caryatid.views.RecordView;
import caryatid.wording.Wording;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.apache.pdfbox.pdmodel.PDDocument;

/** The report of a whole fitting record. */
public final class FittingReport {
  private FittingReport() {}

  /**
   * A record as a PDF (PDF/A-3, level A). The same record gives the same bytes; the document is
   * dated with the newest entry's time.
   *
   * @param program name and version of the program
   */
  public static byte[] pdf(FittingStory story, String program, Wording wording, Paper paper) {
    Content content = content(story, program, wording, paper);
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (PDDocument document = new PDDocument()) {
      new PdfArchive(document, content.title(), wording.locale(), newest(story.view()))
          .describe(program, OptionalInt.empty());
      PdfFonts fonts = new PdfFonts(document);
      Tags tags = new Tags(document);
      try (PdfPen pen = new PdfPen(document, fonts, tags, paper)) {
        new PdfLayout(pen).lay(content);
      }
      tags.finish();
      PdfFooters.write(document, fonts, content.title(), wording);
      document.save(bytes);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.toByteArray();
  }

  static Content content(FittingStory story, String program, Wording wording, Paper paper) {
    String title = wording.fill("FittingReport.TITLE", Argument.text(story.view().code().text()));
    double widthMm = paper.widthMm() - 2 * PdfLayout.MARGIN_MM;
    List<Block> blocks = new ArrayList<>(new FittingNow(story.view(), wording).blocks(title));
    blocks.addAll(new FittingOffsets(story.view(), wording).blocks());
    blocks.addAll(new FittingTimeline(story, wording, widthMm).blocks());
    blocks.addAll(new FittingEnd(story.view(), program, wording).blocks());
    return new Content(title, List.of(Printing.printable(blocks)));
  }

  private static OffsetDateTime newest(RecordView view) {
    return view.timeline().get(view.timeline().size() - 1).entry().at();
  }
}
