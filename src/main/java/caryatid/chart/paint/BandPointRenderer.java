package caryatid.chart.paint;

import caryatid.chart.mark.Style.Ink;
import caryatid.chart.mark.Style.Pen;
import caryatid.chart.paint.BandChart.BandPoint;
import caryatid.chart.paint.BandChart.PointKind;
import java.awt.Graphics2D;
import java.awt.Paint;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.CrosshairState;
import org.jfree.chart.plot.PlotRenderingInfo;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYErrorRenderer;
import org.jfree.chart.renderer.xy.XYItemRendererState;
import org.jfree.data.xy.XYDataset;

/**
 * Draws points with their intervals: a full ring for what was measured, an empty one for what is
 * expected. What a point draws means what is said of it.
 */
final class BandPointRenderer extends XYErrorRenderer {
  private static final long serialVersionUID = 1L;
  private static final double RADIUS = OffsetsChart.RADIUS_MM * MarkCanvas.UNITS_PER_MM;

  private final transient List<BandPoint> points;

  BandPointRenderer(List<BandPoint> points) {
    this.points = List.copyOf(points);
    IntervalBars.prepare(this, 2 * RADIUS);
  }

  @Override
  public int getPassCount() {
    return 1;
  }

  @Override
  public void drawItem(
      Graphics2D canvas,
      XYItemRendererState state,
      Rectangle2D area,
      PlotRenderingInfo info,
      XYPlot plot,
      ValueAxis across,
      ValueAxis up,
      XYDataset data,
      int series,
      int item,
      CrosshairState crosshair,
      int pass) {
    MarkCanvas marks = (MarkCanvas) canvas;
    BandPoint point = points.get(item);
    marks.begin(point.says());
    setDrawYError(point.low() < point.high());
    for (int each = 0; each < super.getPassCount(); each++) {
      super.drawItem(
          canvas, state, area, info, plot, across, up, data, series, item, crosshair, each);
    }
    marks.begin(Optional.empty());
  }

  @Override
  public Shape getItemShape(int series, int item) {
    return new Ellipse2D.Double(-RADIUS, -RADIUS, 2 * RADIUS, 2 * RADIUS);
  }

  @Override
  public Paint getItemFillPaint(int series, int item) {
    boolean measured = points.get(item).kind() == PointKind.MEASURED;
    return MarkCanvas.color(measured ? Ink.BLUE : Ink.WHITE);
  }

  @Override
  public Paint getItemPaint(int series, int item) {
    return MarkCanvas.color(Ink.BLUE);
  }

  @Override
  public Stroke getItemStroke(int series, int item) {
    return new PenStroke(Pen.LOAD_LINE);
  }

  @Override
  public Stroke getItemOutlineStroke(int series, int item) {
    return new PenStroke(Pen.LOAD_LINE);
  }
}
