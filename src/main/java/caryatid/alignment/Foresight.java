package caryatid.alignment;

import caryatid.loadline.DecisionRule;
import caryatid.loadline.Finding;
import caryatid.loadline.Target;
import caryatid.uncertainty.Cause;
import caryatid.uncertainty.Conformity;
import caryatid.uncertainty.Contribution;
import caryatid.uncertainty.Estimate;
import java.util.List;
import java.util.Optional;
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

  /** Of every finding that is judged by its uncertainty, and whose stands' scatter is known. */
  public static List<Foresight> of(AlignmentState state) {
    return state.findings().stream().flatMap(finding -> of(state, finding).stream()).toList();
  }

  /** Of one finding of a state; empty by the simple rule, or if the scatter is not known. */
  public static Optional<Foresight> of(AlignmentState state, Finding finding) {
    DecisionRule rule = state.trial().rule();
    List<Contribution> all = finding.offset().mm().contributions();
    return all.stream()
        .filter(c -> rule.guarded() && c.source().cause() == Cause.REPEATABILITY)
        .findFirst()
        .map(
            mean ->
                new Foresight(
                    finding.target(),
                    rule.confidence(),
                    times(mean, Math.sqrt(state.stands().size())),
                    new Estimate(0, all.stream().filter(c -> !c.equals(mean)).toList())));
  }

  /**
   * Whether a tolerance is found met or not met if the line is measured at an offset.
   *
   * @param offsetMm the offset, mm, signed as offsets are
   * @param stands how many stands, at least 1
   * @param marking what becomes of the uncertainty of marks and measuring lines, as a factor
   */
  public boolean decidesAt(double offsetMm, int stands, double marking) {
    Estimate there = new Estimate(offsetMm, after(stands, marking).contributions());
    double within = Conformity.of(there, target.lowestMm(), target.highestMm()).within();
    return within >= confidence || within <= 1 - confidence;
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
