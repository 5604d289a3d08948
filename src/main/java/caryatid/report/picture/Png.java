package caryatid.report.picture;

import caryatid.chart.mark.Drawing;
import caryatid.chart.paint.DrawingPainter;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import javax.imageio.ImageIO;

/** Drawings as pictures of pixels, for pasting. */
public final class Png {
  private static final double MM_PER_INCH = 25.4;

  private Png() {}

  /**
   * A drawing on white.
   *
   * @param dotsPerInch resolution, above 0
   */
  public static byte[] of(Drawing drawing, double dotsPerInch) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try {
      ImageIO.write(picture(drawing, dotsPerInch), "png", bytes);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.toByteArray();
  }

  public static BufferedImage picture(Drawing drawing, double dotsPerInch) {
    int width = (int) Math.ceil(drawing.widthMm() / MM_PER_INCH * dotsPerInch);
    int height = (int) Math.ceil(drawing.heightMm() / MM_PER_INCH * dotsPerInch);
    BufferedImage picture = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D canvas = picture.createGraphics();
    canvas.setColor(Color.WHITE);
    canvas.fillRect(0, 0, width, height);
    canvas.setRenderingHint(
        RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
    DrawingPainter.paint(
        drawing,
        canvas,
        new Rectangle2D.Double(
            0,
            0,
            drawing.widthMm() / MM_PER_INCH * dotsPerInch,
            drawing.heightMm() / MM_PER_INCH * dotsPerInch));
    canvas.dispose();
    return picture;
  }
}
