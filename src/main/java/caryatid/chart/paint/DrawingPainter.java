package caryatid.chart.paint;

import caryatid.chart.mark.Drawing;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.RectangleInsets;

/** Paints planned drawings on any canvas: the paper's millimetres are a plot's two axes. */
public final class DrawingPainter {
  private DrawingPainter() {}

  /**
   * Paints a drawing.
   *
   * @param area where on the canvas, in its own unit; of the drawing's proportions
   */
  public static void paint(Drawing drawing, Graphics2D canvas, Rectangle2D area) {
    XYPlot plot = new XYPlot(null, across(drawing.widthMm()), down(drawing.heightMm()), null);
    plot.setBackgroundPaint(null);
    plot.setOutlineVisible(false);
    plot.setInsets(RectangleInsets.ZERO_INSETS);
    plot.setAxisOffset(RectangleInsets.ZERO_INSETS);
    plot.setNoDataMessage(null);
    drawing.parts().stream()
        .flatMap(part -> part.marks().stream())
        .forEach(mark -> plot.addAnnotation(new MarkAnnotation(mark), false));
    JFreeChart chart = new JFreeChart(null, null, plot, false);
    chart.setBackgroundPaint(null);
    chart.setPadding(RectangleInsets.ZERO_INSETS);
    chart.draw(canvas, area);
  }

  private static NumberAxis across(double mm) {
    NumberAxis axis = new NumberAxis();
    axis.setRange(0, mm);
    axis.setVisible(false);
    return axis;
  }

  private static NumberAxis down(double mm) {
    NumberAxis axis = across(mm);
    axis.setInverted(true);
    return axis;
  }
}
