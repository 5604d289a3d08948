package caryatid.plate;

import caryatid.recording.model.ForceUnit;
import java.util.Optional;
import java.util.stream.DoubleStream;

/** What a factor between shown and true numbers says of their unit. */
final class UnitMatch {
  /**
   * Further from 1 no plate is that works and whose units are right; so near another factor, that
   * one is meant (common practice, no source).
   */
  private static final double NEAR = 1.35;

  private static final double INCH_IN_CM = 2.54;
  private static final double POUND_IN_KG = 0.45359237;

  private UnitMatch() {}

  /** Whether a factor is that of another unit, or of none. */
  static boolean isOther(double factor) {
    return !isNear(factor, 1);
  }

  /** The factor between units of length or of moments and forces that is meant, if one is. */
  static Optional<Double> ofPlaces(double factor) {
    return nearest(
        factor, DoubleStream.of(10, 100, 1000, 10 * INCH_IN_CM, INCH_IN_CM, 100 / INCH_IN_CM));
  }

  /** The factor between units of force that is meant, if one is. */
  static Optional<Double> ofForces(double factor) {
    double g = ForceUnit.STANDARD_GRAVITY;
    return nearest(
        factor,
        DoubleStream.of(g, 10 * g, 1000, g / POUND_IN_KG, 1 / POUND_IN_KG, g * POUND_IN_KG));
  }

  private static Optional<Double> nearest(double factor, DoubleStream factors) {
    return factors
        .flatMap(f -> DoubleStream.of(f, 1 / f))
        .filter(f -> isNear(factor, f))
        .boxed()
        .min((a, b) -> Double.compare(distance(factor, a), distance(factor, b)));
  }

  private static boolean isNear(double factor, double other) {
    return factor > 0 && distance(factor, other) < Math.log(NEAR);
  }

  private static double distance(double factor, double other) {
    return Math.abs(Math.log(factor / other));
  }
}
