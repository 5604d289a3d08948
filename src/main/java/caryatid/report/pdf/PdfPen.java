package caryatid.report.pdf;

import caryatid.chart.mark.Drawing;
import caryatid.chart.mark.PaperPoint;
import caryatid.chart.mark.PrintableText;
import caryatid.chart.mark.Style;
import caryatid.chart.mark.Style.Ink;
import caryatid.chart.mark.Style.Lettering;
import caryatid.report.pages.Paper;
import java.awt.Color;
import java.io.Closeable;
import java.io.IOException;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.apache.pdfbox.util.Matrix;

/** Writes and draws on the pages of a document, in millimetres from a page's left and top edge. */
final class PdfPen implements Closeable {
  private final PDDocument document;
  private final PdfFonts fonts;
  private final StructureTags tags;
  private final Paper paper;
  private PDPage page;
  private PDPageContentStream stream;

  PdfPen(PDDocument document, PdfFonts fonts, StructureTags tags, Paper paper) throws IOException {
    this.document = document;
    this.fonts = fonts;
    this.tags = tags;
    this.paper = paper;
    this.page = nextPage();
    this.stream = new PDPageContentStream(document, page);
  }

  StructureTags tags() {
    return tags;
  }

  Paper paper() {
    return paper;
  }

  void turnPage() throws IOException {
    stream.close();
    page = nextPage();
    stream = new PDPageContentStream(document, page);
  }

  private PDPage nextPage() {
    PDPage next = new PDPage(new PDRectangle(points(paper.widthMm()), points(paper.heightMm())));
    document.addPage(next);
    tags.startPage(next);
    return next;
  }

  /** A way of writing a line of text. */
  @FunctionalInterface
  interface Writing {
    void write(PaperPoint base, String words, Lettering lettering, Ink ink) throws IOException;
  }

  /** Writes a line of text for the open element. */
  void write(PaperPoint base, String words, Lettering lettering, Ink ink) throws IOException {
    stream.beginMarkedContent(tags.type(), tags.mark(page));
    show(base, words, lettering, ink);
    stream.endMarkedContent();
  }

  /** Writes a line of text that is not read out: it was before. */
  void writeUnread(PaperPoint base, String words, Lettering lettering, Ink ink) throws IOException {
    stream.beginMarkedContent(COSName.ARTIFACT);
    show(base, words, lettering, ink);
    stream.endMarkedContent();
  }

  private void show(PaperPoint base, String words, Lettering lettering, Ink ink)
      throws IOException {
    stream.beginText();
    stream.setNonStrokingColor(new Color(ink.rgb()));
    String printable = PrintableText.letters(words);
    fonts.show(stream, points(base.rightMm()), down(base.downMm()), printable, lettering);
    stream.endText();
  }

  /** Draws a rule that means nothing by itself. */
  void rule(PaperPoint from, PaperPoint to, double widthMm, Ink ink) throws IOException {
    stream.beginMarkedContent(COSName.ARTIFACT);
    stream.setStrokingColor(new Color(ink.rgb()));
    stream.setLineWidth(points(widthMm));
    stream.moveTo(points(from.rightMm()), down(from.downMm()));
    stream.lineTo(points(to.rightMm()), down(to.downMm()));
    stream.stroke();
    stream.endMarkedContent();
  }

  /** Draws a drawing for the open element. */
  void draw(Drawing drawing, PaperPoint corner) throws IOException {
    PDFormXObject form = DrawingForm.of(drawing, document, fonts);
    stream.beginMarkedContent(tags.type(), tags.mark(page));
    stream.saveGraphicsState();
    stream.transform(
        Matrix.getTranslateInstance(
            points(corner.rightMm()), down(corner.downMm() + drawing.heightMm())));
    stream.drawForm(form);
    stream.restoreGraphicsState();
    stream.endMarkedContent();
  }

  /** Shows a photograph for the open element. */
  void photograph(byte[] jpegOrPng, PaperPoint corner, double widthMm, double heightMm)
      throws IOException {
    PDImageXObject picture = PDImageXObject.createFromByteArray(document, jpegOrPng, "photograph");
    stream.beginMarkedContent(tags.type(), tags.mark(page));
    stream.drawImage(
        picture,
        points(corner.rightMm()),
        down(corner.downMm() + heightMm),
        points(widthMm),
        points(heightMm));
    stream.endMarkedContent();
  }

  private float down(double mm) {
    return points(paper.heightMm() - mm);
  }

  static float points(double mm) {
    return (float) (mm / Style.MM_PER_POINT);
  }

  @Override
  public void close() throws IOException {
    stream.close();
  }
}
