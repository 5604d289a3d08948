package caryatid.standing;

import caryatid.recording.model.PlateAccuracy;
import caryatid.uncertainty.Cause;
import caryatid.uncertainty.Contribution;
import caryatid.uncertainty.Estimate;
import caryatid.uncertainty.Source;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Mean loads over a stretch. Means of the centre of pressure are force-weighted: the point through
 * which the mean vertical force would have to pass to have the mean moment.
 */
final class MeanLoads {
  private final PlateAccuracy accuracy;

  MeanLoads(PlateAccuracy accuracy) {
    this.accuracy = accuracy;
  }

  /** The mean load of each trace; the traces are cut to the stretch. */
  List<MeanLoad> of(List<LoadSignals> traces) {
    return traces.stream()
        .map(trace -> trace.plate.isEmpty() ? both(traces, trace) : onePlate(trace))
        .toList();
  }

  /** What each side bears of the whole, 0 to 1, from both feet's traces and their sum. */
  Estimate share(LoadSignals foot, LoadSignals other, LoadSignals whole) {
    Estimate swaying = ratio(foot.upN, whole.upN, foot.of, "share");
    double share = swaying.value();
    double lever = share * (1 - share);
    return swaying.with(forceDoubt(foot, lever)).with(forceDoubt(other, -lever));
  }

  private MeanLoad onePlate(LoadSignals trace) {
    return new MeanLoad(
        trace.of,
        trace.hasSideways()
            ? Optional.of(withPlate(mean(trace, trace.rightMm, "right"), trace.plate, "right", 1))
            : Optional.empty(),
        withPlate(mean(trace, trace.anteriorMm, "anterior"), trace.plate, "anterior", 1),
        force(trace).map(f -> f.with(forceDoubt(trace, f.value()))),
        lean(trace));
  }

  private MeanLoad both(List<LoadSignals> traces, LoadSignals whole) {
    LoadSignals left = traces.get(0);
    LoadSignals right = traces.get(1);
    return new MeanLoad(
        whole.of,
        whole.hasSideways()
            ? Optional.of(
                both(
                    left,
                    left.rightMm,
                    right,
                    right.rightMm,
                    mean(whole, whole.rightMm, "right"),
                    "right"))
            : Optional.empty(),
        both(
            left,
            left.anteriorMm,
            right,
            right.anteriorMm,
            mean(whole, whole.anteriorMm, "anterior"),
            "anterior"),
        force(whole)
            .map(
                f ->
                    f.with(forceDoubt(left, meanForce(left)))
                        .with(forceDoubt(right, meanForce(right)))),
        lean(whole));
  }

  /** Each plate's position errs by its share; errors of force move the point between the feet. */
  private Estimate both(
      LoadSignals left,
      double[] leftMm,
      LoadSignals right,
      double[] rightMm,
      Estimate mean,
      String direction) {
    double share = meanForce(left) / (meanForce(left) + meanForce(right));
    double apartMm = weighted(left.upN, leftMm) - weighted(right.upN, rightMm);
    double lever = share * (1 - share) * apartMm;
    Estimate placed = withPlate(mean, left.plate, direction, share);
    return withPlate(placed, right.plate, direction, 1 - share)
        .with(forceDoubt(left, lever))
        .with(forceDoubt(right, -lever));
  }

  private static Estimate mean(LoadSignals trace, double[] mm, String direction) {
    double[] moment = new double[mm.length];
    for (int i = 0; i < mm.length; i++) {
      moment[i] = trace.upN[i] * mm[i];
    }
    return ratio(moment, trace.upN, trace.of, direction);
  }

  private static Optional<Estimate> force(LoadSignals trace) {
    double[] ones = new double[trace.size()];
    Arrays.fill(ones, 1);
    return trace.hasForce
        ? Optional.of(ratio(trace.upN, ones, trace.of, "force"))
        : Optional.empty();
  }

  private Optional<ForceInclination> lean(LoadSignals trace) {
    return trace.hasHorizontal() && trace.hasForce
        ? Optional.of(
            new ForceInclination(
                lean(trace, trace.pushRightN, "lean right"),
                lean(trace, trace.pushAnteriorN, "lean anterior")))
        : Optional.empty();
  }

  private Estimate lean(LoadSignals trace, double[] push, String direction) {
    Source offset = new Source(Cause.PLATE_ACCURACY, trace.plate + " " + direction);
    return ratio(push, trace.upN, trace.of, direction)
        .with(new Contribution(offset, accuracy.leanRad(), 1, Double.POSITIVE_INFINITY));
  }

  /**
   * The ratio of two means with what sway adds to it, the ratio's residuals taken to first order
   * (Cochran, Sampling Techniques, 1977, ch. 6; from memory).
   */
  private static Estimate ratio(double[] upper, double[] lower, LoadLineOwner of, String what) {
    double meanLower = sum(lower) / lower.length;
    double ratio = sum(upper) / sum(lower);
    double[] residuals = new double[upper.length];
    for (int i = 0; i < upper.length; i++) {
      residuals[i] = (upper[i] - ratio * lower[i]) / meanLower;
    }
    Source source = new Source(Cause.SWAY, of.lastPart() + " " + what);
    return new Estimate(ratio, List.of(MeanStandardError.of(source, residuals)));
  }

  private Estimate withPlate(Estimate mean, String plate, String direction, double sensitivity) {
    Source source = new Source(Cause.PLATE_ACCURACY, plate + " " + direction);
    return mean.with(
        new Contribution(source, accuracy.copMm(), sensitivity, Double.POSITIVE_INFINITY));
  }

  private Contribution forceDoubt(LoadSignals trace, double sensitivity) {
    Source source = new Source(Cause.PLATE_ACCURACY, trace.plate + " force");
    return new Contribution(
        source, accuracy.forceFraction(), sensitivity, Double.POSITIVE_INFINITY);
  }

  private static double meanForce(LoadSignals trace) {
    return sum(trace.upN) / trace.size();
  }

  private static double weighted(double[] weights, double[] values) {
    double sum = 0;
    for (int i = 0; i < values.length; i++) {
      sum += weights[i] * values[i];
    }
    return sum / sum(weights);
  }

  private static double sum(double[] values) {
    double sum = 0;
    for (double value : values) {
      sum += value;
    }
    return sum;
  }
}
