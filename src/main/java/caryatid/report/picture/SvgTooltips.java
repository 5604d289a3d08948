package caryatid.report.picture;

import caryatid.chart.mark.Drawing;
import caryatid.chart.mark.Drawing.Part;
import caryatid.chart.mark.Fonts;
import caryatid.chart.mark.Mark;
import caryatid.chart.mark.PaperPoint;
import caryatid.chart.mark.Style.Lettering;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * What a drawing's parts say, over the drawing's foot while a part is hovered over or has focus.
 */
public final class SvgTooltips {
  private static final double PADDING_MM = 1;
  private static final Lettering LETTERING = Lettering.PLAIN;

  private SvgTooltips() {}

  static String of(Drawing drawing) {
    StringBuilder out = new StringBuilder();
    for (int i = 0; i < drawing.parts().size(); i++) {
      Part part = drawing.parts().get(i);
      String name = "tip tip-" + i;
      part.says().ifPresent(says -> out.append(tip(drawing, name, says)));
    }
    return out.toString();
  }

  private static String tip(Drawing drawing, String name, String says) {
    double room = drawing.widthMm() - 2 * PADDING_MM;
    List<String> lines = Fonts.wrap(says, LETTERING, room);
    double height = lines.size() * LETTERING.lineMm() + 2 * PADDING_MM;
    double top = drawing.heightMm() - height;
    StringBuilder out = new StringBuilder();
    out.append("<g class=\"%s\" aria-hidden=\"true\">".formatted(name));
    out.append(
        "<rect x=\"0\" y=\"%s\" width=\"%s\" height=\"%s\"/>"
            .formatted(Svg.number(top), Svg.number(drawing.widthMm()), Svg.number(height)));
    double down = top + PADDING_MM + LETTERING.ascentMm();
    for (String line : lines) {
      out.append(Svg.text(new Mark.Text(new PaperPoint(PADDING_MM, down), line, LETTERING)));
      down += LETTERING.lineMm();
    }
    return out.append("</g>\n").toString();
  }

  /** Shows each tip while its part is hovered over or has focus. */
  public static String style(int parts) {
    return IntStream.range(0, parts)
        .mapToObj(i -> ".part-%1$d:hover~.tip-%1$d,.part-%1$d:focus~.tip-%1$d".formatted(i))
        .collect(Collectors.joining(",", "", "{visibility:visible}\n"));
  }
}
