package caryatid.recording.time;

import java.util.function.IntToDoubleFunction;

/**
 * Whether times are those of a computer's clock, which stamps a row when it arrives: many steps are
 * neither the usual one nor a multiple of it. Rounding makes such steps, too, but none further off
 * than its own.
 */
final class UnevenSteps {
  /** A step is off by more than this part of the usual one (common practice, no source). */
  private static final double OFF = 0.2;

  /** Smaller differences are of the way numbers are kept. */
  private static final double NOISE = 0.01;

  /** Fewer steps, or a smaller share, may be off for another reason. */
  private static final int FEWEST = 5;

  private static final double LEAST_SHARE = 0.005;

  private UnevenSteps() {}

  /**
   * Looks at all steps.
   *
   * @param rows how many rows there are
   * @param step the step before each row but the first
   * @param usual the usual step; no step is looked at where it is 0
   */
  static boolean are(int rows, IntToDoubleFunction step, double usual) {
    if (!(usual > 0)) {
      return false;
    }
    double coarse = Double.POSITIVE_INFINITY;
    for (int i = 1; i < rows; i++) {
      double off = Math.abs(step.applyAsDouble(i) - usual);
      coarse = off > NOISE * usual ? Math.min(coarse, off) : coarse;
    }
    int count = 0;
    for (int i = 1; i < rows; i++) {
      double times = Math.max(1, Math.round(step.applyAsDouble(i) / usual));
      count += Math.abs(step.applyAsDouble(i) - times * usual) > OFF * usual + coarse ? 1 : 0;
    }
    return count >= Math.max(FEWEST, LEAST_SHARE * rows);
  }
}
