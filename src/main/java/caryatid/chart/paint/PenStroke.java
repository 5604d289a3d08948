package caryatid.chart.paint;

import caryatid.chart.mark.Style.Pen;
import java.awt.BasicStroke;

/** A pen as a stroke for the chart library, from which the pen can be read back. */
final class PenStroke extends BasicStroke {
  private final Pen pen;

  PenStroke(Pen pen) {
    super((float) (pen.widthMm() * MarkCanvas.UNITS_PER_MM));
    this.pen = pen;
  }

  Pen pen() {
    return pen;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof PenStroke stroke && stroke.pen == pen;
  }

  @Override
  public int hashCode() {
    return pen.hashCode();
  }
}
