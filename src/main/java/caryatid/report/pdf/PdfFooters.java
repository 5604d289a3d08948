package caryatid.report.pdf;

import caryatid.chart.mark.Fonts;
import caryatid.chart.mark.Style;
import caryatid.chart.mark.Style.Ink;
import caryatid.chart.mark.Style.Lettering;
import caryatid.remark.Argument;
import caryatid.report.pages.Paper;
import caryatid.wording.Wording;
import java.awt.Color;
import java.io.IOException;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDPageContentStream.AppendMode;

/** The line at the foot of each page: which document, which page of how many. */
final class PdfFooters {
  private static final double BASE_MM = 9;

  private PdfFooters() {}

  static void write(PDDocument document, PdfFonts fonts, String title, Wording wording)
      throws IOException {
    int pages = document.getNumberOfPages();
    for (int i = 0; i < pages; i++) {
      String number = wording.fill("PdfFooters.PAGE", Argument.count(i + 1), Argument.count(pages));
      write(document, document.getPage(i), fonts, title, number);
    }
  }

  private static void write(
      PDDocument document, PDPage page, PdfFonts fonts, String title, String number)
      throws IOException {
    double right = page.getMediaBox().getWidth() - points(Paper.MARGIN_MM);
    double width = points(Fonts.widthMm(number, Lettering.PLAIN));
    try (PDPageContentStream stream =
        new PDPageContentStream(document, page, AppendMode.APPEND, true, true)) {
      stream.beginMarkedContent(COSName.ARTIFACT);
      stream.setNonStrokingColor(new Color(Ink.GREY.rgb()));
      show(stream, fonts, title, points(Paper.MARGIN_MM));
      show(stream, fonts, number, right - width);
      stream.endMarkedContent();
    }
  }

  private static void show(PDPageContentStream stream, PdfFonts fonts, String words, double left)
      throws IOException {
    stream.beginText();
    fonts.show(stream, (float) left, (float) points(BASE_MM), words, Lettering.PLAIN);
    stream.endText();
  }

  private static double points(double mm) {
    return mm / Style.MM_PER_POINT;
  }
}
