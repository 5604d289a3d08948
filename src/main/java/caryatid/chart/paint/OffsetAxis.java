package caryatid.chart.paint;

import caryatid.chart.mark.Style.Ink;
import caryatid.chart.mark.Style.Lettering;
import caryatid.chart.mark.Style.Pen;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;
import org.jfree.chart.axis.AxisState;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTick;
import org.jfree.chart.axis.TickType;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.chart.ui.TextAnchor;

/** A scale of offsets: a tick every 10 mm, a number every 50 mm, none beyond a break. */
final class OffsetAxis extends NumberAxis {
  private static final long serialVersionUID = 1L;
  private static final int TICK_MM = 10;
  private static final int NUMBER_MM = 50;
  private static final double MINOR_MM = 0.8;
  private static final double MAJOR_MM = 1.3;
  private static final double GAP_MM = 0.15;

  private final double lowestMm;
  private final double highestMm;
  private final transient DoubleFunction<String> words;

  /**
   * @param lowestMm the lowest offset that may have a tick, mm
   * @param highestMm the highest one, mm
   * @param words how a number is written
   */
  OffsetAxis(double lowestMm, double highestMm, DoubleFunction<String> words) {
    this.lowestMm = lowestMm;
    this.highestMm = highestMm;
    this.words = words;
    double unit = MarkCanvas.UNITS_PER_MM;
    setAxisLineStroke(new PenStroke(Pen.AXIS));
    setAxisLinePaint(MarkCanvas.color(Ink.BLACK));
    setTickMarkStroke(new PenStroke(Pen.AXIS));
    setTickMarkPaint(MarkCanvas.color(Ink.BLACK));
    setTickMarkOutsideLength((float) (MAJOR_MM * unit));
    setMinorTickMarkOutsideLength((float) (MINOR_MM * unit));
    setMinorTickMarksVisible(true);
    setTickLabelFont(MarkCanvas.font(Lettering.PLAIN));
    setTickLabelPaint(MarkCanvas.color(Ink.BLACK));
    setTickLabelInsets(new RectangleInsets((MAJOR_MM + GAP_MM) * unit, 0, 0, 0));
  }

  @Override
  public List<NumberTick> refreshTicks(
      Graphics2D canvas, AxisState state, Rectangle2D area, RectangleEdge edge) {
    List<NumberTick> ticks = new ArrayList<>();
    long from = (long) Math.ceil(lowestMm / TICK_MM);
    for (long i = from; i * TICK_MM <= highestMm; i++) {
      ticks.add(tick(i * TICK_MM));
    }
    return ticks;
  }

  private NumberTick tick(long mm) {
    boolean numbered = mm % NUMBER_MM == 0;
    return new NumberTick(
        numbered ? TickType.MAJOR : TickType.MINOR,
        (double) mm,
        numbered ? words.apply((double) mm) : "",
        TextAnchor.TOP_CENTER,
        TextAnchor.TOP_CENTER,
        0);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof OffsetAxis axis
        && super.equals(other)
        && axis.lowestMm == lowestMm
        && axis.highestMm == highestMm;
  }

  @Override
  public int hashCode() {
    return super.hashCode();
  }
}
