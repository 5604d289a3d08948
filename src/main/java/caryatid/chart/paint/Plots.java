package caryatid.chart.paint;

import caryatid.chart.mark.Box;
import java.awt.geom.Rectangle2D;
import org.jfree.chart.axis.AxisSpace;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYItemRenderer;
import org.jfree.chart.ui.RectangleInsets;

/** Plots with nothing of the chart library's own looks, drawn where the paper has room for them. */
final class Plots {
  private Plots() {}

  static XYPlot bare(ValueAxis across, ValueAxis up, XYItemRenderer renderer) {
    XYPlot plot = new XYPlot(null, across, up, renderer);
    plot.setInsets(RectangleInsets.ZERO_INSETS);
    plot.setAxisOffset(RectangleInsets.ZERO_INSETS);
    plot.setBackgroundPaint(null);
    plot.setOutlineVisible(false);
    plot.setNoDataMessage(null);
    plot.setDomainGridlinesVisible(false);
    plot.setRangeGridlinesVisible(false);
    return plot;
  }

  /** Draws a plot, its axes outside the box. */
  static void draw(XYPlot plot, Box box, MarkCanvas canvas) {
    plot.setFixedDomainAxisSpace(new AxisSpace());
    plot.setFixedRangeAxisSpace(new AxisSpace());
    double unit = MarkCanvas.UNITS_PER_MM;
    Rectangle2D area =
        new Rectangle2D.Double(
            box.leftMm() * unit, box.topMm() * unit, box.widthMm() * unit, box.heightMm() * unit);
    plot.draw(canvas, area, null, null, null);
  }
}
