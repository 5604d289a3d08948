package caryatid.chart.paint;

import caryatid.chart.mark.Box;
import caryatid.chart.mark.Drawing.Part;
import caryatid.chart.mark.Fonts;
import caryatid.chart.mark.Mark;
import caryatid.chart.mark.Mark.Fill;
import caryatid.chart.mark.Mark.Stroke;
import caryatid.chart.mark.Mark.Text;
import caryatid.chart.mark.PaperPoint;
import caryatid.chart.mark.Shapes;
import caryatid.chart.mark.Style;
import caryatid.chart.mark.Style.Ink;
import caryatid.chart.mark.Style.Lettering;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Paint;
import java.awt.Shape;
import java.awt.font.FontRenderContext;
import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * A canvas that keeps what a chart draws as marks, so that every form of a report is made from the
 * same ones. It knows the inks, pens and letters of {@link Style} and no others.
 */
public final class MarkCanvas extends PlainCanvas {
  /** The canvas's units in a millimetre: fine enough for widths that are kept in whole units. */
  static final double UNITS_PER_MM = 100;

  private static final double FLATNESS = 1;
  private static final Map<Lettering, Font> FONTS = new ConcurrentHashMap<>();
  private static final Map<Ink, Color> COLORS = new EnumMap<>(Ink.class);

  static {
    for (Ink ink : Ink.values()) {
      COLORS.put(ink, new Color(ink.rgb()));
    }
  }

  private final List<Part> parts = new ArrayList<>();
  private final List<Mark> marks = new ArrayList<>();
  private Optional<String> says = Optional.empty();
  private Optional<Hatch> hatch = Optional.empty();

  /** Everything drawn, from back to front. */
  public List<Mark> marks() {
    return parts().stream().flatMap(part -> part.marks().stream()).toList();
  }

  /** The same, by what means one thing together. */
  List<Part> parts() {
    begin(says);
    return List.copyOf(parts);
  }

  /**
   * Begins a part.
   *
   * @param meaning what it says; empty for mere background
   */
  void begin(Optional<String> meaning) {
    if (!marks.isEmpty()) {
      parts.add(new Part(says, marks));
      marks.clear();
    }
    says = meaning;
  }

  /** The font of a lettering, at the canvas's size. */
  static Font font(Lettering lettering) {
    return FONTS.computeIfAbsent(lettering, MarkCanvas::derived);
  }

  private static Font derived(Lettering lettering) {
    double units = lettering.points() * Style.MM_PER_POINT * UNITS_PER_MM;
    return Fonts.font(lettering).deriveFont((float) units);
  }

  static Color color(Ink ink) {
    return COLORS.get(ink);
  }

  @Override
  public void draw(Shape shape) {
    if (getStroke() instanceof PenStroke stroke) {
      paths(shape).stream()
          .filter(path -> path.size() > 1)
          .forEach(path -> marks.add(new Stroke(path, stroke.pen())));
    } else {
      throw new IllegalStateException("no pen for " + getStroke());
    }
  }

  @Override
  public void drawLine(int x1, int y1, int x2, int y2) {
    draw(new Line2D.Double(x1, y1, x2, y2));
  }

  @Override
  public void setPaint(Paint paint) {
    hatch = Optional.ofNullable(paint).filter(Hatch.class::isInstance).map(Hatch.class::cast);
    if (hatch.isEmpty()) {
      super.setPaint(paint);
    }
  }

  /** What is not seen through is drawn; lines fill the rectangle around a shape. */
  @Override
  public void fill(Shape shape) {
    if (hatch.isPresent()) {
      Rectangle2D around = shape.getBounds2D();
      Box box =
          Shapes.box(
              spot(around.getMinX(), around.getMinY()), spot(around.getMaxX(), around.getMaxY()));
      marks.addAll(Shapes.hatch(box, hatch.get().gapMm(), hatch.get().pen()));
    } else if (getColor().getAlpha() > 0) {
      fillPlain(shape);
    }
  }

  private void fillPlain(Shape shape) {
    paths(shape).stream()
        .filter(path -> path.size() > 2)
        .forEach(path -> marks.add(new Fill(path, ink())));
  }

  @Override
  public void drawString(String words, float x, float y) {
    if (!words.isEmpty()) {
      marks.add(new Text(spot(x, y), words, lettering()));
    }
  }

  @Override
  public FontMetrics getFontMetrics(Font font) {
    return Fonts.metrics(font);
  }

  @Override
  public FontRenderContext getFontRenderContext() {
    return Fonts.EXACT;
  }

  private Ink ink() {
    Color color = getColor();
    return Arrays.stream(Ink.values())
        .filter(ink -> color(ink).equals(color))
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("no ink for " + color));
  }

  private Lettering lettering() {
    Font font = getFont();
    return Arrays.stream(Lettering.values())
        .filter(lettering -> font(lettering).equals(font))
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("no letters for " + font));
  }

  private static PaperPoint spot(double x, double y) {
    return new PaperPoint(x / UNITS_PER_MM, y / UNITS_PER_MM);
  }

  private static List<List<PaperPoint>> paths(Shape shape) {
    List<List<PaperPoint>> paths = new ArrayList<>();
    List<PaperPoint> path = new ArrayList<>();
    double[] at = new double[6];
    PathIterator along = shape.getPathIterator(new AffineTransform(), FLATNESS);
    for (; !along.isDone(); along.next()) {
      int kind = along.currentSegment(at);
      if (kind == PathIterator.SEG_MOVETO) {
        paths.add(path);
        path = new ArrayList<>();
      }
      path.add(kind == PathIterator.SEG_CLOSE ? path.get(0) : spot(at[0], at[1]));
    }
    paths.add(path);
    return paths;
  }
}
