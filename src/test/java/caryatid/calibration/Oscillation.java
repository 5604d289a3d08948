package caryatid.calibration;

import caryatid.samples.Noise;
import caryatid.samples.Sway;

/**
 * A damped oscillation fed by chance: autoregression of order 2, x(i) = 2 d cos(w) x(i-1) - d^2
 * x(i-2) + chance, whose variance follows from the coefficients (Box and Jenkins, Time Series
 * Analysis, ch. 3; from memory).
 *
 * @param sdMm long-run standard deviation, mm
 * @param frequencyHz of the oscillation
 * @param timeS in which it decays
 */
record Oscillation(double sdMm, double frequencyHz, double timeS) implements Sway {
  @Override
  public double[] trace(int samples, double rateHz, Noise noise) {
    double keep = StrictMath.exp(-1 / (rateHz * timeS));
    double a = 2 * keep * StrictMath.cos(2 * StrictMath.PI * frequencyHz / rateHz);
    double b = -keep * keep;
    double kick = sdMm * StrictMath.sqrt((1 + b) * ((1 - b) * (1 - b) - a * a) / (1 - b));
    int settle = (int) (8 * timeS * rateHz);
    double[] trace = new double[samples];
    double last = 0;
    double before = 0;
    for (int i = -settle; i < samples; i++) {
      double now = a * last + b * before + kick * noise.normal();
      before = last;
      last = now;
      if (i >= 0) {
        trace[i] = now;
      }
    }
    return trace;
  }
}
