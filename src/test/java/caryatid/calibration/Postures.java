package caryatid.calibration;

import caryatid.samples.Noise;
import caryatid.samples.Sway;

/**
 * A posture that is kept for a while and then exchanged for another one: levels drawn anew from a
 * normal distribution at moments of a Poisson process.
 *
 * @param sdMm standard deviation of the levels, mm
 * @param keptS how long a posture is kept on average, s
 */
record Postures(double sdMm, double keptS) implements Sway {
  @Override
  public double[] trace(int samples, double rateHz, Noise noise) {
    double[] trace = new double[samples];
    double now = sdMm * noise.normal();
    double change = 1 - StrictMath.exp(-1 / (rateHz * keptS));
    for (int i = 0; i < samples; i++) {
      if (noise.even() < change) {
        now = sdMm * noise.normal();
      }
      trace[i] = now;
    }
    return trace;
  }
}
