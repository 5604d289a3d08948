package caryatid.samples;

/**
 * A person as an inverted pendulum that is held up by delayed feedback, in one direction. With the
 * centre of mass at y and the centre of pressure at p, both horizontal distances in mm from the
 * long-run mean, small angles give J / (m g h) y'' = y - p; the muscles set p = r + gain (y' s
 * delayed value - r) + damping (its delayed speed) + n, where r is the posture the person wanders
 * about and n the noise of the muscles. r and n have mean 0 and everything is linear, so y and p
 * have the long-run mean 0 exactly.
 *
 * <p>Form of the model and size of its numbers: Maurer and Peterka 2005, J Neurophysiol 93:189-200
 * (from memory: 76 kg, centre of mass 0.87 m above the ankles, 66 kg m2, delay 0.171 s, gains of
 * about 1.4 and 0.43 s times m g h). Wandering posture: Zatsiorsky and Duarte 1999, Motor Control
 * 3:28-38 (from memory). The sizes of noise and wandering are our own, set so that sway and drift
 * fall among those of real stands.
 *
 * @param fallS2 J / (m g h), s2
 * @param gain restoring over toppling moment, above 1
 * @param dampingS damping over toppling moment, s
 * @param delayS delay of the feedback, s
 * @param posture how the posture wanders
 * @param muscle noise of the muscles
 */
public record Pendulum(
    double fallS2, double gain, double dampingS, double delayS, Sway posture, Sway muscle)
    implements Sway {
  private static final double LONGEST_STEP_S = 0.005;
  private static final double SETTLE_S = 20;

  /** The published body and feedback. */
  public static Pendulum published(Sway posture, Sway muscle) {
    return new Pendulum(66 / (76 * 9.80665 * 0.87), 1.36, 0.43, 0.171, posture, muscle);
  }

  @Override
  public double[] trace(int samples, double rateHz, Noise noise) {
    int fine = (int) StrictMath.ceil(1 / (rateHz * LONGEST_STEP_S));
    int settle = ((int) (SETTLE_S * rateHz)) * fine;
    double[] pressure = run(settle + samples * fine, rateHz * fine, noise);
    double[] trace = new double[samples];
    for (int i = 0; i < samples; i++) {
      trace[i] = pressure[settle + i * fine];
    }
    return trace;
  }

  private double[] run(int steps, double rateHz, Noise noise) {
    double[] r = posture.trace(steps, rateHz, noise.split());
    double[] p = muscle.trace(steps, rateHz, noise.split());
    int delay = (int) (delayS * rateHz + 0.5);
    double[] y = new double[steps + 1];
    double speed = 0;
    for (int i = 0; i < steps; i++) {
      int seen = StrictMath.max(i - delay, 1);
      double seenSpeed = (y[seen] - y[seen - 1]) * rateHz;
      p[i] += r[i] + gain * (y[seen] - r[i]) + dampingS * seenSpeed;
      speed += (y[i] - p[i]) / fallS2 / rateHz;
      y[i + 1] = y[i] + speed / rateHz;
    }
    return p;
  }
}
