package caryatid.chart.paint;

import caryatid.chart.mark.Style.Ink;
import caryatid.chart.mark.Style.Pen;
import caryatid.loadline.Verdict;
import caryatid.views.OffsetSeries.Measured;
import java.awt.Graphics2D;
import java.awt.Paint;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
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
 * Draws each stand's tolerance as a hatched band, its interval with whiskers, and its result: a
 * full ring within, a cross outside, an empty ring where it is too close to call. What a stand
 * draws means what is said of it.
 */
final class StandRenderer extends XYErrorRenderer {
  private static final long serialVersionUID = 1L;
  private static final double LARGEST_BAND_MM = 9;
  private static final double RADIUS = OffsetsChart.RADIUS_MM * MarkCanvas.UNITS_PER_MM;

  private final transient List<Measured> stands;
  private final transient List<String> says;
  private final double half;

  /**
   * @param says what each stand means, one a stand
   * @param eachMm room for each stand, mm
   */
  StandRenderer(List<Measured> stands, List<String> says, double eachMm) {
    this.stands = List.copyOf(stands);
    this.says = List.copyOf(says);
    this.half = Math.min(LARGEST_BAND_MM, 0.8 * eachMm) / 2 * MarkCanvas.UNITS_PER_MM;
    IntervalBars.prepare(this, 2 * Math.min(RADIUS, half));
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
    marks.begin(Optional.of(says.get(item)));
    double x = across.valueToJava2D(item, area, plot.getDomainAxisEdge());
    Measured m = stands.get(item);
    band(
        canvas,
        x,
        up.valueToJava2D(m.lowestMm(), area, plot.getRangeAxisEdge()),
        up.valueToJava2D(m.recommendedMm(), area, plot.getRangeAxisEdge()),
        up.valueToJava2D(m.highestMm(), area, plot.getRangeAxisEdge()));
    for (int each = 0; each < super.getPassCount(); each++) {
      super.drawItem(
          canvas, state, area, info, plot, across, up, data, series, item, crosshair, each);
    }
    marks.begin(Optional.empty());
  }

  private void band(Graphics2D canvas, double x, double low, double recommended, double high) {
    canvas.setPaint(new Hatch(Pen.HATCH, OffsetsChart.HATCH_MM));
    canvas.fill(new Rectangle2D.Double(x - half, high, 2 * half, low - high));
    canvas.setPaint(MarkCanvas.color(Ink.BROWN));
    canvas.setStroke(new PenStroke(Pen.TARGET));
    for (double y : new double[] {low, high, recommended}) {
      canvas.draw(new Line2D.Double(x - half, y, x + half, y));
    }
  }

  @Override
  public Shape getItemShape(int series, int item) {
    return stands.get(item).verdict() == Verdict.OUTSIDE
        ? cross()
        : new Ellipse2D.Double(-RADIUS, -RADIUS, 2 * RADIUS, 2 * RADIUS);
  }

  private static Shape cross() {
    Path2D cross = new Path2D.Double();
    cross.append(new Line2D.Double(-RADIUS, -RADIUS, RADIUS, RADIUS), false);
    cross.append(new Line2D.Double(-RADIUS, RADIUS, RADIUS, -RADIUS), false);
    return cross;
  }

  @Override
  public boolean getItemShapeFilled(int series, int item) {
    return stands.get(item).verdict() != Verdict.OUTSIDE;
  }

  @Override
  public Paint getItemFillPaint(int series, int item) {
    boolean within = stands.get(item).verdict() == Verdict.WITHIN;
    return MarkCanvas.color(within ? Ink.BLUE : Ink.WHITE);
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
