package caryatid.chart.paint;

import caryatid.chart.mark.Fonts;
import caryatid.chart.mark.Style.Lettering;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;
import org.jfree.chart.axis.AxisState;
import org.jfree.chart.axis.NumberTick;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.TextAnchor;

/** An axis of time from 0, whose last number stays on the paper. */
final class TimeAxis extends StepAxis {
  private static final long serialVersionUID = 1L;

  private final double besideMm;

  /**
   * @param besideMm room to the right of the axis, mm
   */
  TimeAxis(double durationS, double stepS, double besideMm, DoubleFunction<String> words) {
    super(0, durationS, stepS, words);
    this.besideMm = besideMm;
  }

  @Override
  @SuppressWarnings("unchecked") // the library's list is one of ticks, by its documentation
  public List<NumberTick> refreshTicks(
      Graphics2D canvas, AxisState state, Rectangle2D area, RectangleEdge edge) {
    List<NumberTick> ticks = new ArrayList<>();
    for (NumberTick tick : (List<NumberTick>) super.refreshTicks(canvas, state, area, edge)) {
      ticks.add(onPaper(tick, area, edge));
    }
    return ticks;
  }

  private NumberTick onPaper(NumberTick tick, Rectangle2D area, RectangleEdge edge) {
    double half = Fonts.widthMm(tick.getText(), Lettering.PLAIN) / 2;
    double right = area.getMaxX() - valueToJava2D(tick.getValue(), area, edge);
    return right / MarkCanvas.UNITS_PER_MM + besideMm >= half
        ? tick
        : new NumberTick(
            tick.getTickType(),
            tick.getValue(),
            tick.getText(),
            TextAnchor.TOP_RIGHT,
            TextAnchor.TOP_RIGHT,
            0);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof TimeAxis axis && super.equals(other) && axis.besideMm == besideMm;
  }

  @Override
  public int hashCode() {
    return super.hashCode();
  }
}
