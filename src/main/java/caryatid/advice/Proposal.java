package caryatid.advice;

import caryatid.loadline.Target;
import java.util.List;
import java.util.OptionalDouble;

/**
 * One change that may bring the offsets within, or two with a stand between.
 *
 * @param changes one or two, in the order in which they are to be made
 * @param probability that every true offset is within its tolerance after all of them, 0 to 1
 * @param offsets what is expected after all of them
 * @param afterFirst what is expected after the first of them, which the next stand shows
 * @param kneeBehind probability that the load line then runs behind the knee, 0 to 1; empty where
 *     the knee has no target
 * @param aboutEqual whether it is as probable as the first one, as far as this can tell
 */
public record Proposal(
    List<Change> changes,
    double probability,
    List<PredictedOffset> offsets,
    List<PredictedOffset> afterFirst,
    OptionalDouble kneeBehind,
    boolean aboutEqual) {

  /**
   * One change.
   *
   * @param of what is changed
   * @param by by how much, in its unit
   * @param riseMm by how much the knee rises with it, mm
   */
  public record Change(Adjustment of, double by, double riseMm) {
    Change(Adjustment of, double by) {
      this(of, by, 0);
    }

    Change rising(double mm) {
      return new Change(of, by, mm);
    }

    /** What it is set to then. */
    public double to() {
      return of.set() + by;
    }
  }

  /**
   * An offset as it is expected.
   *
   * @param target what is recommended
   * @param mm expected, mm
   * @param lowMm lower end of its 90 % interval, mm
   * @param highMm upper end
   */
  public record PredictedOffset(Target target, double mm, double lowMm, double highMm) {}

  public Proposal {
    changes = List.copyOf(changes);
    offsets = List.copyOf(offsets);
    afterFirst = List.copyOf(afterFirst);
  }

  /** The same, and whether it is about as probable as the first. */
  Proposal with(boolean equal) {
    return new Proposal(changes, probability, offsets, afterFirst, kneeBehind, equal);
  }

  /** The change that is to be made now. */
  public Change first() {
    return changes.get(0);
  }
}
