package caryatid.chart;

import caryatid.chart.mark.Box;
import caryatid.chart.mark.Curve;
import caryatid.chart.mark.Fonts;
import caryatid.chart.mark.Mark;
import caryatid.chart.mark.Mark.Stroke;
import caryatid.chart.mark.Mark.Text;
import caryatid.chart.mark.PaperPoint;
import caryatid.chart.mark.ShownRange;
import caryatid.chart.mark.Style.Lettering;
import caryatid.chart.mark.Style.Pen;
import caryatid.chart.mark.Ticks;
import caryatid.recording.model.Samples;
import caryatid.recording.model.UsableMask;
import caryatid.wording.Wording;
import java.util.ArrayList;
import java.util.List;

/**
 * Curves over time in a box. Each is drawn by its smallest and largest value in each narrow column,
 * so that long recordings keep every peak and take no more ink than short ones.
 */
final class Series {
  private static final double COLUMN_MM = 0.15;
  private static final double LINE_MM = 3.6;

  private final Samples timeS;
  private final UsableMask usable;
  private final ShownRange span;
  private final double durationS;
  private final Box box;

  Series(Samples timeS, UsableMask usable, ShownRange span, Box box) {
    this.timeS = timeS;
    this.usable = usable;
    this.span = span;
    this.durationS = Math.max(timeS.at(timeS.size() - 1), 1e-3);
    this.box = box;
  }

  double x(double seconds) {
    double part = Math.max(0, Math.min(1, seconds / durationS));
    return box.leftMm() + part * box.widthMm();
  }

  private double y(double value) {
    double part = (value - span.lowest()) / (span.highest() - span.lowest());
    return box.bottomMm() - part * box.heightMm();
  }

  /** One line for each run of usable samples that the box holds. */
  List<Mark> traces(Curve curve) {
    List<Mark> traces = new ArrayList<>();
    List<PaperPoint> run = new ArrayList<>();
    Peaks column = new Peaks();
    for (int i = 0; i < timeS.size(); i++) {
      double at = x(timeS.at(i));
      boolean shown = usable.at(i) && span.holds(curve.at(i));
      if (!column.isEmpty() && (!shown || at - column.atMm > COLUMN_MM)) {
        column.moveTo(run);
      }
      if (shown) {
        column.add(at, y(curve.at(i)));
      } else {
        finish(run, traces, curve.pen());
      }
    }
    column.moveTo(run);
    finish(run, traces, curve.pen());
    return traces;
  }

  private static void finish(List<PaperPoint> run, List<Mark> traces, Pen pen) {
    if (run.size() > 1) {
      traces.add(new Stroke(run, pen));
    }
    run.clear();
  }

  List<Mark> ticks(Wording wording) {
    List<Mark> marks = new ArrayList<>();
    double range = span.highest() - span.lowest();
    double step = Ticks.step(range, Math.max(1.01, box.heightMm() / LINE_MM));
    for (double at = Math.ceil(span.lowest() / step) * step; at <= span.highest(); at += step) {
      PaperPoint tick = new PaperPoint(box.leftMm(), y(at));
      String words = Ticks.text(at, step, wording);
      double width = Fonts.widthMm(words, Lettering.PLAIN);
      marks.add(Stroke.of(Pen.TICK, tick.moved(-0.8, 0), tick));
      marks.add(new Text(tick.moved(-1.2 - width, 1), words, Lettering.PLAIN));
    }
    return marks;
  }

  /** What falls into one narrow column of paper: entered, lowest, highest, left. */
  private static final class Peaks {
    private double atMm;
    private double firstMm;
    private double topMm;
    private double bottomMm;
    private double lastMm;
    private boolean filled;

    boolean isEmpty() {
      return !filled;
    }

    void add(double at, double down) {
      if (!filled) {
        atMm = at;
        firstMm = down;
        topMm = down;
        bottomMm = down;
        filled = true;
      }
      topMm = Math.min(topMm, down);
      bottomMm = Math.max(bottomMm, down);
      lastMm = down;
    }

    void moveTo(List<PaperPoint> run) {
      if (filled) {
        for (double down : new double[] {firstMm, topMm, bottomMm, lastMm}) {
          PaperPoint spot = new PaperPoint(atMm, down);
          if (run.isEmpty() || !run.get(run.size() - 1).equals(spot)) {
            run.add(spot);
          }
        }
      }
      filled = false;
    }
  }
}
