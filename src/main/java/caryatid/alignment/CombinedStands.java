package caryatid.alignment;

import caryatid.loadline.LoadLineMethod;
import caryatid.loadline.Offset;
import caryatid.uncertainty.Cause;
import caryatid.uncertainty.Contribution;
import caryatid.uncertainty.Estimate;
import caryatid.uncertainty.Quantiles;
import caryatid.uncertainty.SampleStatistics;
import caryatid.uncertainty.Source;
import java.util.EnumSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * One offset in each stand of a state, and its value for the state as a mean of the stands.
 *
 * <p>Stands differ by sway and by how the wearer stepped on; their standard deviation shows both at
 * once. With three or more stands it is taken from the stands alone; from two, it is pooled with
 * the default, because one difference alone says next to nothing (Student's t with one degree of
 * freedom); with one stand the default is added to the stand's sway.
 */
final class CombinedStands {
  private static final int ENOUGH_STANDS = 3;

  /** Causes that a second state, measured on the same plate, shares with the first. */
  private static final Set<Cause> SHARED_BY_STATES =
      EnumSet.of(Cause.PLATE_ACCURACY, Cause.LEVEL, Cause.REGISTRATION);

  private final List<Offset> offsets;
  private final double defaultSdMm;
  private final double defaultDegrees;
  private final Estimate mean;

  /**
   * @param offsets the same offset in each stand, at least one
   * @param defaultSdMm standard deviation between stands where the stands cannot show it, mm
   * @param defaultDegrees its degrees of freedom
   */
  CombinedStands(List<Offset> offsets, double defaultSdMm, double defaultDegrees) {
    this.offsets = List.copyOf(offsets);
    this.defaultSdMm = defaultSdMm;
    this.defaultDegrees = defaultDegrees;
    this.mean = combine();
  }

  int stands() {
    return offsets.size();
  }

  /** The state's offset, mm. */
  Estimate mean() {
    return mean;
  }

  /**
   * The smallest difference to another state measured alike that is not put down to chance. What
   * both states share cancels; the rest counts twice. Both states together know the spread of their
   * stands better, but the stands of one state are nearer to each other in time than to those of
   * the next; so its degrees of freedom are left as they are.
   */
  double smallestDifference() {
    List<Contribution> own =
        mean.contributions().stream()
            .filter(c -> !SHARED_BY_STATES.contains(c.source().cause()))
            .toList();
    return Math.sqrt(2) * new Estimate(0, own).expanded(Estimate.COVERAGE);
  }

  /** Standard deviation of the stands, mm; empty for one. */
  OptionalDouble spreadMm() {
    double[] values = offsets.stream().mapToDouble(o -> o.mm().value()).toArray();
    return values.length == 1
        ? OptionalDouble.empty()
        : OptionalDouble.of(SampleStatistics.standardDeviation(values));
  }

  /**
   * Whether the stands differ by more than the default lets expect in 95 % of cases (ratio of two
   * variances, Fisher's F with the stands' degrees of freedom and the default's).
   */
  boolean disagree() {
    OptionalDouble spread = spreadMm();
    return spread.isPresent()
        && spread.getAsDouble()
            > defaultSdMm
                * Math.sqrt(Quantiles.f(Estimate.COVERAGE, offsets.size() - 1, defaultDegrees));
  }

  private Estimate combine() {
    int k = offsets.size();
    if (k == 1) {
      return offsets.get(0).mm().with(repeat(defaultSdMm, defaultDegrees));
    }
    Estimate sum = withoutSway(offsets.get(0));
    for (Offset offset : offsets.subList(1, k)) {
      sum = sum.plus(1, withoutSway(offset));
    }
    double sd = spreadMm().orElseThrow();
    return sum.times(1.0 / k).with(repeated(sd, k));
  }

  private Contribution repeated(double sd, int k) {
    if (k >= ENOUGH_STANDS) {
      return repeat(sd / Math.sqrt(k), k - 1);
    }
    double degrees = defaultDegrees + k - 1;
    double pooled = (defaultDegrees * defaultSdMm * defaultSdMm + (k - 1) * sd * sd) / degrees;
    return repeat(Math.sqrt(pooled / k), degrees);
  }

  private Contribution repeat(double u, double degrees) {
    Offset first = offsets.get(0);
    String kind = first.kind() == LoadLineMethod.VERTICAL ? "VERTICAL" : "MEASURED_FORCE";
    String of = first.of().lastPart() + " " + first.plane().lastPart() + " " + kind;
    return new Contribution(new Source(Cause.REPEATABILITY, of), u, 1, degrees);
  }

  private static Estimate withoutSway(Offset offset) {
    return new Estimate(
        offset.mm().value(),
        offset.mm().contributions().stream()
            .filter(c -> c.source().cause() != Cause.SWAY)
            .toList());
  }
}
