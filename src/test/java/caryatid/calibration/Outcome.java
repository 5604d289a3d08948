package caryatid.calibration;

import caryatid.alignment.AlignmentState;
import caryatid.loadline.Finding;
import caryatid.loadline.Verdict;
import caryatid.uncertainty.Estimate;
import java.util.List;

/**
 * What a simulated fitting's finding in one plane was worth.
 *
 * @param errorMm measured less true offset, mm
 * @param halfWidthMm half the stated 95 % interval, mm
 * @param falseWithin how many of the two targets with the truth on the edge were called within
 * @param verdict of the target with the truth at a place drawn by chance
 * @param trulyWithin whether that truth is within
 * @param metCentred whether the target whose middle is the truth was called within
 */
record Outcome(
    double errorMm,
    double halfWidthMm,
    int falseWithin,
    Verdict verdict,
    boolean trulyWithin,
    boolean metCentred) {

  static Outcome of(AlignmentState state, Aim aim) {
    List<Finding> findings =
        state.findings().stream().filter(f -> f.target().plane() == aim.plane()).toList();
    Estimate offset = findings.get(0).offset().mm();
    int falseWithin = 0;
    for (Finding edge : findings.subList(0, 2)) {
      falseWithin += edge.verdict() == Verdict.WITHIN ? 1 : 0;
    }
    return new Outcome(
        offset.value() - aim.trueMm(),
        offset.expanded(0.95),
        falseWithin,
        findings.get(2).verdict(),
        aim.trulyWithin(),
        findings.get(3).verdict() == Verdict.WITHIN);
  }

  /** Whether the interval held the truth. */
  boolean covered() {
    return StrictMath.abs(errorMm) <= halfWidthMm;
  }
}
