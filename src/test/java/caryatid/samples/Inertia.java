package caryatid.samples;

/**
 * The horizontal force that goes with a moving centre of pressure: from J / (m g h) y'' = y - p
 * (see {@link Pendulum}) the centre of mass y is the centre of pressure p smoothed by exp(-|t| / T)
 * / 2T with T the root of J / (m g h), and the force is m y''.
 */
public final class Inertia {
  private static final double FALL_S2 = 66 / (76 * 9.80665 * 0.87);

  private Inertia() {}

  /**
   * The force on the person, N, in the direction of the sway.
   *
   * @param pressureMm deviation of the whole body's centre of pressure, mm
   */
  static double[] forceN(double[] pressureMm, double rateHz, double massKg) {
    double keep = StrictMath.exp(-1 / (rateHz * StrictMath.sqrt(FALL_S2)));
    double[] massMm = smooth(pressureMm, keep);
    double[] force = new double[pressureMm.length];
    for (int i = 0; i < force.length; i++) {
      force[i] = massKg * (massMm[i] - pressureMm[i]) / 1000 / FALL_S2;
    }
    return force;
  }

  private static double[] smooth(double[] x, double keep) {
    double[] y = x.clone();
    for (int i = 1; i < y.length; i++) {
      y[i] = keep * y[i - 1] + (1 - keep) * y[i];
    }
    for (int i = y.length - 2; i >= 0; i--) {
      y[i] = keep * y[i + 1] + (1 - keep) * y[i];
    }
    return y;
  }
}
