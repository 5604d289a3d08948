package caryatid.calibration;

import caryatid.uncertainty.Cause;
import caryatid.uncertainty.Contribution;
import caryatid.uncertainty.Estimate;
import caryatid.uncertainty.Source;
import java.util.ArrayList;
import java.util.List;

/** Differences of means against the uncertainty that is stated for them. */
final class Differences {
  private final double repeatMm;
  private int count;
  private int within;
  private double squares;

  /**
   * @param repeatMm standard deviation between stands, sway included, mm; 0 within one stand
   */
  Differences(double repeatMm) {
    this.repeatMm = repeatMm;
  }

  /** One more pair. */
  void add(Estimate a, Estimate b) {
    Estimate difference = own(a, "first").plus(-1, own(b, "second"));
    count++;
    within += Math.abs(difference.value()) <= difference.expanded(0.95) ? 1 : 0;
    squares += Math.pow(difference.value() / difference.standardUncertainty(), 2);
  }

  /** The estimate with sources of its own, so that nothing cancels, or what stands differ by. */
  private Estimate own(Estimate estimate, String which) {
    if (repeatMm > 0) {
      double u = Math.max(repeatMm, estimate.standardUncertainty());
      Source repeats = new Source(Cause.REPEATABILITY, which);
      return Estimate.exact(estimate.value())
          .with(new Contribution(repeats, u, 1, Clinic.DOUBTS.repeatDegreesOfFreedom()));
    }
    List<Contribution> all = new ArrayList<>();
    for (Contribution c : estimate.contributions()) {
      all.add(
          new Contribution(
              new Source(c.source().cause(), which + c.source().of()),
              c.standardUncertainty(),
              c.sensitivity(),
              c.degreesOfFreedom()));
    }
    return new Estimate(estimate.value(), all);
  }

  int count() {
    return count;
  }

  /** Differences that lie within their 95 % interval, %. */
  double withinPercent() {
    return 100.0 * within / count;
  }

  /** Root mean square of the differences, each over its standard uncertainty; 1 when they agree. */
  double rms() {
    return Math.sqrt(squares / count);
  }
}
