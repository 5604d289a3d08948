package caryatid.report.pdf;

import java.awt.BasicStroke;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.GeneralPath;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.apache.pdfbox.util.Matrix;
import org.apache.pdfbox.util.Vector;

/**
 * The words that can be seen on a page, line by line: what is painted over, or written in white, is
 * left out.
 */
public final class ShownLines extends PDFGraphicsStreamEngine {
  /** Letters stand on one line within this height, in points. */
  private static final double LINE_POINTS = 1;

  /** Lighter than this cannot be read on paper. */
  private static final int WHITE = 0xF0;

  private record Letter(double right, double up, String text) {}

  private final List<Letter> letters = new ArrayList<>();
  private final GeneralPath path = new GeneralPath();

  private ShownLines(PDPage page) {
    super(page);
  }

  /**
   * The lines of each page, from top to bottom; what stands at the same height is one line.
   *
   * @throws IOException if it is no PDF
   */
  public static List<List<String>> of(byte[] pdf) throws IOException {
    List<List<String>> pages = new ArrayList<>();
    try (PDDocument document = PdfFile.load(pdf)) {
      for (PDPage page : document.getPages()) {
        ShownLines shown = new ShownLines(page);
        shown.processPage(page);
        pages.add(shown.lines());
      }
    }
    return pages;
  }

  /** The numbers of pages over which something is laid: notes, stamps, fields. */
  public static List<Integer> covered(byte[] pdf) throws IOException {
    List<Integer> covered = new ArrayList<>();
    try (PDDocument document = PdfFile.load(pdf)) {
      for (int i = 0; i < document.getNumberOfPages(); i++) {
        if (document.getPage(i).getCOSObject().containsKey(COSName.ANNOTS)) {
          covered.add(i + 1);
        }
      }
    }
    return covered;
  }

  private List<String> lines() {
    TreeMap<Double, StringBuilder> lines = new TreeMap<>((a, b) -> Double.compare(b, a));
    for (Letter letter : letters) {
      Double up = lines.ceilingKey(letter.up() + LINE_POINTS);
      boolean near = up != null && Math.abs(up - letter.up()) <= LINE_POINTS;
      lines
          .computeIfAbsent(near ? up : letter.up(), height -> new StringBuilder())
          .append(letter.text());
    }
    return lines.values().stream().map(StringBuilder::toString).toList();
  }

  @Override
  protected void showText(byte[] string) throws IOException {
    super.showText(string);
    if (!letters.isEmpty()) {
      Letter last = letters.get(letters.size() - 1);
      letters.add(new Letter(last.right(), last.up(), " "));
    }
  }

  @Override
  protected void showGlyph(Matrix matrix, PDFont font, int code, Vector displacement)
      throws IOException {
    String text = font.toUnicode(code);
    if (text != null && isVisible()) {
      double middle = displacement.getX() / 2;
      Point2D at = matrix.transformPoint((float) middle, 0.3f);
      letters.add(new Letter(at.getX(), matrix.getTranslateY(), text));
    }
  }

  private boolean isVisible() throws IOException {
    int mode = getGraphicsState().getTextState().getRenderingMode().intValue();
    int rgb = getGraphicsState().getNonStrokingColor().toRGB();
    boolean white = (rgb & 0xFF) > WHITE && (rgb >> 8 & 0xFF) > WHITE && (rgb >> 16 & 0xFF) > WHITE;
    return mode != 3 && mode != 7 && !white;
  }

  private void cover(Shape shape) {
    letters.removeIf(
        letter -> !letter.text().isBlank() && shape.contains(letter.right(), letter.up() + 1));
  }

  // --- What is painted

  @Override
  public void fillPath(int windingRule) {
    path.setWindingRule(windingRule);
    cover(path);
    path.reset();
  }

  @Override
  public void fillAndStrokePath(int windingRule) {
    fillPath(windingRule);
  }

  @Override
  public void strokePath() {
    float scale = getGraphicsState().getCurrentTransformationMatrix().getScalingFactorX();
    float width = Math.abs(getGraphicsState().getLineWidth() * scale);
    if (width > 3) {
      cover(
          new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER)
              .createStrokedShape(path));
    }
    path.reset();
  }

  @Override
  public void drawImage(PDImage image) {
    AffineTransform unit =
        getGraphicsState().getCurrentTransformationMatrix().createAffineTransform();
    cover(unit.createTransformedShape(new Rectangle2D.Double(0, 0, 1, 1)));
  }

  @Override
  public void shadingFill(COSName name) {
    cover(getGraphicsState().getCurrentClippingPath());
  }

  // --- Paths

  @Override
  public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) {
    moveTo((float) p0.getX(), (float) p0.getY());
    lineTo((float) p1.getX(), (float) p1.getY());
    lineTo((float) p2.getX(), (float) p2.getY());
    lineTo((float) p3.getX(), (float) p3.getY());
    closePath();
  }

  @Override
  public void moveTo(float x, float y) {
    path.moveTo(x, y);
  }

  @Override
  public void lineTo(float x, float y) {
    if (path.getCurrentPoint() == null) {
      path.moveTo(x, y);
    }
    path.lineTo(x, y);
  }

  @Override
  public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
    if (path.getCurrentPoint() == null) {
      path.moveTo(x1, y1);
    }
    path.curveTo(x1, y1, x2, y2, x3, y3);
  }

  @Override
  public Point2D getCurrentPoint() {
    return path.getCurrentPoint();
  }

  @Override
  public void closePath() {
    if (path.getCurrentPoint() != null) {
      path.closePath();
    }
  }

  @Override
  public void endPath() {
    path.reset();
  }

  @Override
  public void clip(int windingRule) {
    // What is cut away is not looked for.
  }
}
