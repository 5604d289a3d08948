package caryatid.chart.paint;

import caryatid.chart.mark.Fonts;
import caryatid.chart.mark.Style.Lettering;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.jfree.chart.axis.AxisState;
import org.jfree.chart.axis.NumberTick;
import org.jfree.chart.axis.TickType;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.TextAnchor;

/** An axis with a tick for each of several stands, and as many of their names as there is room. */
final class StandsAxis extends StepAxis {
  private static final long serialVersionUID = 1L;
  private static final double BETWEEN_NAMES_MM = 1.5;

  private final transient List<String> names;

  StandsAxis(List<String> names) {
    super(-0.5, names.size() - 0.5, 1, Double::toString);
    this.names = List.copyOf(names);
  }

  @Override
  public List<NumberTick> refreshTicks(
      Graphics2D canvas, AxisState state, Rectangle2D area, RectangleEdge edge) {
    List<NumberTick> ticks = new ArrayList<>();
    double free = 0;
    for (int i = 0; i < names.size(); i++) {
      double half = Fonts.widthMm(names.get(i), Lettering.PLAIN) / 2;
      double at = valueToJava2D(i, area, edge) / MarkCanvas.UNITS_PER_MM;
      boolean named = at - half >= free && at + half <= area.getMaxX() / MarkCanvas.UNITS_PER_MM;
      ticks.add(
          new NumberTick(
              TickType.MAJOR,
              (double) i,
              named ? names.get(i) : "",
              TextAnchor.TOP_CENTER,
              TextAnchor.TOP_CENTER,
              0));
      free = named ? at + half + BETWEEN_NAMES_MM : free;
    }
    return ticks;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof StandsAxis axis && super.equals(other) && axis.names.equals(names);
  }

  @Override
  public int hashCode() {
    return super.hashCode();
  }
}
