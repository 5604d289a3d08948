package caryatid.samples;

/**
 * Stepping on a plate and off again: no load before and after, and a centre of pressure that
 * settles once loaded.
 *
 * @param onS when the load begins to come, s from the first sample
 * @param offS when it begins to go, s
 * @param settlingMm how far behind its place the centre of pressure begins, mm
 */
record StepOn(double onS, double offS, double settlingMm) {
  private static final double RAMP_S = 0.6;
  private static final double SETTLING_TIME_S = 0.8;
  private static final double EMPTY_PLATE_N = 0.3;

  /** A stand with the steps at its ends. */
  Stand around(Stand stand, Noise noise) {
    return new Stand(
        stand.rateHz(),
        stand.person(),
        around(stand.left(), stand.rateHz(), noise),
        around(stand.right(), stand.rateHz(), noise));
  }

  private FootTrace around(FootTrace foot, double rateHz, Noise noise) {
    FootTrace trace = FootTrace.empty(foot.size());
    for (int i = 0; i < foot.size(); i++) {
      double timeS = i / rateHz;
      double load = ramp(timeS - onS) * (1 - ramp(timeS - offS));
      double settling = settlingMm * StrictMath.exp(-(timeS - onS) / SETTLING_TIME_S);
      trace.upN()[i] = load * foot.upN()[i] + EMPTY_PLATE_N * noise.normal();
      trace.rightN()[i] = load * foot.rightN()[i];
      trace.anteriorN()[i] = load * foot.anteriorN()[i];
      trace.turnNmm()[i] = load * foot.turnNmm()[i];
      trace.rightMm()[i] = foot.rightMm()[i];
      trace.anteriorMm()[i] = foot.anteriorMm()[i] - (timeS < onS ? 0 : settling);
    }
    return trace;
  }

  private static double ramp(double sinceS) {
    double x = StrictMath.min(1, StrictMath.max(0, sinceS / RAMP_S));
    return x * x * (3 - 2 * x);
  }
}
