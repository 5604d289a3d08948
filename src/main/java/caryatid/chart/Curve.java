package caryatid.chart;

import caryatid.chart.Style.Pen;
import caryatid.recording.model.Samples;

/**
 * Values over time, as they are drawn.
 *
 * @param values one a sample
 * @param from what they are counted from, in their unit
 * @param pen how they are drawn
 */
record Curve(Samples values, double from, Pen pen) {

  double at(int index) {
    return values.at(index) - from;
  }
}
