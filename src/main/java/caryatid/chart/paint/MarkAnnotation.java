package caryatid.chart.paint;

import caryatid.chart.mark.Fonts;
import caryatid.chart.mark.Mark;
import caryatid.chart.mark.PaperPoint;
import caryatid.chart.mark.Style;
import caryatid.chart.mark.Style.Ink;
import caryatid.chart.mark.Style.Pen;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.jfree.chart.annotations.AbstractXYAnnotation;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.PlotRenderingInfo;
import org.jfree.chart.plot.XYPlot;

/** A mark as a plot's annotation. */
final class MarkAnnotation extends AbstractXYAnnotation {
  private static final long serialVersionUID = 1L;

  private final transient Mark mark;

  MarkAnnotation(Mark mark) {
    this.mark = mark;
  }

  @Override
  public void draw(
      Graphics2D canvas,
      XYPlot plot,
      Rectangle2D area,
      ValueAxis across,
      ValueAxis down,
      int rendererIndex,
      PlotRenderingInfo info) {
    Canvas paper = new Canvas(canvas, plot, area, across, down);
    if (mark instanceof Mark.Stroke stroke) {
      paper.draw(stroke);
    } else if (mark instanceof Mark.Fill fill) {
      paper.fill(fill);
    } else if (mark instanceof Mark.Text text) {
      paper.write(text);
    }
  }

  private record Canvas(
      Graphics2D canvas, XYPlot plot, Rectangle2D area, ValueAxis across, ValueAxis down) {

    void draw(Mark.Stroke stroke) {
      canvas.setPaint(color(stroke.pen().ink()));
      canvas.setStroke(stroke(stroke.pen()));
      canvas.draw(path(stroke.along()));
    }

    void fill(Mark.Fill fill) {
      Path2D path = path(fill.outline());
      path.closePath();
      canvas.setPaint(color(fill.ink()));
      canvas.fill(path);
    }

    void write(Mark.Text text) {
      double size = text.lettering().points() * Style.MM_PER_POINT * unitsPerMm();
      canvas.setPaint(color(Ink.BLACK));
      canvas.setFont(Fonts.font(text.lettering()).deriveFont((float) size));
      canvas.drawString(text.words(), (float) x(text.at()), (float) y(text.at()));
    }

    private Path2D path(List<PaperPoint> spots) {
      Path2D path = new Path2D.Double();
      path.moveTo(x(spots.get(0)), y(spots.get(0)));
      spots.subList(1, spots.size()).forEach(spot -> path.lineTo(x(spot), y(spot)));
      return path;
    }

    private double x(PaperPoint spot) {
      return across.valueToJava2D(spot.rightMm(), area, plot.getDomainAxisEdge());
    }

    private double y(PaperPoint spot) {
      return down.valueToJava2D(spot.downMm(), area, plot.getRangeAxisEdge());
    }

    private double unitsPerMm() {
      return area.getWidth() / across.getRange().getLength();
    }

    private BasicStroke stroke(Pen pen) {
      float[] dashes = new float[pen.dashesMm().size()];
      for (int i = 0; i < dashes.length; i++) {
        dashes[i] = (float) (pen.dashesMm().get(i) * unitsPerMm());
      }
      return new BasicStroke(
          (float) (pen.widthMm() * unitsPerMm()),
          BasicStroke.CAP_BUTT,
          BasicStroke.JOIN_ROUND,
          10,
          dashes.length == 0 ? null : dashes,
          0);
    }

    private static Color color(Ink ink) {
      return new Color(ink.rgb());
    }
  }
}
