package caryatid.standing;

/**
 * A low-pass Butterworth filter of second order, run forwards and backwards so that nothing is
 * delayed.
 *
 * <p>Two passes attenuate twice; the cutoff is corrected so that both together attenuate by 1/sqrt
 * 2 at the frequency asked for (Winter, Biomechanics and Motor Control of Human Movement, ch. 3;
 * the correction is applied to the warped frequency, where it is exact).
 */
final class Butterworth {
  private static final double TWO_PASSES = StrictMath.pow(StrictMath.sqrt(2) - 1, 0.25);

  final double b0;
  final double a1;
  final double a2;

  /**
   * A section whose denominator is s^2 + damping s + 1 before it is warped: root 2 for a filter of
   * second order, one each of 2 cos(pi / 8) and 2 cos(3 pi / 8) for one of fourth.
   */
  Butterworth(double warped, double damping) {
    double square = warped * warped;
    double scale = 1 + damping * warped + square;
    this.b0 = square / scale;
    this.a1 = 2 * (square - 1) / scale;
    this.a2 = (1 - damping * warped + square) / scale;
  }

  /** One pass with a cutoff, Hz, below half the rate, Hz. */
  static Butterworth onePass(double cutoffHz, double rateHz) {
    return new Butterworth(warped(cutoffHz, rateHz), StrictMath.sqrt(2));
  }

  /** For two passes that have the cutoff together. */
  static Butterworth twoPasses(double cutoffHz, double rateHz) {
    return new Butterworth(warped(cutoffHz, rateHz) / TWO_PASSES, StrictMath.sqrt(2));
  }

  static double warped(double cutoffHz, double rateHz) {
    if (!(cutoffHz > 0 && cutoffHz < rateHz / 2)) {
      throw new IllegalArgumentException("cutoff " + cutoffHz + " Hz at " + rateHz + " Hz");
    }
    return StrictMath.tan(StrictMath.PI * cutoffHz / rateHz);
  }

  /**
   * The series run forwards and backwards. Its ends are continued by turning it about its first and
   * last value, and each pass starts as if its first value had always been.
   *
   * @param padding samples by which each end is continued; fewer where the series is shorter
   */
  double[] zeroPhase(double[] series, int padding) {
    int pad = Math.min(padding, series.length - 1);
    double[] wide = new double[series.length + 2 * pad];
    System.arraycopy(series, 0, wide, pad, series.length);
    int last = series.length - 1;
    for (int i = 1; i <= pad; i++) {
      wide[pad - i] = 2 * series[0] - series[i];
      wide[pad + last + i] = 2 * series[last] - series[last - i];
    }
    double[] twice = reversed(pass(reversed(pass(wide))));
    return java.util.Arrays.copyOfRange(twice, pad, pad + series.length);
  }

  /** One pass forwards, started in the steady state of the first value. */
  double[] pass(double[] series) {
    double[] out = new double[series.length];
    double x1 = series[0];
    double x2 = x1;
    double y1 = x1;
    double y2 = x1;
    for (int i = 0; i < series.length; i++) {
      double x = series[i];
      double y = b0 * (x + 2 * x1 + x2) - a1 * y1 - a2 * y2;
      out[i] = y;
      x2 = x1;
      x1 = x;
      y2 = y1;
      y1 = y;
    }
    return out;
  }

  private static double[] reversed(double[] series) {
    double[] turned = new double[series.length];
    for (int i = 0; i < series.length; i++) {
      turned[i] = series[series.length - 1 - i];
    }
    return turned;
  }
}
