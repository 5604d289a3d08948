package caryatid.report.picture;

import caryatid.chart.mark.Drawing;
import caryatid.chart.mark.Drawing.Part;
import caryatid.chart.mark.Mark;
import caryatid.chart.mark.PaperPoint;
import caryatid.chart.mark.Style;
import caryatid.chart.mark.Style.Ink;
import caryatid.chart.mark.Style.Pen;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * Drawings as SVG (W3C, Scalable Vector Graphics 1.1): a user unit is a millimetre, text is text. A
 * part that says something can be reached by keyboard and hovering.
 */
public final class Svg {
  /** A thousandth of a millimetre is finer than any printer. */
  private static final int DECIMALS = 3;

  private Svg() {}

  /** A drawing as a file of its own. */
  public static String file(Drawing drawing) {
    return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n" + element(drawing, "");
  }

  /** A drawing as an element of a page, with what its parts say shown on hovering and on focus. */
  public static String inside(Drawing drawing) {
    return element(drawing, SvgTooltips.of(drawing));
  }

  private static String element(Drawing drawing, String above) {
    StringBuilder out = new StringBuilder();
    out.append("<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"drawing\" role=\"group\"")
        .append(" aria-label=\"")
        .append(XmlEscapes.escape(drawing.alternative()))
        .append("\" width=\"")
        .append(number(drawing.widthMm()))
        .append("mm\" height=\"")
        .append(number(drawing.heightMm()))
        .append("mm\" viewBox=\"0 0 ")
        .append(number(drawing.widthMm()))
        .append(' ')
        .append(number(drawing.heightMm()))
        .append("\">\n");
    int number = 0;
    for (Part part : drawing.parts()) {
      append(out, part, number++);
    }
    return out.append(above).append("</svg>\n").toString();
  }

  private static void append(StringBuilder out, Part part, int number) {
    out.append(
        part.says()
            .map(
                says ->
                    "<g class=\"value part-%2$d\" tabindex=\"0\" role=\"img\" aria-label=\"%1$s\"><title>%1$s</title>\n"
                        .formatted(XmlEscapes.escape(says), number))
            .orElse("<g aria-hidden=\"true\">\n"));
    part.marks().forEach(mark -> out.append(element(mark)));
    out.append("</g>\n");
  }

  private static String element(Mark mark) {
    if (mark instanceof Mark.Text text) {
      return text(text);
    }
    if (mark instanceof Mark.Fill fill) {
      return "<path d=\"%sZ\" fill=\"%s\"/>\n".formatted(path(fill.outline()), color(fill.ink()));
    }
    Mark.Stroke stroke = (Mark.Stroke) mark;
    return "<path d=\"%s\" fill=\"none\" stroke=\"%s\" stroke-width=\"%s\"%s stroke-linejoin=\"round\"/>\n"
        .formatted(
            path(stroke.along()),
            color(stroke.pen().ink()),
            number(stroke.pen().widthMm()),
            dashes(stroke.pen()));
  }

  static String text(Mark.Text text) {
    return "<text x=\"%s\" y=\"%s\" font-family=\"Liberation Sans, Arial, Helvetica, sans-serif\" font-size=\"%s\"%s textLength=\"%s\" lengthAdjust=\"spacingAndGlyphs\">%s</text>\n"
        .formatted(
            number(text.at().rightMm()),
            number(text.at().downMm()),
            number(text.lettering().points() * Style.MM_PER_POINT),
            text.lettering().bold() ? " font-weight=\"bold\"" : "",
            number(text.box().rightMm() - text.box().leftMm()),
            XmlEscapes.escape(text.words()));
  }

  private static String path(List<PaperPoint> spots) {
    return "M"
        + spots.stream()
            .map(spot -> number(spot.rightMm()) + " " + number(spot.downMm()))
            .collect(Collectors.joining("L"));
  }

  private static String dashes(Pen pen) {
    return pen.dashesMm().isEmpty()
        ? ""
        : pen.dashesMm().stream()
            .map(Svg::number)
            .collect(Collectors.joining(" ", " stroke-dasharray=\"", "\""));
  }

  private static String color(Ink ink) {
    return String.format(Locale.ROOT, "#%06x", ink.rgb());
  }

  static String number(double mm) {
    BigDecimal rounded = new BigDecimal(mm).setScale(DECIMALS, RoundingMode.HALF_UP);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }
}
