package caryatid.standing;

import java.util.List;

/**
 * The part of a recording that is used.
 *
 * @param fromIndex first sample
 * @param toIndex one past the last sample
 * @param fromS time of the first sample, s
 * @param toS time of the last sample, s
 * @param byHand whether the user set it
 * @param leftOut what was not used, in order of time
 */
public record QuietStretch(
    int fromIndex,
    int toIndex,
    double fromS,
    double toS,
    boolean byHand,
    List<UnusedPart> leftOut) {
  public QuietStretch {
    leftOut = List.copyOf(leftOut);
  }

  /** How many samples it holds. */
  public int size() {
    return toIndex - fromIndex;
  }

  /** How long it lasts, s. */
  public double durationS() {
    return toS - fromS;
  }
}
