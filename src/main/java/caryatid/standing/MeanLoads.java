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

  /** The mean load of each signal; the signals are cut to the stretch. */
  List<MeanLoad> of(List<LoadSignals> all) {
    return all.stream()
        .map(signals -> signals.plate.isEmpty() ? both(all, signals) : onePlate(signals))
        .toList();
  }

  /** What each side bears of the whole, 0 to 1, from both feet's signals and their sum. */
  Estimate share(LoadSignals foot, LoadSignals other, LoadSignals whole) {
    Estimate swaying = ratio(foot.upN, whole.upN, foot.of, "share");
    double share = swaying.value();
    double lever = share * (1 - share);
    return swaying.with(forceDoubt(foot, lever)).with(forceDoubt(other, -lever));
  }

  private MeanLoad onePlate(LoadSignals signals) {
    return new MeanLoad(
        signals.of,
        signals.hasSideways()
            ? Optional.of(
                withPlate(mean(signals, signals.rightMm, "right"), signals.plate, "right", 1))
            : Optional.empty(),
        withPlate(mean(signals, signals.anteriorMm, "anterior"), signals.plate, "anterior", 1),
        force(signals).map(f -> f.with(forceDoubt(signals, f.value()))),
        lean(signals));
  }

  private MeanLoad both(List<LoadSignals> all, LoadSignals whole) {
    LoadSignals left = all.get(0);
    LoadSignals right = all.get(1);
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

  private static Estimate mean(LoadSignals signals, double[] mm, String direction) {
    double[] moment = new double[mm.length];
    for (int i = 0; i < mm.length; i++) {
      moment[i] = signals.upN[i] * mm[i];
    }
    return ratio(moment, signals.upN, signals.of, direction);
  }

  private static Optional<Estimate> force(LoadSignals signals) {
    double[] ones = new double[signals.size()];
    Arrays.fill(ones, 1);
    return signals.hasForce
        ? Optional.of(ratio(signals.upN, ones, signals.of, "force"))
        : Optional.empty();
  }

  private Optional<ForceInclination> lean(LoadSignals signals) {
    return signals.hasHorizontal() && signals.hasForce
        ? Optional.of(
            new ForceInclination(
                lean(signals, signals.pushRightN, "lean right"),
                lean(signals, signals.pushAnteriorN, "lean anterior")))
        : Optional.empty();
  }

  private Estimate lean(LoadSignals signals, double[] push, String direction) {
    Source offset = new Source(Cause.PLATE_ACCURACY, signals.plate + " " + direction);
    return ratio(push, signals.upN, signals.of, direction)
        .with(new Contribution(offset, accuracy.leanRad(), 1, accuracy.degrees().lean()));
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
        new Contribution(source, accuracy.copMm(), sensitivity, accuracy.degrees().cop()));
  }

  private Contribution forceDoubt(LoadSignals signals, double sensitivity) {
    Source source = new Source(Cause.PLATE_ACCURACY, signals.plate + " force");
    return new Contribution(
        source, accuracy.forceFraction(), sensitivity, accuracy.degrees().force());
  }

  private static double meanForce(LoadSignals signals) {
    return sum(signals.upN) / signals.size();
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
