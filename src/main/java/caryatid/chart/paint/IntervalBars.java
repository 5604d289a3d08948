package caryatid.chart.paint;

import caryatid.chart.mark.Style.Ink;
import caryatid.chart.mark.Style.Pen;
import org.jfree.chart.renderer.xy.XYErrorRenderer;

/** How points with their intervals look in every chart: filled, outlined, the interval in blue. */
final class IntervalBars {
  private IntervalBars() {}

  /**
   * Sets a renderer to it.
   *
   * @param cap length of the strokes at an interval's ends, in the canvas's units
   */
  static void prepare(XYErrorRenderer renderer, double cap) {
    renderer.setDefaultLinesVisible(false);
    renderer.setDefaultShapesVisible(true);
    renderer.setUseFillPaint(true);
    renderer.setDrawOutlines(true);
    renderer.setDrawXError(false);
    renderer.setCapLength(cap);
    renderer.setErrorPaint(MarkCanvas.color(Ink.BLUE));
    renderer.setErrorStroke(new PenStroke(Pen.LOAD_LINE));
  }
}
