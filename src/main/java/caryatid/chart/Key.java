package caryatid.chart;

import caryatid.chart.Mark.Fill;
import caryatid.chart.Mark.Stroke;
import caryatid.chart.Mark.Text;
import caryatid.chart.Style.Ink;
import caryatid.chart.Style.Lettering;
import caryatid.chart.Style.Pen;
import java.util.ArrayList;
import java.util.List;

/** What each symbol of a drawing means, in two columns at its foot. */
final class Key {
  private static final double ROW_MM = 3.9;
  private static final double SYMBOL_MM = 7;

  private final double leftMm;
  private final double widthMm;
  private final double topMm;
  private final List<Mark> marks = new ArrayList<>();
  private int entries;

  Key(double leftMm, double topMm, double widthMm) {
    this.leftMm = leftMm;
    this.topMm = topMm;
    this.widthMm = widthMm;
  }

  /** Height of a key of so many entries, mm. */
  static double heightMm(int entries) {
    int rows = (entries + 1) / 2;
    return rows * ROW_MM;
  }

  List<Mark> marks() {
    return marks;
  }

  void loadLine(String words) {
    Spot middle = entry(words);
    Box interval = Shapes.box(middle.moved(-1, -1.5), middle.moved(1, 1.5));
    marks.add(new Fill(Shapes.corners(interval), Ink.PALE_BLUE));
    marks.add(Shapes.closed(Shapes.corners(interval), Pen.INTERVAL_EDGE));
    marks.add(Symbols.upright(Pen.LOAD_LINE, middle, 1.5));
  }

  void target(String words) {
    Spot middle = entry(words);
    marks.addAll(Symbols.target(middle.moved(-2.5, 0), middle.moved(2.5, 0), middle.moved(0.4, 0)));
  }

  void landmark(String words) {
    marks.addAll(Symbols.landmark(entry(words), 2));
  }

  void line(Pen pen, String words) {
    Spot middle = entry(words);
    marks.add(Stroke.of(pen, middle.moved(-3, 0), middle.moved(3, 0)));
  }

  void upright(Pen pen, String words) {
    marks.add(Symbols.upright(pen, entry(words), 1.25));
  }

  void mean(String words) {
    marks.addAll(Symbols.mean(entry(words)));
  }

  void curve(String words) {
    Spot base = entry(words).moved(0, 1.3);
    List<Spot> curve = new ArrayList<>();
    for (int i = -10; i <= 10; i++) {
      curve.add(base.moved(i * 0.28, -2.6 * StrictMath.exp(-i * i / 20.0)));
    }
    marks.add(new Fill(curve.subList(3, 18), Ink.PALE_BLUE));
    marks.add(new Stroke(curve, Pen.TRACE));
  }

  void scaleBar(double lengthMm, String words) {
    Spot middle = entry(words);
    Spot left = middle.moved(-lengthMm / 2, 0);
    Spot right = middle.moved(lengthMm / 2, 0);
    marks.add(Stroke.of(Pen.DIMENSION, left, right));
    marks.add(Symbols.upright(Pen.DIMENSION, left, 0.8));
    marks.add(Symbols.upright(Pen.DIMENSION, right, 0.8));
  }

  private Spot entry(String words) {
    double column = leftMm + entries % 2 * widthMm / 2;
    int row = entries / 2;
    double middle = topMm + (row + 0.5) * ROW_MM;
    double room = widthMm / 2 - SYMBOL_MM - 1;
    Lettering lettering = Lettering.PLAIN;
    Spot base =
        new Spot(column + SYMBOL_MM, middle + lettering.lineMm() / 2 - lettering.descentMm());
    marks.add(new Text(base, Letters.fit(words, lettering, room), lettering));
    entries++;
    return new Spot(column + SYMBOL_MM / 2 - 0.25, middle);
  }
}
