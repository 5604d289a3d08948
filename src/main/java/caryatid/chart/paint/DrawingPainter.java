package caryatid.chart.paint;

import caryatid.chart.mark.Drawing;
import caryatid.chart.mark.Fonts;
import caryatid.chart.mark.Mark;
import caryatid.chart.mark.PaperPoint;
import caryatid.chart.mark.Style;
import caryatid.chart.mark.Style.Ink;
import caryatid.chart.mark.Style.Pen;
import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/** Paints planned drawings on any canvas. */
public final class DrawingPainter {
  private final Graphics2D canvas;
  private final Rectangle2D area;
  private final double unitsPerMm;

  private DrawingPainter(Drawing drawing, Graphics2D canvas, Rectangle2D area) {
    this.canvas = canvas;
    this.area = area;
    this.unitsPerMm = area.getWidth() / drawing.widthMm();
  }

  /**
   * Paints a drawing.
   *
   * @param area where on the canvas, in its own unit; of the drawing's proportions
   */
  public static void paint(Drawing drawing, Graphics2D canvas, Rectangle2D area) {
    canvas.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    canvas.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    DrawingPainter painter = new DrawingPainter(drawing, canvas, area);
    drawing.parts().stream().flatMap(part -> part.marks().stream()).forEach(painter::paint);
  }

  private void paint(Mark mark) {
    if (mark instanceof Mark.Stroke stroke) {
      canvas.setPaint(MarkCanvas.color(stroke.pen().ink()));
      canvas.setStroke(stroke(stroke.pen()));
      canvas.draw(path(stroke.along()));
    } else if (mark instanceof Mark.Fill fill) {
      Path2D path = path(fill.outline());
      path.closePath();
      canvas.setPaint(MarkCanvas.color(fill.ink()));
      canvas.fill(path);
    } else {
      write((Mark.Text) mark);
    }
  }

  private void write(Mark.Text text) {
    double size = text.lettering().points() * Style.MM_PER_POINT * unitsPerMm;
    canvas.setPaint(MarkCanvas.color(Ink.BLACK));
    double x = x(text.at());
    for (Fonts.TextRun run : Fonts.runs(text.words(), text.lettering())) {
      canvas.setFont(run.file().font().deriveFont((float) size));
      canvas.drawString(run.words(), (float) x, (float) y(text.at()));
      x += run.widthMm(text.lettering()) * unitsPerMm;
    }
  }

  private Path2D path(List<PaperPoint> spots) {
    Path2D path = new Path2D.Double(Path2D.WIND_NON_ZERO, spots.size());
    path.moveTo(x(spots.get(0)), y(spots.get(0)));
    for (int i = 1; i < spots.size(); i++) {
      path.lineTo(x(spots.get(i)), y(spots.get(i)));
    }
    return path;
  }

  private double x(PaperPoint spot) {
    return area.getMinX() + spot.rightMm() * unitsPerMm;
  }

  private double y(PaperPoint spot) {
    return area.getMinY() + spot.downMm() * unitsPerMm;
  }

  private BasicStroke stroke(Pen pen) {
    float[] dashes = new float[pen.dashesMm().size()];
    for (int i = 0; i < dashes.length; i++) {
      dashes[i] = (float) (pen.dashesMm().get(i) * unitsPerMm);
    }
    return new BasicStroke(
        (float) (pen.widthMm() * unitsPerMm),
        BasicStroke.CAP_BUTT,
        BasicStroke.JOIN_ROUND,
        10,
        dashes.length == 0 ? null : dashes,
        0);
  }
}
