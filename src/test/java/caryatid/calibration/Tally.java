package caryatid.calibration;

import caryatid.loadline.Verdict;

/**
 * Counts over simulated fittings in one plane.
 *
 * @param runs fittings that gave a result
 * @param covered intervals that held the truth
 * @param halfWidthSumMm sum of the half-widths, mm
 * @param falseWithin targets called within although the truth was on the very edge, of two for each
 *     run
 * @param saidWithin targets called within, the truth at a place drawn by chance
 * @param saidOutside targets called outside
 * @param wrongWithin of those called within, truly outside
 * @param wrongOutside of those called outside, truly within
 * @param metCentred targets called within whose middle is the truth
 */
record Tally(
    int runs,
    int covered,
    double halfWidthSumMm,
    int falseWithin,
    int saidWithin,
    int saidOutside,
    int wrongWithin,
    int wrongOutside,
    int metCentred) {
  static final Tally NONE = new Tally(0, 0, 0, 0, 0, 0, 0, 0, 0);

  static Tally of(Outcome o) {
    boolean within = o.verdict() == Verdict.WITHIN;
    boolean outside = o.verdict() == Verdict.OUTSIDE;
    return new Tally(
        1,
        one(o.covered()),
        o.halfWidthMm(),
        o.falseWithin(),
        one(within),
        one(outside),
        one(within && !o.trulyWithin()),
        one(outside && o.trulyWithin()),
        one(o.metCentred()));
  }

  private static int one(boolean yes) {
    return yes ? 1 : 0;
  }

  Tally plus(Tally t) {
    return new Tally(
        runs + t.runs,
        covered + t.covered,
        halfWidthSumMm + t.halfWidthSumMm,
        falseWithin + t.falseWithin,
        saidWithin + t.saidWithin,
        saidOutside + t.saidOutside,
        wrongWithin + t.wrongWithin,
        wrongOutside + t.wrongOutside,
        metCentred + t.metCentred);
  }

  /** Intervals that held the truth, %. */
  double coverage() {
    return 100.0 * covered / runs;
  }

  /** Mean half-width, mm. */
  double halfWidthMm() {
    return halfWidthSumMm / runs;
  }

  /** Called within with the truth in the middle, %. */
  double metCentredPercent() {
    return 100.0 * metCentred / runs;
  }

  /** Called within, the truth at a place drawn by chance, %. */
  double saidWithinPercent() {
    return 100.0 * saidWithin / runs;
  }

  /** Called outside, %. */
  double saidOutsidePercent() {
    return 100.0 * saidOutside / runs;
  }

  /** Called within with the truth on the edge, %. */
  double falseWithinPercent() {
    return 50.0 * falseWithin / runs;
  }

  /** Truly outside among those called within, %; 0 where none was. */
  double outsideThoughWithin() {
    return saidWithin == 0 ? 0 : 100.0 * wrongWithin / saidWithin;
  }

  /** Truly within among those called outside, %; 0 where none was. */
  double withinThoughOutside() {
    return saidOutside == 0 ? 0 : 100.0 * wrongOutside / saidOutside;
  }
}
