package caryatid.alignment;

import caryatid.alignment.PrecisionHint.Remedy;
import caryatid.uncertainty.Cause;
import caryatid.uncertainty.Contribution;
import caryatid.uncertainty.Estimate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Finds what would reduce an offset's uncertainty most, by trying each remedy on its budget. */
final class PrecisionHints {
  private static final int STANDS = 3;

  private static final Map<Remedy, Set<Cause>> HALVED =
      Map.of(
          Remedy.MARK_BETTER, Set.of(Cause.MARKING, Cause.REGISTRATION),
          Remedy.ALIGN_FEET, Set.of(Cause.YAW),
          Remedy.LEVEL_PLATE, Set.of(Cause.LEVEL),
          Remedy.CALIBRATE_PLATE, Set.of(Cause.PLATE_ACCURACY),
          Remedy.READ_LANDMARK_AGAIN, Set.of(Cause.LANDMARK_MOVEMENT));

  private PrecisionHints() {}

  /** The advice on an offset. */
  static Optional<PrecisionHint> on(CombinedStands repeats) {
    Estimate mean = repeats.mean();
    double variance = mean.covariance(mean);
    if (!(variance > 0)) {
      return Optional.empty();
    }
    Map<Remedy, Double> then = new EnumMap<>(Remedy.class);
    HALVED.forEach((remedy, causes) -> then.put(remedy, scaled(mean, causes, 0.5)));
    then.put(Remedy.REPEAT, repeated(repeats));
    Remedy best = then.entrySet().stream().min(Map.Entry.comparingByValue()).orElseThrow().getKey();
    Map<Cause, Double> parts = variances(mean);
    Cause dominant =
        parts.entrySet().stream().max(Map.Entry.comparingByValue()).orElseThrow().getKey();
    return Optional.of(
        new PrecisionHint(
            dominant,
            parts.get(dominant) / variance,
            best,
            mean.expanded(Estimate.COVERAGE),
            then.get(best)));
  }

  private static Map<Cause, Double> variances(Estimate mean) {
    Map<Cause, Double> parts = new EnumMap<>(Cause.class);
    for (Contribution c : mean.contributions()) {
      parts.merge(c.source().cause(), c.amount() * c.amount(), Double::sum);
    }
    return parts;
  }

  private static double scaled(Estimate mean, Set<Cause> causes, double factor) {
    List<Contribution> changed =
        mean.contributions().stream()
            .map(c -> causes.contains(c.source().cause()) ? scaled(c, factor) : c)
            .toList();
    return new Estimate(mean.value(), changed).expanded(Estimate.COVERAGE);
  }

  private static Contribution scaled(Contribution c, double factor) {
    return new Contribution(
        c.source(), c.standardUncertainty() * factor, c.sensitivity(), c.degreesOfFreedom());
  }

  /** Three stands in all, or two more, that scatter as is expected of this wearer now. */
  private static double repeated(CombinedStands repeats) {
    int now = repeats.stands();
    int then = Math.max(STANDS, now + 2);
    List<Contribution> changed =
        repeats.mean().contributions().stream()
            .map(c -> c.source().cause() == Cause.REPEATABILITY ? repeated(c, now, then) : c)
            .toList();
    return new Estimate(0, changed).expanded(Estimate.COVERAGE);
  }

  private static Contribution repeated(Contribution c, int now, int then) {
    double degrees = Math.min(StandScatter.MOST_DEGREES, c.degreesOfFreedom() + then - now);
    return new Contribution(
        c.source(),
        c.standardUncertainty() * Math.sqrt((double) now / then),
        c.sensitivity(),
        Math.max(degrees, c.degreesOfFreedom()));
  }
}
