package caryatid.advice;

import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * What can be changed at a joint of this prosthesis, as it was entered: nothing else is proposed.
 *
 * @param kind what
 * @param set what it is set to, in the kind's unit
 * @param lowest how far it goes, by its travel, its thread and its maker's limit, whichever is
 *     nearest
 * @param highest the same to the other side
 * @param step the smallest amount it is changed by, above 0
 * @param degreesPerTurn how far one turn of a set screw tilts the adapter, deg, above 0; empty
 *     where it was not entered
 */
public record Adjustment(
    ChangeKind kind,
    double set,
    double lowest,
    double highest,
    double step,
    OptionalDouble degreesPerTurn) {
  private static final double ROUNDING = 1e-9;

  /**
   * @throws IllegalArgumentException if a number is out of its range
   */
  public Adjustment {
    if (!Double.isFinite(set) || !(lowest <= highest) || !(step > 0)) {
      throw new IllegalArgumentException(set + ", " + lowest + " to " + highest + " by " + step);
    }
    if (!(degreesPerTurn.orElse(1) > 0)) {
      throw new IllegalArgumentException("degrees per turn: " + degreesPerTurn);
    }
  }

  /** Whether it goes so far. */
  boolean reaches(double by) {
    return set + by >= lowest - ROUNDING && set + by <= highest + ROUNDING;
  }

  /** Turns of the set screw for an amount; empty where they are not known or it is no angle. */
  public OptionalDouble turns(double by) {
    return kind.isAngle() && degreesPerTurn.isPresent()
        ? OptionalDouble.of(Math.abs(by) / degreesPerTurn.getAsDouble())
        : OptionalDouble.empty();
  }

  /**
   * The amounts it can be changed by, without 0, within the travel even where it is set beyond it;
   * at most 40 to a side.
   */
  double[] amounts() {
    int down = count(set - lowest);
    int up = count(highest - set);
    double wide = Math.ceil(Math.max(down, up) / 40.0) * step;
    return IntStream.rangeClosed(
            (int) -Math.floor((set - lowest) / wide + ROUNDING),
            (int) Math.floor((highest - set) / wide + ROUNDING))
        .filter(steps -> steps != 0)
        .mapToDouble(steps -> steps * wide)
        .filter(this::reaches)
        .toArray();
  }

  private int count(double travel) {
    return (int) Math.max(1, Math.floor(travel / step + ROUNDING));
  }
}
