package caryatid.chart;

import caryatid.chart.mark.Box;
import caryatid.chart.mark.Fonts;
import caryatid.chart.mark.Mark;
import caryatid.chart.mark.Mark.Fill;
import caryatid.chart.mark.Mark.Stroke;
import caryatid.chart.mark.Mark.Text;
import caryatid.chart.mark.PaperPoint;
import caryatid.chart.mark.Shapes;
import caryatid.chart.mark.Style.Ink;
import caryatid.chart.mark.Style.Lettering;
import caryatid.chart.mark.Style.Pen;
import caryatid.chart.mark.Symbols;
import java.util.ArrayList;
import java.util.List;

/** The legend of a drawing: what each symbol means, in columns. */
final class Legend {
  private static final double ROW_MM = 3.9;
  private static final double SYMBOL_MM = 7;

  private final double leftMm;
  private final double widthMm;
  private final double topMm;
  private final int columns;
  private final List<Mark> marks = new ArrayList<>();
  private int entries;

  Legend(double leftMm, double topMm, double widthMm) {
    this(leftMm, topMm, widthMm, 2);
  }

  Legend(double leftMm, double topMm, double widthMm, int columns) {
    this.columns = columns;
    this.leftMm = leftMm;
    this.topMm = topMm;
    this.widthMm = widthMm;
  }

  /** Height of a key of so many entries, mm. */
  static double heightMm(int entries) {
    return heightMm(entries, 2);
  }

  static double heightMm(int entries, int columns) {
    int rows = (entries + columns - 1) / columns;
    return rows * ROW_MM;
  }

  List<Mark> marks() {
    return marks;
  }

  void loadLine(String words) {
    PaperPoint middle = entry(words);
    Box interval = Shapes.box(middle.moved(-1, -1.5), middle.moved(1, 1.5));
    marks.add(new Fill(Shapes.corners(interval), Ink.PALE_BLUE));
    marks.add(Shapes.closed(Shapes.corners(interval), Pen.INTERVAL_EDGE));
    marks.add(Symbols.upright(Pen.LOAD_LINE, middle, 1.5));
  }

  void target(String words) {
    PaperPoint middle = entry(words);
    Box band = Shapes.box(middle.moved(-2.8, -1.2), middle.moved(2.8, 1.2));
    marks.addAll(Shapes.hatch(band, 1.1, Pen.HATCH));
    marks.add(Shapes.closed(Shapes.corners(band), Pen.TARGET));
    marks.add(Symbols.upright(Pen.TARGET, middle, 1.6));
  }

  void landmark(String words) {
    PaperPoint middle = entry(words);
    marks.add(Stroke.of(Pen.AXIS, middle.moved(-3, 0), middle.moved(3, 0)));
    marks.addAll(Symbols.ring(middle));
  }

  void before(String words) {
    List<PaperPoint> diamond = Symbols.diamond(entry(words));
    marks.add(new Fill(diamond, Ink.WHITE));
    marks.add(Shapes.closed(diamond, Pen.EARLIER));
  }

  void broken(String words) {
    PaperPoint middle = entry(words);
    marks.add(Stroke.of(Pen.AXIS, middle.moved(-3, 0), middle.moved(-0.5, 0)));
    marks.add(Stroke.of(Pen.AXIS, middle.moved(0.5, 0), middle.moved(3, 0)));
    marks.add(Stroke.of(Pen.AXIS, middle.moved(-0.9, 1.2), middle.moved(0, -1.2)));
    marks.add(Stroke.of(Pen.AXIS, middle.moved(0, 1.2), middle.moved(0.9, -1.2)));
  }

  void line(Pen pen, String words) {
    PaperPoint middle = entry(words);
    marks.add(Stroke.of(pen, middle.moved(-3, 0), middle.moved(3, 0)));
  }

  void mean(String words) {
    marks.addAll(Symbols.mean(entry(words)));
  }

  void scaleBar(double lengthMm, String words) {
    PaperPoint middle = entry(words);
    PaperPoint left = middle.moved(-lengthMm / 2, 0);
    PaperPoint right = middle.moved(lengthMm / 2, 0);
    marks.add(Stroke.of(Pen.DIMENSION, left, right));
    marks.add(Symbols.upright(Pen.DIMENSION, left, 0.8));
    marks.add(Symbols.upright(Pen.DIMENSION, right, 0.8));
  }

  private PaperPoint entry(String words) {
    double column = leftMm + entries % columns * widthMm / columns;
    int row = entries / columns;
    double middle = topMm + (row + 0.5) * ROW_MM;
    double room = widthMm / columns - SYMBOL_MM - 1;
    Lettering lettering = Lettering.PLAIN;
    PaperPoint base =
        new PaperPoint(column + SYMBOL_MM, middle + lettering.lineMm() / 2 - lettering.descentMm());
    marks.add(new Text(base, Fonts.fit(words, lettering, room), lettering));
    entries++;
    return new PaperPoint(column + SYMBOL_MM / 2 - 0.25, middle);
  }
}
