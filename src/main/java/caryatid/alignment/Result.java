package caryatid.alignment;

import java.util.Optional;

/**
 * Everything that was found in one alignment state. Several states are a list of results.
 *
 * @param method number of the method by which it was found, from 1
 * @param program name and version of the program that made it
 * @param state what was found
 * @param earlier the states before that it was found with: how far their stands scattered counts,
 *     and one of them is marked in drawings
 */
public record Result(
    int method, String program, AlignmentState state, Optional<EarlierStates> earlier) {
  /**
   * The number of this program's method: raised with every change after which the same files give
   * other numbers or other remarks. What an older method found stands. Method 1 is that of every
   * result without a number; method 2 refuses some recordings that it took, and withholds some
   * numbers that it gave.
   */
  public static final int METHOD = 2;

  /**
   * @throws IllegalArgumentException if the method's number is below 1
   */
  public Result {
    if (method < 1) {
      throw new IllegalArgumentException("method: " + method);
    }
  }

  /** A result that is shown with no state before. */
  public Result(int method, String program, AlignmentState state) {
    this(method, program, state, Optional.empty());
  }

  /** The state before that drawings mark, if there is one. */
  public Optional<EarlierState> before() {
    return earlier.flatMap(EarlierStates::marked);
  }
}
