package caryatid.recording.time;

import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;

/**
 * Whether times are those of a computer's clock, which stamps a row when it arrives: many steps are
 * neither the usual one nor a multiple of it. Rounding makes such steps, too, but none further off
 * than its own.
 */
final class UnevenSteps {
  private final int rows;
  private final IntToDoubleFunction step;
  private final double usual;

  private UnevenSteps(int rows, IntToDoubleFunction step, double usual) {
    this.rows = rows;
    this.step = step;
    this.usual = usual;
  }

  /**
   * Looks at all steps.
   *
   * @param rows how many rows there are
   * @param step the step before each row but the first
   * @param usual the usual step; no step is looked at where it is 0
   */
  static boolean are(int rows, IntToDoubleFunction step, double usual) {
    UnevenSteps steps = new UnevenSteps(rows, step, usual);
    return usual > 0 && steps.areOff(0) && steps.areOff(steps.grid());
  }

  /** Whether enough steps are off by more than rounding makes them. */
  private boolean areOff(double rounded) {
    int count = 0;
    for (int i = 1; i < rows; i++) {
      double times = Math.max(1, Math.round(step.applyAsDouble(i) / usual));
      count +=
          Math.abs(step.applyAsDouble(i) - times * usual) > TimeLimits.STEP_OFF * usual + rounded
              ? 1
              : 0;
    }
    return count >= Math.max(TimeLimits.FEWEST_OFF, TimeLimits.LEAST_OFF * rows);
  }

  /** To what the times were rounded: the steps of such times differ by that or its multiples. */
  private double grid() {
    double[] sorted = IntStream.range(1, rows).mapToDouble(step).sorted().toArray();
    double least = Double.POSITIVE_INFINITY;
    for (int i = 1; i < sorted.length; i++) {
      double apart = sorted[i] - sorted[i - 1];
      least = apart > TimeLimits.STEP_NOISE * usual ? Math.min(least, apart) : least;
    }
    return least;
  }
}
