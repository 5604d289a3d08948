package caryatid.samples;

/**
 * A deviation that decays at its own pace while chance feeds it (Ornstein-Uhlenbeck process),
 * stepped without error of discretisation. Its autocorrelation after t is exp(-t / timeS); long
 * times make slow drift.
 *
 * @param sdMm long-run standard deviation, mm
 * @param timeS relaxation time, s, above 0
 */
public record Relaxation(double sdMm, double timeS) implements Sway {
  @Override
  public double[] trace(int samples, double rateHz, Noise noise) {
    double keep = StrictMath.exp(-1 / (rateHz * timeS));
    double kick = sdMm * StrictMath.sqrt(1 - keep * keep);
    double[] trace = new double[samples];
    double now = sdMm * noise.normal();
    for (int i = 0; i < samples; i++) {
      trace[i] = now;
      now = keep * now + kick * noise.normal();
    }
    return trace;
  }

  /** Follows another sway with a lag, which takes its roughness away; the mean stays 0. */
  public static Sway smoothed(Sway rough, double lagS) {
    return (samples, rateHz, noise) -> {
      int settle = (int) (8 * lagS * rateHz) + 1;
      double[] from = rough.trace(samples + settle, rateHz, noise);
      double keep = StrictMath.exp(-1 / (rateHz * lagS));
      double[] trace = new double[samples];
      double now = from[0];
      for (int i = 1; i < from.length; i++) {
        now = keep * now + (1 - keep) * from[i];
        if (i >= settle) {
          trace[i - settle] = now;
        }
      }
      return trace;
    };
  }
}
