package caryatid.uncertainty;

import java.util.List;

/**
 * A variance as far as a sample shows it.
 *
 * @param variance sample variance, the square of the values' unit, not negative
 * @param degreesOfFreedom how well it is known, above 0
 */
public record SampleVariance(double variance, double degreesOfFreedom) {
  /**
   * @throws IllegalArgumentException if a number is out of its range
   */
  public SampleVariance {
    if (!(variance >= 0) || !Double.isFinite(variance) || !(degreesOfFreedom > 0)) {
      throw new IllegalArgumentException("variance " + variance + ", " + degreesOfFreedom);
    }
  }

  /**
   * Several estimates of one variance as one, each weighing as many degrees as it has.
   *
   * @param all at least one, each with finite degrees of freedom
   */
  public static SampleVariance pooled(List<SampleVariance> all) {
    double squares = 0;
    double degrees = 0;
    for (SampleVariance each : all) {
      squares += each.degreesOfFreedom * each.variance;
      degrees += each.degreesOfFreedom;
    }
    return new SampleVariance(squares / degrees, degrees);
  }
}
