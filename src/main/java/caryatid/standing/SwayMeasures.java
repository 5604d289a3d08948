package caryatid.standing;

import caryatid.uncertainty.SampleStatistics;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Measures of sway (Prieto et al. 1996, IEEE Trans Biomed Eng 43:956-966), each sample counted the
 * same.
 */
final class SwayMeasures {
  /** Cutoff of the low-pass for measures that depend on noise, Hz (common practice, no source). */
  static final double LOW_PASS_HZ = 10;

  /** Each end is continued by as many periods of the cutoff, where its start has died away. */
  private static final int PADDING_PERIODS = 4;

  private SwayMeasures() {}

  /**
   * The sway of a trace: unfiltered, then low-passed where the rate allows it.
   *
   * @param signals cut to the stretch, at least three samples
   * @param rateHz sampling rate, Hz
   */
  static List<Sway> of(LoadSignals signals, double rateHz) {
    Sway plain =
        measure(signals.of, OptionalDouble.empty(), signals.rightMm, signals.anteriorMm, rateHz);
    if (rateHz <= 2 * LOW_PASS_HZ) {
      return List.of(plain);
    }
    Butterworth filter = Butterworth.twoPasses(LOW_PASS_HZ, rateHz);
    int padding = (int) Math.ceil(PADDING_PERIODS * rateHz / LOW_PASS_HZ);
    return List.of(
        plain,
        measure(
            signals.of,
            OptionalDouble.of(LOW_PASS_HZ),
            signals.hasSideways() ? filter.zeroPhase(signals.rightMm, padding) : signals.rightMm,
            filter.zeroPhase(signals.anteriorMm, padding),
            rateHz));
  }

  /**
   * The sway of two series.
   *
   * @param right sideways, mm; no elements where that was not measured
   * @param anterior fore and aft, mm
   */
  static Sway measure(
      LoadLineOwner of,
      OptionalDouble lowPassHz,
      double[] right,
      double[] anterior,
      double rateHz) {
    double[] fromMean = centred(anterior);
    return new Sway(
        of,
        lowPassHz,
        Math.sqrt(SampleStatistics.covariance(anterior, anterior)),
        range(anterior),
        EffectiveSampleSize.of(fromMean),
        right.length > 0 ? Optional.of(both(right, anterior, fromMean, rateHz)) : Optional.empty());
  }

  private static Sway.BothDirections both(
      double[] right, double[] anterior, double[] fromMeanAnterior, double rateHz) {
    double path = path(right, anterior);
    double speed = path * rateHz / (right.length - 1);
    double[] fromMeanRight = centred(right);
    double varianceRight = SampleStatistics.covariance(right, right);
    double varianceAnterior = SampleStatistics.covariance(anterior, anterior);
    double covariance = SampleStatistics.covariance(right, anterior);
    double determinant = varianceRight * varianceAnterior - covariance * covariance;
    return new Sway.BothDirections(
        Math.sqrt(varianceRight),
        range(right),
        path,
        speed,
        ellipse(right.length, determinant),
        covariance,
        frequency(speed, meanDistance(fromMeanRight, fromMeanAnterior)),
        EffectiveSampleSize.of(fromMeanRight));
  }

  private static double[] centred(double[] values) {
    double mean = SampleStatistics.mean(values);
    return Arrays.stream(values).map(value -> value - mean).toArray();
  }

  /** Mean frequency: that of going round a circle of the mean distance at the mean speed. */
  private static double frequency(double speed, double distance) {
    return distance > 0 ? speed / (2 * StrictMath.PI * distance) : 0;
  }

  private static double path(double[] right, double[] anterior) {
    double path = 0;
    for (int i = 1; i < right.length; i++) {
      path += distance(right[i] - right[i - 1], anterior[i] - anterior[i - 1]);
    }
    return path;
  }

  private static double meanDistance(double[] right, double[] anterior) {
    double sum = 0;
    for (int i = 0; i < right.length; i++) {
      sum += distance(right[i], anterior[i]);
    }
    return sum / right.length;
  }

  private static double distance(double right, double anterior) {
    return Math.sqrt(right * right + anterior * anterior);
  }

  private static double range(double[] values) {
    return Arrays.stream(values).max().orElseThrow() - Arrays.stream(values).min().orElseThrow();
  }

  /**
   * Area of the 95 % prediction ellipse: pi k sqrt(det S), mm2.
   *
   * @param n samples, at least 3
   * @param determinant of the covariance matrix S, mm4; below 0 by rounding counts as 0
   */
  static double ellipse(long n, double determinant) {
    return StrictMath.PI * ellipseFactor(n) * Math.sqrt(Math.max(0, determinant));
  }

  /**
   * The factor k = 2 (n - 1) (n + 1) / (n (n - 2)) F.95(2, n - 2), with the quantile of F in closed
   * form (Chew 1966; Schubert and Kirchner 2014, Gait Posture 39:518-522).
   *
   * @param n samples, at least 3
   */
  static double ellipseFactor(long n) {
    double m = n - 2;
    double f = m / 2 * (StrictMath.pow(0.05, -2 / m) - 1);
    return 2.0 * (n - 1) * (n + 1) / (n * m) * f;
  }
}
