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
import caryatid.loadline.Verdict;
import caryatid.views.OffsetSeries.Measured;
import caryatid.wording.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/** The marks of one stand in a drawing of offsets: its tolerance, its offset, its interval. */
final class OffsetMarks {
  private static final double LARGEST_BAND_MM = 9;
  private static final double RADIUS_MM = 1;
  private static final double HATCH_MM = 1.1;

  private final DoubleUnaryOperator y;
  private final double bandMm;

  /**
   * @param y from an offset to its place on paper
   * @param eachMm room for each stand, mm
   */
  OffsetMarks(DoubleUnaryOperator y, double eachMm) {
    this.y = y;
    this.bandMm = Math.min(LARGEST_BAND_MM, 0.8 * eachMm);
  }

  List<Mark> of(Measured m, double x) {
    List<Mark> marks = new ArrayList<>();
    double half = bandMm / 2;
    Box band = new Box(x - half, at(m.highestMm()), x + half, at(m.lowestMm()));
    marks.addAll(Shapes.hatch(band, HATCH_MM, Pen.HATCH));
    marks.add(across(Pen.TARGET, x, at(m.lowestMm()), half));
    marks.add(across(Pen.TARGET, x, at(m.highestMm()), half));
    marks.add(across(Pen.TARGET, x, at(m.recommendedMm()), half));
    double low = at(m.offsetMm() - m.expandedMm());
    double high = at(m.offsetMm() + m.expandedMm());
    marks.add(Stroke.of(Pen.LOAD_LINE, new PaperPoint(x, low), new PaperPoint(x, high)));
    double whisker = Math.min(RADIUS_MM, half);
    marks.add(across(Pen.LOAD_LINE, x, low, whisker));
    marks.add(across(Pen.LOAD_LINE, x, high, whisker));
    marks.addAll(result(m.verdict(), new PaperPoint(x, at(m.offsetMm()))));
    return marks;
  }

  private double at(double offsetMm) {
    return y.applyAsDouble(offsetMm);
  }

  private static Mark across(Pen pen, double x, double down, double half) {
    return Stroke.of(pen, new PaperPoint(x - half, down), new PaperPoint(x + half, down));
  }

  /** A full ring within, a cross outside, an empty ring where it is too close to call. */
  static List<Mark> result(Verdict verdict, PaperPoint at) {
    List<PaperPoint> ring = Shapes.circle(at, RADIUS_MM);
    if (verdict == Verdict.OUTSIDE) {
      double d = RADIUS_MM;
      return List.of(
          Stroke.of(Pen.LOAD_LINE, at.moved(-d, -d), at.moved(d, d)),
          Stroke.of(Pen.LOAD_LINE, at.moved(-d, d), at.moved(d, -d)));
    }
    Ink inside = verdict == Verdict.WITHIN ? Ink.BLUE : Ink.WHITE;
    return List.of(new Fill(ring, inside), Shapes.closed(ring, Pen.LOAD_LINE));
  }

  /** What the symbols mean, in one row. */
  static final class LegendRow {
    private static final double SYMBOL_MM = 4;
    private static final int ENTRIES = 4;

    private final double baseMm;
    private final double eachMm;
    private final Wording wording;
    private final List<Mark> marks = new ArrayList<>();
    private int entries;

    LegendRow(double baseMm, double widthMm, Wording wording) {
      this.baseMm = baseMm;
      this.eachMm = widthMm / ENTRIES;
      this.wording = wording;
    }

    List<Mark> marks() {
      PaperPoint band = entry("Key.TARGET");
      Box box =
          new Box(
              band.rightMm() - 1.5, band.downMm() - 1.3, band.rightMm() + 1.5, band.downMm() + 1.3);
      marks.addAll(Shapes.hatch(box, HATCH_MM, Pen.HATCH));
      marks.add(across(Pen.TARGET, band.rightMm(), box.topMm(), 1.5));
      marks.add(across(Pen.TARGET, band.rightMm(), box.bottomMm(), 1.5));
      marks.add(across(Pen.TARGET, band.rightMm(), band.downMm(), 1.5));
      result("OffsetsDrawing.WITHIN", Verdict.WITHIN);
      result("OffsetsDrawing.TOO_CLOSE", Verdict.INSIDE_TOO_CLOSE);
      result("OffsetsDrawing.OUTSIDE", Verdict.OUTSIDE);
      return marks;
    }

    private void result(String key, Verdict verdict) {
      marks.addAll(OffsetMarks.result(verdict, entry(key)));
    }

    private PaperPoint entry(String key) {
      double left = entries++ * eachMm;
      String words = Fonts.fit(wording.word(key), Lettering.PLAIN, eachMm - SYMBOL_MM - 2);
      marks.add(new Text(new PaperPoint(left + SYMBOL_MM + 0.5, baseMm), words, Lettering.PLAIN));
      return new PaperPoint(left + SYMBOL_MM / 2, baseMm - 1);
    }
  }
}
