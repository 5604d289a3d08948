package caryatid.loadline;

import caryatid.geometry.Side;
import caryatid.remark.Place;
import caryatid.standing.Stance;
import java.util.List;
import java.util.OptionalDouble;

/**
 * How the wearer stood, as far as a load line's worth depends on it.
 *
 * @param sheet where that is written down, for problems
 * @param stance which foot stood on which plate
 * @param prosthetic the prosthetic sides
 * @param prostheticKnee whether the prosthesis has a knee
 * @param kneeLocked whether it was locked
 * @param handTouches whether a hand touched something without leaning on it
 * @param handHolds whether a hand held something
 * @param otherFootOnFloor whether the other foot stood on the floor next to the plate
 * @param otherFootHigherMm how much higher that foot stood than the plate's top, mm, negative when
 *     lower; empty where both feet stood on plates
 * @param bodyMassKg of the wearer with the prosthesis, kg; empty where it is not stated
 * @param doubts uncertainties other than those of the recording and the marks
 * @param limits where a result stops being of use
 */
public record StanceConditions(
    Place sheet,
    Stance stance,
    List<Side> prosthetic,
    boolean prostheticKnee,
    boolean kneeLocked,
    boolean handTouches,
    boolean handHolds,
    boolean otherFootOnFloor,
    OptionalDouble otherFootHigherMm,
    OptionalDouble bodyMassKg,
    AssumedUncertainties doubts,
    UseLimits limits) {
  public StanceConditions {
    prosthetic = List.copyOf(prosthetic);
  }
}
