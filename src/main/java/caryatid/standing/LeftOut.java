package caryatid.standing;

/**
 * A part of a recording that was not used.
 *
 * @param fromS from, s
 * @param toS up to, s
 * @param reason why
 */
public record LeftOut(double fromS, double toS, Reason reason) {
  /** Why a part was left out. */
  public enum Reason {
    UNLOADED,
    SETTLING,
    STEP_OR_SHIFT,
    DRIFT,
    GAP,
    SHORTER_STRETCH,
    BY_HAND
  }
}
