package caryatid.calibration;

import caryatid.samples.Noise;
import caryatid.samples.Sway;

/**
 * A pendulum whose muscles act only when it falls away from the upright: passive stiffness 0.8 and
 * active gain 0.25 of the toppling moment m g h, with a delay; form and numbers after Asai et al.
 * 2009, PLoS ONE 4:e6169 (from memory: 60 kg, 1 m, 60 kg m2, passive damping 4, active 10 N m
 * s/rad, delay 0.2 s, switched by the sign of angle times speed). The switching is symmetric, so
 * the long-run mean is 0.
 *
 * @param sizeMm scales the sway, whose long-run standard deviation is about twice that, mm
 * @param delayS delay of the feedback, s
 */
record IntermittentPendulum(double sizeMm, double delayS) implements Sway {
  private static final double TOPPLING = 60 * 9.80665;
  private static final double FALL_S2 = 60 / TOPPLING;
  private static final double PASSIVE = 0.8;
  private static final double PASSIVE_DAMPING_S = 4 / TOPPLING;
  private static final double ACTIVE = 0.25;
  private static final double ACTIVE_DAMPING_S = 10 / TOPPLING;
  private static final double SETTLE_S = 30;

  @Override
  public double[] trace(int samples, double rateHz, Noise noise) {
    int fine = (int) StrictMath.ceil(100 / rateHz);
    int settle = ((int) (SETTLE_S * rateHz)) * fine;
    double[] pressure = run(settle + samples * fine, rateHz * fine, noise);
    double[] trace = new double[samples];
    for (int i = 0; i < samples; i++) {
      trace[i] = pressure[settle + i * fine];
    }
    return trace;
  }

  private double[] run(int steps, double rateHz, Noise noise) {
    double[] p =
        caryatid.samples.Relaxation.smoothed(
                new caryatid.samples.Relaxation(0.12 * sizeMm, 0.3), 0.06)
            .trace(steps, rateHz, noise);
    int delay = (int) (delayS * rateHz + 0.5);
    double[] y = new double[steps + 1];
    double[] speed = new double[steps + 1];
    for (int i = 0; i < steps; i++) {
      int seen = StrictMath.max(i - delay, 0);
      p[i] += PASSIVE * y[i] + PASSIVE_DAMPING_S * speed[i];
      if (y[seen] * speed[seen] > -0.4 * y[seen] * y[seen]) {
        p[i] += ACTIVE * y[seen] + ACTIVE_DAMPING_S * speed[seen];
      }
      speed[i + 1] = speed[i] + (y[i] - p[i]) / FALL_S2 / rateHz;
      y[i + 1] = y[i] + speed[i + 1] / rateHz;
    }
    return p;
  }
}
