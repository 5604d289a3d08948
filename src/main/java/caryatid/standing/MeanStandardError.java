package caryatid.standing;

import caryatid.uncertainty.Contribution;
import caryatid.uncertainty.Source;

/**
 * How far a mean over a stretch may lie from the mean the stand would show in the long run,
 * although sway at one moment resembles sway some seconds later.
 *
 * <p>The two slowest cosine transforms of the residuals, weighted equally, estimate their spectrum
 * at frequency zero; the error of the mean then follows Student's t with two degrees of freedom
 * (Mueller 2007, J Econometrics 141:1331-1352, from memory; Lazarus, Lewis, Stock and Watson 2018,
 * J Bus Econ Stat 36:541-559). Two, because more cosines reach up to frequencies where the spectrum
 * of sway has fallen already: intervals get narrower and no longer hold the truth as often as they
 * say.
 *
 * <p>Even the two lie below frequency zero's level where sway remembers long. They are raised by
 * what they would be too low for a first-order process as slow as the residuals show it: of
 * spectrum 1 / (1 + (omega tau)^2), with 2 tau / T the reciprocal of the {@link
 * EffectiveSampleSize}, doubled because residuals of a short stretch show about half the memory
 * there is.
 */
final class MeanStandardError {
  /** Cosines used, and so the degrees of freedom. */
  static final int COSINES = 2;

  private MeanStandardError() {}

  /**
   * The contribution of sway to a mean.
   *
   * @param source names it
   * @param residuals of the mean in order of time, summing to zero; at least three
   */
  static Contribution of(Source source, double[] residuals) {
    double effective = EffectiveSampleSize.of(residuals);
    double squares = 0;
    double level = 0;
    for (int j = 1; j <= COSINES; j++) {
      double transform = cosineSum(residuals, j);
      double slowness = StrictMath.PI * j / effective;
      squares += transform * transform;
      level += 1 / (1 + slowness * slowness);
    }
    double n = residuals.length;
    return new Contribution(source, Math.sqrt(2 * squares / level) / n, 1, COSINES);
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
