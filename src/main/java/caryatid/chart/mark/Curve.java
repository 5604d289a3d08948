package caryatid.chart.mark;

import caryatid.chart.mark.Style.Pen;
import caryatid.recording.model.Samples;

/**
 * Values over time, as they are drawn.
 *
 * @param values one a sample
 * @param from what they are counted from, in their unit
 * @param pen how they are drawn
 */
public record Curve(Samples values, double from, Pen pen) {

  public double at(int index) {
    return values.at(index) - from;
  }
}
