package caryatid.demo;

import caryatid.standing.LoadLineOwner;
import caryatid.standing.Sway;
import caryatid.standing.Sway.BothDirections;
import java.util.Optional;
import java.util.OptionalDouble;

/** Sway in both directions. */
public final class Sways {
  private Sways() {}

  /** The sway with its numbers in the order of a result's file. */
  public static Sway of(
      LoadLineOwner of,
      OptionalDouble lowPassHz,
      double sdRightMm,
      double sdAnteriorMm,
      double rangeRightMm,
      double rangeAnteriorMm,
      double pathMm,
      double meanSpeedMmPerS,
      double ellipseMm2,
      double covarianceMm2,
      double meanFrequencyHz,
      double effectiveRight,
      double effectiveAnterior) {
    return new Sway(
        of,
        lowPassHz,
        sdAnteriorMm,
        rangeAnteriorMm,
        effectiveAnterior,
        Optional.of(
            new BothDirections(
                sdRightMm,
                rangeRightMm,
                pathMm,
                meanSpeedMmPerS,
                ellipseMm2,
                covarianceMm2,
                meanFrequencyHz,
                effectiveRight)));
  }
}
