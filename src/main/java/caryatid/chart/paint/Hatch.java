package caryatid.chart.paint;

import caryatid.chart.mark.Style.Pen;
import java.awt.Paint;
import java.awt.PaintContext;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.Transparency;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.awt.image.ColorModel;

/**
 * Slanted lines to fill a rectangle with, for a canvas of marks and no other.
 *
 * @param gapMm from one line to the next, level, mm
 */
record Hatch(Pen pen, double gapMm) implements Paint {
  @Override
  public PaintContext createContext(
      ColorModel model,
      Rectangle device,
      Rectangle2D area,
      AffineTransform how,
      RenderingHints hints) {
    throw new UnsupportedOperationException("lines as pixels");
  }

  @Override
  public int getTransparency() {
    return Transparency.BITMASK;
  }
}
