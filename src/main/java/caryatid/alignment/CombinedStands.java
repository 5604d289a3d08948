package caryatid.alignment;

import caryatid.loadline.AssumedUncertainties;
import caryatid.loadline.LoadLineMethod;
import caryatid.loadline.Offset;
import caryatid.uncertainty.Cause;
import caryatid.uncertainty.Contribution;
import caryatid.uncertainty.Estimate;
import caryatid.uncertainty.Quantiles;
import caryatid.uncertainty.SampleStatistics;
import caryatid.uncertainty.SampleVariance;
import caryatid.uncertainty.Source;
import java.util.EnumSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * One offset in each stand of a state, and its value for the state as a mean of the stands.
 *
 * <p>Stands differ by sway and by how the wearer stepped on. Their scatter is pooled, at every
 * number of stands, from what is usual, what the wearer's earlier states show and what these stands
 * show; it holds both, so the sway of each stand is not counted beside it. It is never taken for
 * less than that sway.
 */
final class CombinedStands {
  /** So many stands are asked of a wearer who scatters by more than is usual. */
  static final int OF_THE_RESTLESS = 5;

  /** Causes that a second state, measured on the same plate, shares with the first. */
  private static final Set<Cause> SHARED_BY_STATES =
      EnumSet.of(Cause.PLATE_ACCURACY, Cause.LEVEL, Cause.REGISTRATION);

  private final List<Offset> offsets;
  private final StandScatter scatter;
  private final Estimate mean;

  /**
   * @param offsets the same offset in each stand, at least one
   * @param doubts what is usual between stands
   * @param before the wearer's earlier states, which tell of vertical lines
   */
  CombinedStands(List<Offset> offsets, AssumedUncertainties doubts, List<EarlierState> before) {
    this.offsets = List.copyOf(offsets);
    Offset first = offsets.get(0);
    this.scatter =
        StandScatter.of(
            first.plane(),
            first.of(),
            doubts,
            spreadMm(),
            offsets.size(),
            first.kind() == LoadLineMethod.VERTICAL ? before : List.of());
    this.mean = combine();
  }

  int stands() {
    return offsets.size();
  }

  /** The state's offset, mm. */
  Estimate mean() {
    return mean;
  }

  StandScatter scatter() {
    return scatter;
  }

  /**
   * The smallest difference to another state measured alike that is not put down to chance. What
   * both states share cancels; the rest counts twice.
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
   * Whether the stands differ by more than what is usual lets expect in 95 % of cases (ratio of two
   * variances, Fisher's F).
   */
  boolean disagree() {
    OptionalDouble spread = spreadMm();
    return spread.isPresent()
        && spread.getAsDouble()
            > scatter.usualMm()
                * Math.sqrt(
                    Quantiles.f(
                        Estimate.COVERAGE, offsets.size() - 1, scatter.usual().degreesOfFreedom()));
  }

  /** Whether this wearer scatters so much that more stands are needed than there are. */
  boolean needMore() {
    return offsets.size() < OF_THE_RESTLESS && scatter.isRestless();
  }

  private Estimate combine() {
    Estimate sum = withoutSway(offsets.get(0));
    for (Offset offset : offsets.subList(1, offsets.size())) {
      sum = sum.plus(1, withoutSway(offset));
    }
    return sum.times(1.0 / offsets.size()).with(repeatability());
  }

  private Contribution repeatability() {
    SampleVariance one = scatter.ofOneStand();
    double u = Math.max(Math.sqrt(one.variance() / offsets.size()), swayMm());
    Offset first = offsets.get(0);
    String kind = first.kind() == LoadLineMethod.VERTICAL ? "VERTICAL" : "MEASURED_FORCE";
    String of = first.of().lastPart() + " " + first.plane().lastPart() + " " + kind;
    return new Contribution(new Source(Cause.REPEATABILITY, of), u, 1, one.degreesOfFreedom());
  }

  /** What the sway within the stands alone makes of the mean's uncertainty, mm. */
  private double swayMm() {
    double squares =
        offsets.stream()
            .flatMap(o -> o.mm().contributions().stream())
            .filter(c -> c.source().cause() == Cause.SWAY)
            .mapToDouble(c -> c.amount() * c.amount())
            .sum();
    return Math.sqrt(squares) / offsets.size();
  }

  private static Estimate withoutSway(Offset offset) {
    return new Estimate(
        offset.mm().value(),
        offset.mm().contributions().stream()
            .filter(c -> c.source().cause() != Cause.SWAY)
            .toList());
  }
}
