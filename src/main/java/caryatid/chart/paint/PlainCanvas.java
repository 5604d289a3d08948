package caryatid.chart.paint;

import java.awt.AlphaComposite;
import java.awt.Color;
import java.awt.Composite;
import java.awt.Font;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.GraphicsConfiguration;
import java.awt.Image;
import java.awt.Paint;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.font.GlyphVector;
import java.awt.geom.AffineTransform;
import java.awt.geom.Arc2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.RoundRectangle2D;
import java.awt.image.BufferedImage;
import java.awt.image.BufferedImageOp;
import java.awt.image.ImageObserver;
import java.awt.image.RenderedImage;
import java.awt.image.renderable.RenderableImage;
import java.text.AttributedCharacterIterator;
import java.util.Map;

/**
 * A canvas without pixels: it keeps what is set, turns every figure into one to draw or to fill,
 * and does not clip. Pictures, turned figures and text of mixed kinds are not for it.
 */
abstract class PlainCanvas extends Graphics2D {
  private Color color = Color.BLACK;
  private Color background = Color.WHITE;
  private Stroke stroke = new java.awt.BasicStroke();
  private Font font = new Font(Font.SANS_SERIF, Font.PLAIN, 10);
  private Composite composite = AlphaComposite.SrcOver;
  private Shape clip;
  private final RenderingHints hints = new RenderingHints(Map.of());

  private static UnsupportedOperationException not(String what) {
    return new UnsupportedOperationException(what);
  }

  @Override
  public void drawString(String words, int x, int y) {
    drawString(words, (float) x, (float) y);
  }

  @Override
  public void drawString(AttributedCharacterIterator words, int x, int y) {
    throw not("text of mixed kinds");
  }

  @Override
  public void drawString(AttributedCharacterIterator words, float x, float y) {
    throw not("text of mixed kinds");
  }

  @Override
  public void drawGlyphVector(GlyphVector glyphs, float x, float y) {
    throw not("letters as figures");
  }

  @Override
  public boolean drawImage(Image image, AffineTransform how, ImageObserver observer) {
    throw not("pictures");
  }

  @Override
  public void drawImage(BufferedImage image, BufferedImageOp how, int x, int y) {
    throw not("pictures");
  }

  @Override
  public void drawRenderedImage(RenderedImage image, AffineTransform how) {
    throw not("pictures");
  }

  @Override
  public void drawRenderableImage(RenderableImage image, AffineTransform how) {
    throw not("pictures");
  }

  @Override
  public boolean drawImage(Image image, int x, int y, ImageObserver observer) {
    throw not("pictures");
  }

  @Override
  public boolean drawImage(Image image, int x, int y, int w, int h, ImageObserver observer) {
    throw not("pictures");
  }

  @Override
  public boolean drawImage(Image image, int x, int y, Color behind, ImageObserver observer) {
    throw not("pictures");
  }

  @Override
  public boolean drawImage(
      Image image, int x, int y, int w, int h, Color behind, ImageObserver observer) {
    throw not("pictures");
  }

  @Override
  public boolean drawImage(
      Image image, int a, int b, int c, int d, int e, int f, int g, int h, ImageObserver o) {
    throw not("pictures");
  }

  @Override
  public boolean drawImage(
      Image image,
      int a,
      int b,
      int c,
      int d,
      int e,
      int f,
      int g,
      int h,
      Color behind,
      ImageObserver o) {
    throw not("pictures");
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
  public void translate(int x, int y) {
    throw not("a moved canvas");
  }

  @Override
  public void translate(double x, double y) {
    throw not("a moved canvas");
  }

  @Override
  public void rotate(double angle) {
    throw not("a turned canvas");
  }

  @Override
  public void rotate(double angle, double x, double y) {
    throw not("a turned canvas");
  }

  @Override
  public void scale(double x, double y) {
    throw not("a scaled canvas");
  }

  @Override
  public void shear(double x, double y) {
    throw not("a sheared canvas");
  }

  @Override
  public void transform(AffineTransform how) {
    setTransform(how);
  }

  @Override
  public void setTransform(AffineTransform how) {
    if (!how.isIdentity()) {
      throw not("a moved canvas");
    }
  }

  @Override
  public AffineTransform getTransform() {
    return new AffineTransform();
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
  public Graphics create() {
    throw not("a second canvas");
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
  public void setXORMode(Color other) {
    throw not("colours that cancel");
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
  public void copyArea(int x, int y, int w, int h, int dx, int dy) {
    throw not("pictures");
  }

  @Override
  public void fillRect(int x, int y, int w, int h) {
    fill(new Rectangle(x, y, w, h));
  }

  @Override
  public void clearRect(int x, int y, int w, int h) {
    throw not("clearing");
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
