package caryatid.loadline;

import caryatid.remark.Coded;

/**
 * The result of a finding (JCGM 106:2012; four-way statement after ILAC-G8:09/2019, from memory).
 */
public enum Verdict implements Coded {
  WITHIN("Verdict.WITHIN"),
  /** Measured inside, too close to call. */
  INSIDE_TOO_CLOSE("Verdict.INSIDE_TOO_CLOSE"),
  /** Measured outside, too close to call. */
  OUTSIDE_TOO_CLOSE("Verdict.OUTSIDE_TOO_CLOSE"),
  OUTSIDE("Verdict.OUTSIDE");

  private final String code;

  Verdict(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }

  /** Whether the measurement decides neither way. */
  public boolean tooClose() {
    return this == INSIDE_TOO_CLOSE || this == OUTSIDE_TOO_CLOSE;
  }
}
