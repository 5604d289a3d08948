package caryatid.recording.track;

import caryatid.recording.model.ForceUnit;

/**
 * The limits by which plates' tracks are checked, each with its source. Fractions unless the name
 * says a unit.
 */
public final class TrackLimits {
  // Load

  /**
   * A plate that carries less has no meaningful centre of pressure (common practice, no source).
   */
  public static final double LEAST_N = 20;

  /** The weight of 300 kg, N: heavier is no person on one plate (common practice, no source). */
  static final double HEAVIEST_N = 300 * ForceUnit.STANDARD_GRAVITY;

  /**
   * Without a unit, a plate counts as loaded above this share of its largest mean (common practice,
   * no source).
   */
  static final double LOADED_SHARE = 0.05;

  /** A shorter stretch is a step on or off (common practice, no source). */
  static final double UNLOADED_S = 0.5;

  /** A smaller offset does not matter, N (common practice, no source). */
  static final double NOTEWORTHY_OFFSET_N = 2;

  /**
   * So many samples at exactly the largest force are its end of range (common practice, no source).
   */
  static final int SATURATED_SAMPLES = 20;

  // Where a centre of pressure can be

  /** Further from the origin than any plate in a laboratory's frame, mm (no source). */
  static final double FAR_MM = 10_000;

  /** A larger share far from any plate is no accident (common practice, no source). */
  static final double MOST_FAR = 0.05;

  /** More than this share outside the plate is no accident (common practice, no source). */
  static final double MOST_OUTSIDE = 0.05;

  /**
   * Steps between samples of nobody standing, mm; the largest of 1,930 stands of 60 s at 100 Hz is
   * below 6 mm in 99 of 100 (data of Santos and Duarte 2016, PeerJ 4:e2648, computed).
   */
  static final double JUMP_MM = 50;

  /** Nobody stands in exactly one place for so long, s (common practice, no source). */
  static final double STILL_S = 1;

  /**
   * A centre of pressure that moves by less is nobody's, mm: the first percentile of 1,930 stands
   * of 60 s is 1.1 mm sideways and 2.0 mm fore and aft (standard deviations; data of Santos and
   * Duarte 2016, PeerJ 4:e2648, computed), and metres taken for millimetres stay below 0.05 mm.
   */
  static final double STILLEST_MM = 0.05;

  /** A shorter recording need not show how its person sways, s (common practice, no source). */
  static final double SHORTEST_PERSON_S = 5;

  /** A plate's zero point of moments lies no deeper, mm (common practice, no source). */
  static final double DEEPEST_ZERO_MM = 250;

  // Spikes and repeated rows

  /**
   * A centre of pressure that leaves both its neighbours by so much is a spike, mm; steps in 1,930
   * stands at 100 Hz are below 6 mm in 99 of 100 (data of Santos and Duarte 2016, PeerJ 4:e2648,
   * computed).
   */
  static final double SPIKE_MM = 20;

  /** The same for a vertical force, as a fraction of its mean (common practice, no source). */
  static final double SPIKE_FRACTION = 0.2;

  /**
   * A centre of pressure in an unknown unit sticks out by so many of its standard deviations, as
   * estimated from its quartiles (common practice, no source).
   */
  static final double SPIKE_DEVIATIONS = 8;

  /** Samples in a run that sticks out together, at most (common practice, no source). */
  static final int LONGEST_BURST = 30;

  /** A run comes back to within this part of the step (common practice, no source). */
  static final double BURST_BACK = 0.5;

  /** A smaller share of repeated rows is chance (common practice, no source). */
  static final double REPEATED_ROWS = 0.05;

  // Channels that do not change, and means that were removed

  /** In a shorter time a coarse channel may not change, s (common practice, no source). */
  static final double DEAD_S = 5;

  /** A channel that freezes for a shorter time does no harm, s (common practice, no source). */
  static final double FROZEN_S = 0.5;

  /** It freezes for so many times as long as its mean repeat (common practice, no source). */
  static final double FROZEN_TIMES = 20;

  /**
   * Mean over standard deviation. The mean of a stand lies anywhere within some 30 mm of a plate's
   * zero and its deviation is about 5 mm, so that one in some thousand stands is this near in one
   * direction, and one in a million in both (common practice, no source).
   */
  static final double MEAN_REMOVED = 0.005;

  /** The same for a part of the samples (no source). */
  static final double MEAN_REMOVED_LOOSELY = 0.2;

  // What should agree

  /**
   * Twice the assumed accuracy of a plate's centre of pressure would show (common practice, no
   * source).
   */
  static final double COP_AGREES_MM = 2;

  /**
   * Further apart, one of the two is wrong: no plate is so inaccurate, and a tolerance for a load
   * line is narrower (common practice, no source).
   */
  static final double COP_CONTRADICTS_MM = 20;

  /** Means that lie further apart do not belong together, mm (common practice, no source). */
  static final double CELLS_AGREE_MM = 5;

  /** Cells and weight that differ by more do not belong together (common practice, no source). */
  static final double WEIGHT_AGREES = 0.02;

  /**
   * Rounding and filters leave no more between a sum and its parts (common practice, no source).
   */
  static final double SUM_AGREES = 0.01;

  /** The same for a centre of pressure, as a share of its farthest from zero (no source). */
  static final double SUM_COP_AGREES = 0.01;

  /** Fewer rows that agree are an accident (common practice, no source). */
  static final double AGREEING_ROWS = 0.99;

  // What tells a unit

  /** Ratio of variances that only another unit explains: 4 times as far (no source). */
  static final double ANOTHER_UNIT = 16;

  /** Movement that is more than noise: standard deviation, mm (no source). */
  static final double STIRS_MM = 1;

  /** Units differ by 2.5 times or more; horizontal forces and rounding change the ratio by less. */
  static final double MOMENTS_AGREE = 0.1;

  /** Share of the variance that the moments have to explain (common practice, no source). */
  static final double MOMENTS_EXPLAIN = 0.9;

  private TrackLimits() {}
}
