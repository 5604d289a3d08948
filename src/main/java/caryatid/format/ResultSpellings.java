package caryatid.format;

import caryatid.geometry.Plane;
import caryatid.geometry.Side;
import caryatid.loadline.Verdict;
import caryatid.standing.LoadLineOwner;

/** The spellings of the result's JSON, for other files that programs read. */
public final class ResultSpellings {
  private ResultSpellings() {}

  /** For example {@code sagittal}. */
  public static String plane(Plane plane) {
    return BodySpellings.PLANE.of(plane);
  }

  /** For example {@code left}. */
  public static String side(Side side) {
    return BodySpellings.SIDE.of(side);
  }

  /** For example {@code left-foot}. */
  public static String line(LoadLineOwner of) {
    return FindingSpellings.LINE_OF.of(of);
  }

  /** For example {@code inside-too-close}. */
  public static String verdict(Verdict verdict) {
    return FindingSpellings.VERDICT.of(verdict);
  }
}
