package caryatid.calibration;

import caryatid.samples.Noise;
import caryatid.samples.Sway;

/**
 * A random walk that nothing holds within bounds and something pulls back beyond them, in equal
 * measure on either side; so the long-run mean is 0, and positions are spread more evenly than a
 * normal distribution.
 *
 * @param sdMm long-run standard deviation, mm
 * @param crossingS the square of the bound over the walk's variance in a second, s: how long the
 *     walk takes to cross from the middle to a bound
 */
record FreeWithin(double sdMm, double crossingS) implements Sway {
  /** How far beyond a bound the walk strays (standard deviation), as a part of the bound. */
  private static final double STRAY = 0.3;

  private static final double SETTLE_CROSSINGS = 3;

  /**
   * Standard deviation for a bound of 1: the stationary density is even within the bounds and half
   * a normal distribution beyond each.
   */
  private static double unitSd() {
    double half = STRAY * StrictMath.sqrt(StrictMath.PI / 2);
    double mass = 2 + 2 * half;
    double square = 2.0 / 3 + 2 * (half + 2 * STRAY * STRAY + STRAY * STRAY * half);
    return StrictMath.sqrt(square / mass);
  }

  @Override
  public double[] trace(int samples, double rateHz, Noise noise) {
    double bound = sdMm / unitSd();
    double step = bound / StrictMath.sqrt(crossingS * rateHz);
    double pull = 1 / (2 * STRAY * STRAY * crossingS * rateHz);
    int settle = (int) (SETTLE_CROSSINGS * crossingS * rateHz);
    double[] trace = new double[samples];
    double now = noise.between(-bound, bound);
    for (int i = -settle; i < samples; i++) {
      double beyond = now - StrictMath.max(-bound, StrictMath.min(bound, now));
      now += step * noise.normal() - pull * beyond;
      if (i >= 0) {
        trace[i] = now;
      }
    }
    return trace;
  }
}
