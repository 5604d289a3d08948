package caryatid.wording;

import caryatid.geometry.Plane;
import caryatid.loadline.Finding;
import caryatid.loadline.Offset;
import caryatid.loadline.Target;
import caryatid.remark.Argument;
import caryatid.remark.Unit;
import caryatid.uncertainty.Estimate;

/** Offsets, targets and results in words: the number never stands without its direction. */
public final class OffsetWords {
  private final Wording wording;

  /** Words in a language. */
  public OffsetWords(Wording wording) {
    this.wording = wording;
  }

  /** An offset in words: {@code 12.3 mm anterior}. */
  public String offset(Offset offset) {
    return distance(offset.plane(), offset.mm().value());
  }

  /** A signed distance in words: {@code 12.3 mm anterior}; 0 has no direction. */
  public String distance(Plane plane, double mm) {
    return (wording.number(Math.abs(mm), Unit.MM) + " " + direction(plane, mm)).strip();
  }

  /** The word for a distance's direction; empty for one that is written as 0. */
  public String direction(Plane plane, double mm) {
    String number = wording.number(Math.abs(mm), Unit.MM);
    boolean zero = number.equals(wording.number(0, Unit.MM));
    return zero ? "" : wording.word("OffsetWords." + direction(plane, mm > 0));
  }

  /** A signed distance in words and whole millimetres, for drawings: {@code 12 mm anterior}. */
  public String rounded(Plane plane, double mm) {
    long rounded = Math.round(Math.abs(mm));
    String direction =
        rounded == 0 ? "" : " " + wording.word("OffsetWords." + direction(plane, mm > 0));
    return rounded + "\u00a0" + Unit.MM.symbol() + direction;
  }

  /** The expanded uncertainty (95 %) with its sign: {@code ± 4.1 mm}. */
  public String uncertainty(Offset offset) {
    return "±\u00a0" + wording.number(offset.mm().expanded(Estimate.COVERAGE), Unit.MM);
  }

  /** A target in words: {@code 15.0 mm anterior (5.0 to 25.0)}. */
  public String target(Target target) {
    return wording.fill(
        "OffsetWords.target",
        Argument.text(distance(target.plane(), target.recommendedMm())),
        Argument.text(wording.signed(target.lowestMm(), Unit.MM)),
        Argument.text(wording.signed(target.highestMm(), Unit.MM)));
  }

  /** A finding's result in words, with how far the load line runs from edge and recommendation. */
  public String result(Finding finding) {
    ResultWords words = new ResultWords(wording);
    String result = words.result(finding) + ", " + words.distances(finding);
    return finding.undecidable() ? result + "; " + wording.word("OffsetWords.undecidable") : result;
  }

  /** The name of a direction: anterior or lateral where an offset is positive. */
  static String direction(Plane plane, boolean positive) {
    return plane == Plane.SAGITTAL
        ? positive ? "anterior" : "posterior"
        : positive ? "lateral" : "medial";
  }
}
