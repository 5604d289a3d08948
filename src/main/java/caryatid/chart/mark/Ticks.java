package caryatid.chart.mark;

import caryatid.remark.Unit;
import caryatid.wording.Wording;

/** Round numbers along an axis. */
public final class Ticks {
  private Ticks() {}

  /** The smallest step of 1, 2 or 5 times a power of ten that makes no more than so many steps. */
  public static double step(double range, double most) {
    double step = StrictMath.pow(10, Math.floor(StrictMath.log10(range / most)));
    double[] factors = {1, 2, 5, 10};
    for (double factor : factors) {
      if (range / (factor * step) <= most) {
        return factor * step;
      }
    }
    return 10 * step;
  }

  public static String text(double value, double step, Wording wording) {
    Unit digits = step >= 1 ? Unit.COUNT : step >= 0.1 ? Unit.MM : Unit.PLAIN;
    return wording.plain(value, digits);
  }
}
