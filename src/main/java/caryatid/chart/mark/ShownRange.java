package caryatid.chart.mark;

import caryatid.recording.model.UsableMask;
import caryatid.standing.QuietStretch;
import java.util.List;

/**
 * What part of the values a panel shows: the quiet stretch's with as much again below and above, so
 * that stepping on and off does not press flat what was used; no more than there is.
 *
 * @param lowest in the values' unit
 * @param highest in the values' unit
 */
public record ShownRange(double lowest, double highest) {
  private static final double MARGIN = 0.06;
  private static final double LEAST = 1;

  public static ShownRange of(List<Curve> curves, UsableMask usable, QuietStretch stretch) {
    ShownRange quiet = over(curves, usable, stretch.fromIndex(), stretch.toIndex());
    ShownRange all = over(curves, usable, 0, usable.size());
    double more = Math.max(LEAST, quiet.highest - quiet.lowest);
    ShownRange shown =
        new ShownRange(
            Math.max(all.lowest, quiet.lowest - more), Math.min(all.highest, quiet.highest + more));
    double margin = Math.max(LEAST, MARGIN * (shown.highest - shown.lowest));
    return new ShownRange(shown.lowest - margin, shown.highest + margin);
  }

  private static ShownRange over(List<Curve> curves, UsableMask usable, int from, int to) {
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    for (Curve curve : curves) {
      for (int i = from; i < to; i++) {
        double value = curve.at(i);
        if ((value < least || value > most) && usable.at(i)) {
          least = Math.min(least, value);
          most = Math.max(most, value);
        }
      }
    }
    return least > most ? new ShownRange(0, 0) : new ShownRange(least, most);
  }

  public boolean holds(double value) {
    return value >= lowest && value <= highest;
  }
}
