package caryatid.chart.paint;

import caryatid.chart.mark.Curve;
import caryatid.chart.mark.ShownRange;
import caryatid.recording.model.Samples;
import caryatid.recording.model.UsableMask;
import java.util.ArrayList;
import java.util.List;

/**
 * A curve as the chart library draws it: of each narrow column of time its first, highest, lowest
 * and last value, so that long recordings keep every peak and take no more ink than short ones.
 * Where a sample is not shown, the line breaks.
 */
final class ThinnedCurve {
  private final double columnS;
  private final List<double[]> points = new ArrayList<>();
  private double atS;
  private double first;
  private double highest;
  private double lowest;
  private double last;
  private boolean filled;

  private ThinnedCurve(double columnS) {
    this.columnS = columnS;
  }

  /**
   * Times and values, in this order; a value that is not a number breaks the line.
   *
   * @param span values outside are not shown
   * @param columnS length of a column, s
   */
  static double[][] of(
      Curve curve, Samples timeS, UsableMask usable, ShownRange span, double columnS) {
    ThinnedCurve thinned = new ThinnedCurve(columnS);
    for (int i = 0; i < timeS.size(); i++) {
      if (usable.at(i) && span.holds(curve.at(i))) {
        thinned.add(timeS.at(i), curve.at(i));
      } else {
        thinned.breakAt(timeS.at(i));
      }
    }
    thinned.finish();
    return thinned.arrays();
  }

  private void add(double seconds, double value) {
    if (filled && seconds - atS > columnS) {
      finish();
    }
    if (!filled) {
      atS = seconds;
      first = value;
      highest = value;
      lowest = value;
      filled = true;
    }
    highest = Math.max(highest, value);
    lowest = Math.min(lowest, value);
    last = value;
  }

  private void breakAt(double seconds) {
    finish();
    if (!points.isEmpty() && !Double.isNaN(latest())) {
      points.add(new double[] {seconds, Double.NaN});
    }
  }

  private void finish() {
    if (filled) {
      boolean begun = points.isEmpty() || Double.isNaN(latest());
      for (double value : new double[] {first, highest, lowest, last}) {
        if (begun || latest() != value || latestS() != atS) {
          points.add(new double[] {atS, value});
        }
        begun = false;
      }
    }
    filled = false;
  }

  private double latestS() {
    return points.get(points.size() - 1)[0];
  }

  private double latest() {
    return points.get(points.size() - 1)[1];
  }

  private double[][] arrays() {
    return new double[][] {
      points.stream().mapToDouble(point -> point[0]).toArray(),
      points.stream().mapToDouble(point -> point[1]).toArray()
    };
  }
}
