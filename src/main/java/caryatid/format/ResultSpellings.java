package caryatid.format;

import caryatid.geometry.Plane;
import caryatid.geometry.Side;
import caryatid.loadline.LandmarkKind;
import caryatid.loadline.LoadLineMethod;
import caryatid.loadline.Verdict;
import caryatid.sheet.AmputationLevel;
import caryatid.standing.LoadLineOwner;
import caryatid.uncertainty.Cause;

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

  /** For example {@code vertical}. */
  public static String method(LoadLineMethod method) {
    return FindingSpellings.LINE.of(method);
  }

  /** For example {@code inside-too-close}. */
  public static String verdict(Verdict verdict) {
    return FindingSpellings.VERDICT.of(verdict);
  }

  /** For example {@code transtibial}. */
  public static String level(AmputationLevel level) {
    return BodySpellings.LEVEL.of(level);
  }

  /** For example {@code knee-centre}; {@code other} for one of the clinic's own. */
  public static String landmark(LandmarkKind kind) {
    return BodySpellings.LANDMARK.of(kind);
  }

  /** For example {@code marking}. */
  public static String cause(Cause cause) {
    return FindingSpellings.CAUSE.of(cause);
  }
}
