package caryatid.alignment;

import java.util.List;

/**
 * Everything that was found.
 *
 * @param version of the result's form; raised when its meaning changes
 * @param program name and version of the program that made it
 * @param states in the order they were measured, at least one
 */
public record Result(int version, String program, List<AlignmentState> states) {
  /** The version this program writes. */
  public static final int VERSION = 1;

  /**
   * @throws IllegalArgumentException if there is no state
   */
  public Result {
    if (states.isEmpty()) {
      throw new IllegalArgumentException("a result without a state");
    }
    states = List.copyOf(states);
  }
}
