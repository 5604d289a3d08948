package caryatid.calibration;

import caryatid.samples.Noise;
import caryatid.samples.Relaxation;
import caryatid.samples.Sway;

/**
 * Another sway, at times larger and at times smaller: its size follows the exponential of a
 * relaxation, set so that the mean square stays.
 *
 * @param sway the other sway
 * @param spread standard deviation of the logarithm of the size
 * @param timeS how long the size keeps, s
 */
record Unsteady(Sway sway, double spread, double timeS) implements Sway {
  @Override
  public double[] trace(int samples, double rateHz, Noise noise) {
    double[] size = new Relaxation(spread, timeS).trace(samples, rateHz, noise.split());
    double[] trace = sway.trace(samples, rateHz, noise.split());
    for (int i = 0; i < samples; i++) {
      trace[i] *= StrictMath.exp(size[i] - spread * spread);
    }
    return trace;
  }
}
