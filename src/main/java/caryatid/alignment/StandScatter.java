package caryatid.alignment;

import caryatid.geometry.Plane;
import caryatid.loadline.AssumedUncertainties;
import caryatid.standing.LoadLineOwner;
import caryatid.uncertainty.Quantiles;
import caryatid.uncertainty.SampleVariance;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How far one load line of a wearer scatters from stand to stand of one alignment, sway included:
 * what is usual among persons, pooled with what the wearer's own stands show (Smyth 2004, Stat Appl
 * Genet Mol Biol 3:3). Differences from state to state are never taken for scatter.
 *
 * @param usual what is usual
 * @param own what this wearer's states of several stands show, all of them; empty if there are none
 */
record StandScatter(SampleVariance usual, Optional<SampleVariance> own) {
  /**
   * More degrees of freedom are not believed, however many stands there are: a wearer does not
   * scatter alike from month to month, and stands in a row know of each other (common practice, no
   * source).
   */
  static final double MOST_DEGREES = 12;

  /** A variance above this point of F is not what is usual. */
  private static final double RESTLESS = 0.90;

  /**
   * The scatter of a line.
   *
   * @param hereMm standard deviation between the stands of the state itself, mm; empty for one
   * @param stands how many stands the state has
   * @param before the wearer's earlier states; those of one stand add nothing
   */
  static StandScatter of(
      Plane plane,
      LoadLineOwner line,
      AssumedUncertainties doubts,
      OptionalDouble hereMm,
      int stands,
      List<EarlierState> before) {
    List<SampleVariance> seen = new ArrayList<>();
    for (EarlierState state : before) {
      state.spreadMm(plane, line).ifPresent(mm -> seen.add(variance(mm, state.stands())));
    }
    hereMm.ifPresent(mm -> seen.add(variance(mm, stands)));
    double usualMm = doubts.repeatMm(plane);
    return new StandScatter(
        new SampleVariance(usualMm * usualMm, doubts.repeatDegreesOfFreedom()),
        seen.isEmpty() ? Optional.empty() : Optional.of(SampleVariance.pooled(seen)));
  }

  private static SampleVariance variance(double sdMm, int stands) {
    return new SampleVariance(sdMm * sdMm, stands - 1);
  }

  /** Variance of one stand's offset, mm², and how well it is known. */
  SampleVariance ofOneStand() {
    SampleVariance pooled =
        own.map(seen -> SampleVariance.pooled(List.of(usual, seen))).orElse(usual);
    return new SampleVariance(pooled.variance(), Math.min(MOST_DEGREES, pooled.degreesOfFreedom()));
  }

  /** Standard deviation that is usual, mm. */
  double usualMm() {
    return Math.sqrt(usual.variance());
  }

  /** Standard deviation of this wearer's own stands, mm; empty where there are none. */
  OptionalDouble ownMm() {
    return own.map(seen -> OptionalDouble.of(Math.sqrt(seen.variance())))
        .orElse(OptionalDouble.empty());
  }

  /**
   * Whether this wearer scatters by more than what is usual lets expect in nine of ten wearers
   * (ratio of two variances, Fisher's F).
   */
  boolean isRestless() {
    return own.isPresent()
        && own.get().variance()
            > usual.variance()
                * Quantiles.f(RESTLESS, own.get().degreesOfFreedom(), usual.degreesOfFreedom());
  }
}
