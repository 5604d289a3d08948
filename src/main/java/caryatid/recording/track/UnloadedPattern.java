package caryatid.recording.track;

import caryatid.recording.table.SampleSeries;
import java.util.BitSet;

/**
 * How an empty plate shows in a recording that has no vertical force: a centre of pressure far from
 * any plate, one that jumps about, or one that stands still as no person does.
 */
final class UnloadedPattern {
  /** Further from the origin than any plate in a laboratory's frame, mm. */
  private static final double FAR_MM = 10_000;

  /**
   * Steps between samples of nobody standing, mm; the largest of 1,930 stands of 60 s at 100 Hz is
   * below 6 mm in 99 of 100 (data of Santos and Duarte 2016, PeerJ 4:e2648, computed).
   */
  private static final double JUMP_MM = 50;

  /** Nobody stands in exactly one place for so long, s (common practice, no source). */
  private static final double STILL_S = 1;

  private UnloadedPattern() {}

  /** The samples that look like an empty plate. */
  static BitSet of(SampleSeries right, SampleSeries anterior, double rateHz) {
    BitSet empty = new BitSet(right.size());
    int longest = (int) Math.max(10, Math.ceil(STILL_S * rateHz));
    int still = 0;
    for (int i = 0; i < right.size(); i++) {
      boolean same =
          i > 0 && right.at(i) == right.at(i - 1) && anterior.at(i) == anterior.at(i - 1);
      still = same ? still + 1 : 1;
      if (still == longest) {
        empty.set(i - longest + 1, i + 1);
      }
      boolean nowhere = right.at(i) == 0 && anterior.at(i) == 0;
      if (nowhere
          || still > longest
          || far(right.at(i), anterior.at(i))
          || jumps(right, anterior, i)) {
        empty.set(i);
      }
    }
    return empty;
  }

  /** Whether a centre of pressure lies where no plate is, mm. */
  static boolean far(double right, double anterior) {
    return Math.abs(right) > FAR_MM || Math.abs(anterior) > FAR_MM;
  }

  private static boolean jumps(SampleSeries right, SampleSeries anterior, int i) {
    return (i == 0 || step(right, anterior, i) > JUMP_MM)
        && (i == right.size() - 1 || step(right, anterior, i + 1) > JUMP_MM)
        && right.size() > 1;
  }

  private static double step(SampleSeries right, SampleSeries anterior, int i) {
    return Math.hypot(right.at(i) - right.at(i - 1), anterior.at(i) - anterior.at(i - 1));
  }
}
