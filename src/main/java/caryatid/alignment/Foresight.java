package caryatid.alignment;

import caryatid.loadline.Finding;
import caryatid.loadline.Target;
import caryatid.uncertainty.Cause;
import caryatid.uncertainty.Conformity;
import caryatid.uncertainty.Contribution;
import caryatid.uncertainty.Estimate;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What a next state of the same wearer, measured as this one was, will be able to tell about a
 * tolerance.
 *
 * @param target the target
 * @param confidence probability that "met" must have
 * @param scatter what one stand's scatter adds to the offset
 * @param rest the offset's uncertainty without it
 */
public record Foresight(Target target, double confidence, Contribution scatter, Estimate rest) {
  private static final double FINE_MM = 0.05;

  /** Of every finding that is judged by its uncertainty. */
  public static List<Foresight> of(AlignmentState state) {
    boolean guarded = state.stands().get(0).trial().rule().guarded();
    double confidence = state.stands().get(0).trial().rule().confidence();
    return state.findings().stream()
        .filter(finding -> guarded)
        .map(finding -> of(finding, state.stands().size(), confidence))
        .toList();
  }

  private static Foresight of(Finding finding, int stands, double confidence) {
    List<Contribution> all = finding.offset().mm().contributions();
    Contribution mean =
        all.stream()
            .filter(c -> c.source().cause() == Cause.REPEATABILITY)
            .findFirst()
            .orElseThrow(() -> new IllegalArgumentException("a finding of no state"));
    return new Foresight(
        finding.target(),
        confidence,
        times(mean, Math.sqrt(stands)),
        new Estimate(0, all.stream().filter(c -> !c.equals(mean)).toList()));
  }

  /**
   * How far from the tolerance's middle the line may be measured for "met" to be said.
   *
   * @param stands how many stands, at least 1
   * @return mm, not negative; empty where it can never be said
   */
  public OptionalDouble decidesWithinMm(int stands) {
    return decidesWithinMm(stands, 1);
  }

  /**
   * The same with the landmarks marked and measured better.
   *
   * @param marking what becomes of the uncertainty of marks and measuring lines, as a factor
   */
  public OptionalDouble decidesWithinMm(int stands, double marking) {
    Estimate mm = after(stands, marking);
    double half = (target.highestMm() - target.lowestMm()) / 2;
    if (!met(mm, 0, half)) {
      return OptionalDouble.empty();
    }
    double low = 0;
    double high = half;
    while (high - low > FINE_MM) {
      double middle = (low + high) / 2;
      if (met(mm, middle, half)) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return OptionalDouble.of(low);
  }

  private boolean met(Estimate mm, double fromMiddle, double half) {
    Estimate there = new Estimate(fromMiddle, mm.contributions());
    return Conformity.of(there, -half, half).within() >= confidence;
  }

  private Estimate after(int stands, double marking) {
    List<Contribution> better =
        rest.contributions().stream()
            .map(
                c ->
                    c.source().cause() == Cause.MARKING || c.source().cause() == Cause.REGISTRATION
                        ? times(c, marking)
                        : c)
            .toList();
    return new Estimate(0, better).with(times(scatter, 1 / Math.sqrt(stands)));
  }

  private static Contribution times(Contribution c, double factor) {
    return new Contribution(
        c.source(), factor * c.standardUncertainty(), c.sensitivity(), c.degreesOfFreedom());
  }
}
