package caryatid.chart.paint;

import java.awt.AlphaComposite;
import java.awt.Color;
import java.awt.Composite;
import java.awt.Font;
import java.awt.GraphicsConfiguration;
import java.awt.Paint;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.geom.Arc2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.RoundRectangle2D;
import java.awt.image.BufferedImage;
import java.util.Map;

/**
 * A drawing surface without pixels: it keeps the current pen, colour and font, turns every figure
 * into a shape to draw or to fill, and does not clip.
 */
abstract class PlainCanvas extends RestrictedCanvas {
  private Color color = Color.BLACK;
  private Color background = Color.WHITE;
  private Stroke stroke = new java.awt.BasicStroke();
  private Font font = new Font(Font.SANS_SERIF, Font.PLAIN, 10);
  private Composite composite = AlphaComposite.SrcOver;
  private Shape clip;
  private final RenderingHints hints = new RenderingHints(Map.of());

  @Override
  public void drawString(String words, int x, int y) {
    drawString(words, (float) x, (float) y);
  }

  @Override
  public boolean hit(Rectangle area, Shape shape, boolean onStroke) {
    return shape.intersects(area);
  }

  @Override
  public GraphicsConfiguration getDeviceConfiguration() {
    return new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB)
        .createGraphics()
        .getDeviceConfiguration();
  }

  @Override
  public void setComposite(Composite composite) {
    this.composite = composite;
  }

  @Override
  public Composite getComposite() {
    return composite;
  }

  @Override
  public void setPaint(Paint paint) {
    if (paint instanceof Color plain) {
      color = plain;
    } else if (paint != null) {
      throw not("paint that is not one colour");
    }
  }

  @Override
  public Paint getPaint() {
    return color;
  }

  @Override
  public void setStroke(Stroke stroke) {
    this.stroke = stroke;
  }

  @Override
  public Stroke getStroke() {
    return stroke;
  }

  @Override
  public void setRenderingHint(RenderingHints.Key key, Object value) {
    if (value == null) {
      hints.remove(key);
    } else {
      hints.put(key, value);
    }
  }

  @Override
  public Object getRenderingHint(RenderingHints.Key key) {
    return hints.get(key);
  }

  @Override
  public void setRenderingHints(Map<?, ?> given) {
    hints.clear();
    hints.putAll(given);
  }

  @Override
  public void addRenderingHints(Map<?, ?> given) {
    hints.putAll(given);
  }

  @Override
  public RenderingHints getRenderingHints() {
    return hints;
  }

  @Override
  public void setBackground(Color background) {
    this.background = background;
  }

  @Override
  public Color getBackground() {
    return background;
  }

  @Override
  public void clip(Shape shape) {
    clip = shape;
  }

  @Override
  public void setClip(Shape shape) {
    clip = shape;
  }

  @Override
  public void setClip(int x, int y, int w, int h) {
    clip = new Rectangle(x, y, w, h);
  }

  @Override
  public void clipRect(int x, int y, int w, int h) {
    clip = new Rectangle(x, y, w, h);
  }

  @Override
  public Shape getClip() {
    return clip;
  }

  @Override
  public Rectangle getClipBounds() {
    return clip == null ? null : clip.getBounds();
  }

  @Override
  public Color getColor() {
    return color;
  }

  @Override
  public void setColor(Color color) {
    this.color = color;
  }

  @Override
  public void setPaintMode() {
    composite = AlphaComposite.SrcOver;
  }

  @Override
  public Font getFont() {
    return font;
  }

  @Override
  public void setFont(Font font) {
    this.font = font;
  }

  @Override
  public void fillRect(int x, int y, int w, int h) {
    fill(new Rectangle(x, y, w, h));
  }

  @Override
  public void drawRoundRect(int x, int y, int w, int h, int arcWidth, int arcHeight) {
    draw(new RoundRectangle2D.Double(x, y, w, h, arcWidth, arcHeight));
  }

  @Override
  public void fillRoundRect(int x, int y, int w, int h, int arcWidth, int arcHeight) {
    fill(new RoundRectangle2D.Double(x, y, w, h, arcWidth, arcHeight));
  }

  @Override
  public void drawOval(int x, int y, int w, int h) {
    draw(new Ellipse2D.Double(x, y, w, h));
  }

  @Override
  public void fillOval(int x, int y, int w, int h) {
    fill(new Ellipse2D.Double(x, y, w, h));
  }

  @Override
  public void drawArc(int x, int y, int w, int h, int start, int arc) {
    draw(new Arc2D.Double(x, y, w, h, start, arc, Arc2D.OPEN));
  }

  @Override
  public void fillArc(int x, int y, int w, int h, int start, int arc) {
    fill(new Arc2D.Double(x, y, w, h, start, arc, Arc2D.PIE));
  }

  @Override
  public void drawPolyline(int[] xs, int[] ys, int count) {
    draw(path(xs, ys, count));
  }

  @Override
  public void drawPolygon(int[] xs, int[] ys, int count) {
    draw(closed(xs, ys, count));
  }

  @Override
  public void fillPolygon(int[] xs, int[] ys, int count) {
    fill(closed(xs, ys, count));
  }

  private static Path2D closed(int[] xs, int[] ys, int count) {
    Path2D path = path(xs, ys, count);
    path.closePath();
    return path;
  }

  private static Path2D path(int[] xs, int[] ys, int count) {
    Path2D path = new Path2D.Double();
    path.moveTo(xs[0], ys[0]);
    for (int i = 1; i < count; i++) {
      path.lineTo(xs[i], ys[i]);
    }
    return path;
  }

  @Override
  public void dispose() {}
}
