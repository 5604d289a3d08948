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
import caryatid.chart.paint.OffsetsChart;
import caryatid.loadline.Verdict;
import caryatid.wording.Wording;
import java.util.ArrayList;
import java.util.List;

/** What the symbols of a chart of offsets mean, in one row. */
final class OffsetLegend {
  private static final double SYMBOL_MM = 4;
  private static final double HALF_BAND_MM = 1.5;

  private final double baseMm;
  private final double widthMm;
  private final Wording wording;
  private final List<Mark> marks = new ArrayList<>();
  private double eachMm;
  private int entries;

  OffsetLegend(double baseMm, double widthMm, Wording wording) {
    this.baseMm = baseMm;
    this.widthMm = widthMm;
    this.eachMm = widthMm / 4;
    this.wording = wording;
  }

  List<Mark> marks() {
    band(entry("Key.TARGET"));
    result(Verdict.WITHIN.code(), Verdict.WITHIN);
    result("OffsetsDrawing.TOO_CLOSE", Verdict.INSIDE_TOO_CLOSE);
    result(Verdict.OUTSIDE.code(), Verdict.OUTSIDE);
    return marks;
  }

  /** The same for a chart of what was measured and what is expected. */
  List<Mark> ofExpected() {
    eachMm = widthMm / 3;
    band(entry("Key.TARGET"));
    result("AdviceDrawing.MEASURED", Verdict.WITHIN);
    result("AdviceDrawing.EXPECTED", Verdict.INSIDE_TOO_CLOSE);
    return marks;
  }

  private void band(PaperPoint at) {
    Box box = Shapes.box(at.moved(-HALF_BAND_MM, -1.3), at.moved(HALF_BAND_MM, 1.3));
    marks.addAll(Shapes.hatch(box, OffsetsChart.HATCH_MM, Pen.HATCH));
    for (double down : new double[] {-1.3, 1.3, 0}) {
      PaperPoint middle = at.moved(0, down);
      marks.add(
          Stroke.of(Pen.TARGET, middle.moved(-HALF_BAND_MM, 0), middle.moved(HALF_BAND_MM, 0)));
    }
  }

  private void result(String key, Verdict verdict) {
    PaperPoint at = entry(key);
    double d = OffsetsChart.RADIUS_MM;
    if (verdict == Verdict.OUTSIDE) {
      marks.add(Stroke.of(Pen.LOAD_LINE, at.moved(-d, -d), at.moved(d, d)));
      marks.add(Stroke.of(Pen.LOAD_LINE, at.moved(-d, d), at.moved(d, -d)));
    } else {
      List<PaperPoint> ring = Shapes.circle(at, d);
      marks.add(new Fill(ring, verdict == Verdict.WITHIN ? Ink.BLUE : Ink.WHITE));
      marks.add(Shapes.closed(ring, Pen.LOAD_LINE));
    }
  }

  private PaperPoint entry(String key) {
    double left = entries++ * eachMm;
    String words = Fonts.fit(wording.word(key), Lettering.PLAIN, eachMm - SYMBOL_MM - 2);
    marks.add(new Text(new PaperPoint(left + SYMBOL_MM + 0.5, baseMm), words, Lettering.PLAIN));
    return new PaperPoint(left + SYMBOL_MM / 2, baseMm - 1);
  }
}
