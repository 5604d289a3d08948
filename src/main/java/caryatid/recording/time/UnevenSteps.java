package caryatid.recording.time;

import java.util.function.IntToDoubleFunction;

/**
 * Whether times are those of a computer's clock, which stamps a row when it arrives: many steps are
 * neither the usual one nor a multiple of it. Rounding makes such steps, too, but none further off
 * than its own.
 */
final class UnevenSteps {
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
      coarse = off > TimeLimits.STEP_NOISE * usual ? Math.min(coarse, off) : coarse;
    }
    int count = 0;
    for (int i = 1; i < rows; i++) {
      double times = Math.max(1, Math.round(step.applyAsDouble(i) / usual));
      count +=
          Math.abs(step.applyAsDouble(i) - times * usual) > TimeLimits.STEP_OFF * usual + coarse
              ? 1
              : 0;
    }
    return count >= Math.max(TimeLimits.FEWEST_OFF, TimeLimits.LEAST_OFF * rows);
  }
}
