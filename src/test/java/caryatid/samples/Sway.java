package caryatid.samples;

/**
 * How the centre of pressure moves in one direction: a stationary process whose long-run mean is
 * exactly 0.
 */
public interface Sway {
  /**
   * A stretch of it, already settled at its first sample.
   *
   * @param samples how many
   * @param rateHz sampling rate, Hz
   * @param noise where its chance comes from
   * @return deviation from the long-run mean, mm
   */
  double[] trace(int samples, double rateHz, Noise noise);

  /** This sway and another one, independent of it. */
  default Sway plus(Sway other) {
    return (samples, rateHz, noise) -> {
      double[] sum = trace(samples, rateHz, noise.split());
      double[] more = other.trace(samples, rateHz, noise.split());
      for (int i = 0; i < samples; i++) {
        sum[i] += more[i];
      }
      return sum;
    };
  }

  /** This sway, larger or smaller by a factor. */
  default Sway times(double factor) {
    return (samples, rateHz, noise) -> {
      double[] trace = trace(samples, rateHz, noise);
      for (int i = 0; i < samples; i++) {
        trace[i] *= factor;
      }
      return trace;
    };
  }
}
