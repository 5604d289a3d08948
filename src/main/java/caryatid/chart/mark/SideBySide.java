package caryatid.chart.mark;

import caryatid.chart.mark.Drawing.Part;
import caryatid.chart.mark.Mark.Fill;
import caryatid.chart.mark.Mark.Stroke;
import caryatid.chart.mark.Mark.Text;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Combines drawings of the same size into one, side by side. */
public final class SideBySide {
  private SideBySide() {}

  /** How many drawings fit a width. */
  public static int perRow(double widthMm, double eachMm, double gapMm) {
    return (int) Math.max(1, Math.floor((widthMm + gapMm) / (eachMm + gapMm)));
  }

  /**
   * One drawing of several.
   *
   * @param name short and unique within a report, for files
   * @param drawings at least one, from the left
   * @param gapMm between two, mm
   * @param widthMm width of the combined drawing, mm
   */
  public static Drawing of(String name, List<Drawing> drawings, double gapMm, double widthMm) {
    List<Part> parts = new ArrayList<>();
    double left = 0;
    double height = 0;
    for (Drawing drawing : drawings) {
      for (Part part : drawing.parts()) {
        double by = left;
        parts.add(new Part(part.says(), part.marks().stream().map(m -> moved(m, by)).toList()));
      }
      left += drawing.widthMm() + gapMm;
      height = Math.max(height, drawing.heightMm());
    }
    String says = drawings.stream().map(Drawing::alternative).collect(Collectors.joining(" "));
    return new Drawing(name, widthMm, height, says, parts);
  }

  private static Mark moved(Mark mark, double byMm) {
    if (mark instanceof Stroke stroke) {
      return new Stroke(moved(stroke.along(), byMm), stroke.pen());
    }
    if (mark instanceof Fill fill) {
      return new Fill(moved(fill.outline(), byMm), fill.ink());
    }
    Text text = (Text) mark;
    return new Text(text.at().moved(byMm, 0), text.words(), text.lettering());
  }

  private static List<PaperPoint> moved(List<PaperPoint> spots, double byMm) {
    return spots.stream().map(s -> s.moved(byMm, 0)).toList();
  }
}
