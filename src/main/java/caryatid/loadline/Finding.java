package caryatid.loadline;

/**
 * One offset against one target.
 *
 * @param offset the offset, of the vertical load line
 * @param target the target
 * @param probabilityWithin probability that the true offset is within the tolerance, 0 to 1
 * @param decidable whether the tolerance is wide enough for this measurement to say "within" at all
 * @param verdict the result
 */
public record Finding(
    Offset offset, Target target, double probabilityWithin, boolean decidable, Verdict verdict) {

  /** Whether it is open because the tolerance is too narrow for this measurement. */
  public boolean undecidable() {
    return verdict != Verdict.OUTSIDE && !decidable;
  }
}
