package caryatid.chart;

import caryatid.chart.Mark.Stroke;
import caryatid.chart.Mark.Text;
import caryatid.chart.Style.Lettering;
import caryatid.chart.Style.Pen;
import caryatid.recording.Samples;
import caryatid.recording.Usable;
import caryatid.wording.Wording;
import java.util.ArrayList;
import java.util.List;

/**
 * A series over time in a box. Drawn by its smallest and largest value in each narrow column, so
 * that long recordings keep every peak and take no more ink than short ones.
 */
final class Series {
  private static final double COLUMN_MM = 0.15;
  private static final double LINE_MM = 3.6;

  private final Samples timeS;
  private final Samples values;
  private final Usable usable;
  private final double durationS;
  private final Box box;
  private final double lowest;
  private final double highest;

  Series(Samples timeS, Samples values, Usable usable, double durationS, Box box) {
    this.timeS = timeS;
    this.values = values;
    this.usable = usable;
    this.durationS = Math.max(durationS, 1e-3);
    this.box = box;
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < values.size(); i++) {
      if (usable.at(i)) {
        least = Math.min(least, values.at(i));
        most = Math.max(most, values.at(i));
      }
    }
    boolean none = least > most;
    double margin = none ? 1 : Math.max(1, 0.06 * (most - least));
    this.lowest = none ? -1 : least - margin;
    this.highest = none ? 1 : most + margin;
  }

  double x(double seconds) {
    double part = Math.max(0, Math.min(1, seconds / durationS));
    return box.leftMm() + part * box.widthMm();
  }

  private double y(double value) {
    return box.bottomMm() - (value - lowest) / (highest - lowest) * box.heightMm();
  }

  /** One line for each run of usable samples. */
  List<Mark> traces() {
    List<Mark> traces = new ArrayList<>();
    List<Spot> run = new ArrayList<>();
    Column column = new Column();
    for (int i = 0; i < values.size(); i++) {
      double at = x(timeS.at(i));
      if (!column.isEmpty() && (!usable.at(i) || at - column.atMm > COLUMN_MM)) {
        column.moveTo(run);
      }
      if (usable.at(i)) {
        column.add(at, y(values.at(i)));
      } else {
        finish(run, traces);
      }
    }
    column.moveTo(run);
    finish(run, traces);
    return traces;
  }

  private static void finish(List<Spot> run, List<Mark> traces) {
    if (run.size() > 1) {
      traces.add(new Stroke(run, Pen.TRACE));
    }
    run.clear();
  }

  List<Mark> ticks(Wording wording) {
    List<Mark> marks = new ArrayList<>();
    double step = Ticks.step(highest - lowest, Math.max(1.01, box.heightMm() / LINE_MM));
    for (double at = Math.ceil(lowest / step) * step; at <= highest; at += step) {
      Spot tick = new Spot(box.leftMm(), y(at));
      String words = Ticks.text(at, step, wording);
      double width = Letters.widthMm(words, Lettering.PLAIN);
      marks.add(Stroke.of(Pen.TICK, tick.moved(-0.8, 0), tick));
      marks.add(new Text(tick.moved(-1.2 - width, 1), words, Lettering.PLAIN));
    }
    return marks;
  }

  /** What falls into one narrow column of paper: entered, lowest, highest, left. */
  private static final class Column {
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

    void moveTo(List<Spot> run) {
      if (filled) {
        for (double down : new double[] {firstMm, topMm, bottomMm, lastMm}) {
          Spot spot = new Spot(atMm, down);
          if (run.isEmpty() || !run.get(run.size() - 1).equals(spot)) {
            run.add(spot);
          }
        }
      }
      filled = false;
    }
  }
}
