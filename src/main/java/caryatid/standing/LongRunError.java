package caryatid.standing;

import caryatid.uncertainty.Contribution;
import caryatid.uncertainty.Source;

/**
 * How far a mean over a stretch may lie from the mean the stand would show in the long run,
 * although sway at one moment resembles sway some seconds later.
 *
 * <p>A few cosine transforms of the residuals, weighted equally, estimate their spectrum at
 * frequency zero; the error of the mean then follows Student's t with as many degrees of freedom as
 * there are cosines (Mueller 2004, Am Econ Rev; Lazarus, Lewis, Stock and Watson 2018, J Bus Econ
 * Stat 36:541-559).
 */
final class LongRunError {
  /** Cosines used, and so the degrees of freedom. */
  static final int COSINES = 4;

  private LongRunError() {}

  /**
   * The contribution of sway to a mean.
   *
   * @param source names it
   * @param residuals of the mean in order of time, summing to zero; more than {@link #COSINES}
   */
  static Contribution of(Source source, double[] residuals) {
    double sum = 0;
    for (int j = 1; j <= COSINES; j++) {
      double transform = cosineSum(residuals, j);
      sum += transform * transform;
    }
    double n = residuals.length;
    return new Contribution(source, Math.sqrt(2 * sum / COSINES) / n, 1, COSINES);
  }

  /** The sum of residual times cos(pi j (t + 1/2) / n), the cosine turned on step by step. */
  static double cosineSum(double[] residuals, int j) {
    double step = StrictMath.PI * j / residuals.length;
    double turnCos = StrictMath.cos(step);
    double turnSin = StrictMath.sin(step);
    double cos = StrictMath.cos(step / 2);
    double sin = StrictMath.sin(step / 2);
    double sum = 0;
    for (double residual : residuals) {
      sum += residual * cos;
      double next = cos * turnCos - sin * turnSin;
      sin = sin * turnCos + cos * turnSin;
      cos = next;
    }
    return sum;
  }
}
