package caryatid.calibration;

import caryatid.samples.Noise;
import caryatid.samples.Sway;

/**
 * A regular wave, as of breathing, whose pace wavers: a sine of fixed size whose phase is drawn at
 * the start and then strays.
 *
 * @param sdMm standard deviation, the amplitude over root 2, mm
 * @param periodS period, s
 * @param keptS how long the phase is kept: its variance grows by 2 in this time, s
 */
record Waves(double sdMm, double periodS, double keptS) implements Sway {
  @Override
  public double[] trace(int samples, double rateHz, Noise noise) {
    double amplitude = sdMm * StrictMath.sqrt(2);
    double step = 2 * StrictMath.PI / (periodS * rateHz);
    double stray = StrictMath.sqrt(2 / (keptS * rateHz));
    double phase = noise.between(0, 2 * StrictMath.PI);
    double[] trace = new double[samples];
    for (int i = 0; i < samples; i++) {
      trace[i] = amplitude * StrictMath.sin(phase);
      phase += step + stray * noise.normal();
    }
    return trace;
  }
}
