package caryatid.loadline;

import caryatid.uncertainty.Conformity;
import caryatid.uncertainty.Estimate;

/**
 * How a result follows from an offset and its tolerance.
 *
 * @param confidence probability that "within" and "outside" must have, above 0.5, below 1
 * @param guarded whether the uncertainty counts; without it, inside is within and not inside is
 *     outside (simple acceptance, JCGM 106:2012, 8.2)
 */
public record DecisionRule(double confidence, boolean guarded) {
  /** By conformance probability, with the probability of the intervals that are stated, 95 %. */
  public static final DecisionRule USUAL = new DecisionRule(Estimate.COVERAGE, true);

  /** The simple rule, without a guard band. */
  public static final DecisionRule SIMPLE = new DecisionRule(Estimate.COVERAGE, false);

  /**
   * @throws IllegalArgumentException if the confidence is out of its range
   */
  public DecisionRule {
    if (!(confidence > 0.5 && confidence < 1)) {
      throw new IllegalArgumentException("confidence: " + confidence);
    }
  }

  /**
   * The result. "Outside" needs the confidence on one side of the tolerance: a measurement so wide
   * that the true offset may as well lie below as above decides nothing, however improbable it is
   * within.
   *
   * @param inside whether the measured offset lies in the tolerance
   */
  public Verdict verdict(boolean inside, Conformity conformity) {
    if (!guarded) {
      return inside ? Verdict.WITHIN : Verdict.OUTSIDE;
    }
    if (conformity.within() >= confidence) {
      return Verdict.WITHIN;
    }
    if (Math.max(conformity.below(), conformity.above()) >= confidence) {
      return Verdict.OUTSIDE;
    }
    return inside ? Verdict.INSIDE_TOO_CLOSE : Verdict.OUTSIDE_TOO_CLOSE;
  }
}
