package caryatid.report.pdf;

import caryatid.chart.mark.Drawing;
import caryatid.chart.mark.Fonts;
import caryatid.chart.mark.Mark;
import caryatid.chart.mark.PaperPoint;
import caryatid.chart.mark.PrintableText;
import caryatid.chart.mark.Style;
import caryatid.chart.mark.Style.Ink;
import caryatid.chart.mark.Style.Pen;
import java.io.IOException;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;

/**
 * A drawing as a form (ISO 32000-1, 8.10): its marks as paths and letters, in points from its left
 * and lower edge.
 */
final class DrawingForm {
  /** Lines through more points are recorded curves, whose bytes are most of a report's. */
  private static final int LONG = 200;

  private static final Map<Pen, String> PENS = new EnumMap<>(Pen.class);

  static {
    for (Pen pen : Pen.values()) {
      PENS.put(pen, pen(pen));
    }
  }

  private final Drawing drawing;
  private final PdfFonts fonts;
  private final PDResources resources = new PDResources();
  private final ContentBytes content = new ContentBytes();
  private Pen pen;
  private Ink ink = Ink.BLACK;

  private DrawingForm(Drawing drawing, PdfFonts fonts) {
    this.drawing = drawing;
    this.fonts = fonts;
  }

  static PDFormXObject of(Drawing drawing, PDDocument document, PdfFonts fonts) throws IOException {
    DrawingForm made = new DrawingForm(drawing, fonts);
    PDFormXObject form = new PDFormXObject(document);
    form.setBBox(
        new PDRectangle(PdfPen.points(drawing.widthMm()), PdfPen.points(drawing.heightMm())));
    form.setResources(made.resources);
    Packed.put(made.content(), form.getCOSObject());
    return form;
  }

  private byte[] content() throws IOException {
    content.operator("1 j");
    for (Drawing.Part part : drawing.parts()) {
      for (Mark mark : part.marks()) {
        add(mark);
      }
    }
    return content.toBytes();
  }

  private void add(Mark mark) throws IOException {
    if (mark instanceof Mark.Stroke stroke) {
      take(stroke.pen());
      path(stroke.along());
      content.operator("S");
    } else if (mark instanceof Mark.Fill fill) {
      take(fill.ink());
      path(fill.outline());
      content.operator("h f");
    } else {
      write((Mark.Text) mark);
    }
  }

  private void take(Pen next) {
    if (next != pen) {
      pen = next;
      content.operator(PENS.get(next));
    }
  }

  private void take(Ink next) {
    if (next != ink) {
      ink = next;
      content.operator(color(next) + " rg");
    }
  }

  /** A pen's colour, width and dashes. */
  private static String pen(Pen pen) {
    String dashes =
        pen.dashesMm().stream()
            .map(mm -> String.format(Locale.ROOT, "%.2f", points(mm)))
            .collect(Collectors.joining(" "));
    return String.format(
        Locale.ROOT, "%s RG %.2f w [%s] 0 d", color(pen.ink()), points(pen.widthMm()), dashes);
  }

  private static String color(Ink ink) {
    return String.format(
        Locale.ROOT,
        "%.3f %.3f %.3f",
        (ink.rgb() >> 16 & 0xff) / 255.0,
        (ink.rgb() >> 8 & 0xff) / 255.0,
        (ink.rgb() & 0xff) / 255.0);
  }

  private void path(List<PaperPoint> spots) {
    boolean isLong = spots.size() > LONG;
    for (int i = 0; i < spots.size(); i++) {
      double right = points(spots.get(i).rightMm());
      double up = up(spots.get(i).downMm());
      if (isLong) {
        content.roughNumber(right).roughNumber(up);
      } else {
        content.number(right).number(up);
      }
      content.operator(i == 0 ? "m" : "l");
    }
  }

  private void write(Mark.Text text) throws IOException {
    take(Ink.BLACK);
    double rightMm = text.at().rightMm();
    String words = PrintableText.letters(text.words());
    for (Fonts.TextRun run : Fonts.runs(words, text.lettering())) {
      PDFont font = fonts.embedded(run.file());
      content.operator("BT");
      content.operator("/" + resources.add(font).getName());
      content.number(text.lettering().points()).operator("Tf");
      content.number(points(rightMm)).number(up(text.at().downMm())).operator("Td");
      content.letters(fonts.codes(run)).operator("Tj");
      content.operator("ET");
      rightMm += run.widthMm(text.lettering());
    }
  }

  private double up(double downMm) {
    return points(drawing.heightMm() - downMm);
  }

  private static double points(double mm) {
    return mm / Style.MM_PER_POINT;
  }
}
