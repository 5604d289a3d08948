package caryatid.standing;

import caryatid.remark.Coded;

/**
 * A part of a recording that was not used, and why.
 *
 * @param fromS from, s
 * @param toS up to, s
 * @param reason why
 */
public record UnusedPart(double fromS, double toS, Reason reason) {
  /** Why a part was left out. */
  public enum Reason implements Coded {
    UNLOADED("Reason.UNLOADED"),
    SETTLING("Reason.SETTLING"),
    STEP_OR_SHIFT("Reason.STEP_OR_SHIFT"),
    DRIFT("Reason.DRIFT"),
    GAP("Reason.GAP"),
    SHORTER_STRETCH("Reason.SHORTER_STRETCH"),
    BY_HAND("Reason.BY_HAND");

    private final String code;

    Reason(String code) {
      this.code = code;
    }

    @Override
    public String code() {
      return code;
    }
  }
}
