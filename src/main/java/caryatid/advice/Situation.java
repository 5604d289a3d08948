package caryatid.advice;

import caryatid.loadline.Target;
import caryatid.remark.Remark;
import java.util.List;
import java.util.Set;

/**
 * All that an advice is given on.
 *
 * @param leg the leg, its landmarks as in the newest state
 * @param states what was measured, oldest first; the last one at the present setting
 * @param targets what is recommended for this leg
 * @param adjustments what can be changed at this prosthesis
 * @param circumstances what holds of the newest stand
 * @param plainCauses what is to be ruled out first: shoe, length, seat in the socket, load share
 * @param extension what a contracture leaves
 */
public record Situation(
    LegChain leg,
    List<MeasuredState> states,
    List<Target> targets,
    List<Adjustment> adjustments,
    Set<Circumstance> circumstances,
    List<Remark> plainCauses,
    Extension extension) {

  /** What may hold of the newest stand. */
  public enum Circumstance {
    /** Its recording gave no result. */
    REFUSED,
    /** The knee was locked. */
    LOCKED,
    /** A hand held, or touched. */
    HAND_HELD,
    /** Something was set otherwise since. */
    CHANGED_SINCE,
    /** The knee is polycentric, or may be, and nobody noted which axis the document names. */
    AXIS_NOT_NAMED,
    /** Of a prosthetic knee, nobody noted which axis or point was marked. */
    AXIS_ASKED,
    /** A prosthetic knee may bend. */
    KNEE_WARNING,
    /** It was a single stand, and decides neither way. */
    ONE_UNDECIDED_STAND
  }

  public Situation {
    states = List.copyOf(states);
    targets = List.copyOf(targets);
    adjustments = List.copyOf(adjustments);
    circumstances = Set.copyOf(circumstances);
    plainCauses = List.copyOf(plainCauses);
  }

  boolean is(Circumstance circumstance) {
    return circumstances.contains(circumstance);
  }
}
