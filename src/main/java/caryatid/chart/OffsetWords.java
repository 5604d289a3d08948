package caryatid.chart;

import caryatid.geometry.Plane;
import caryatid.remark.Argument;
import caryatid.wording.Wording;

/** Offsets as people say them: whole millimetres and a word for the direction. */
public final class OffsetWords {
  private OffsetWords() {}

  /**
   * An offset in words, for example {@code 12 mm anterior}.
   *
   * @param mm signed as offsets are, mm
   */
  public static String say(Plane plane, double mm, Wording wording) {
    long rounded = Math.round(Math.abs(mm));
    return rounded == 0
        ? wording.word("OffsetWords.NONE")
        : wording.fill("OffsetWords." + direction(plane, mm), Argument.count(rounded));
  }

  private static String direction(Plane plane, double mm) {
    if (plane == Plane.SAGITTAL) {
      return mm > 0 ? "ANTERIOR" : "POSTERIOR";
    }
    return mm > 0 ? "LATERAL" : "MEDIAL";
  }

  /** A signed whole number of millimetres without unit, for example {@code +12}. */
  static String signed(double mm) {
    long rounded = Math.round(Math.abs(mm));
    return rounded == 0 ? "0" : (mm > 0 ? "+" : "\u2212") + rounded;
  }
}
