package caryatid.calibration;

import caryatid.samples.Noise;
import caryatid.samples.Sway;

/**
 * Sudden small moves to either side, of exponential size at moments of a Poisson process, each of
 * which fades (shot noise). By Campbell's theorem its variance is the moves' rate times their mean
 * square times half the fading time.
 *
 * @param sdMm long-run standard deviation, mm
 * @param everyS mean time between moves, s
 * @param fadingS time in which a move fades to 1/e, s
 */
record Pushes(double sdMm, double everyS, double fadingS) implements Sway {
  private static final double SETTLE = 6;

  @Override
  public double[] trace(int samples, double rateHz, Noise noise) {
    double size = sdMm * StrictMath.sqrt(everyS / fadingS);
    double keep = StrictMath.exp(-1 / (rateHz * fadingS));
    double chance = 1 - StrictMath.exp(-1 / (rateHz * everyS));
    double[] trace = new double[samples];
    double now = 0;
    for (int i = -(int) (SETTLE * fadingS * rateHz); i < samples; i++) {
      now *= keep;
      if (noise.even() < chance) {
        double move = -size * StrictMath.log(1 - noise.even());
        now += noise.even() < 0.5 ? move : -move;
      }
      if (i >= 0) {
        trace[i] = now;
      }
    }
    return trace;
  }
}
