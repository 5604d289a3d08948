package caryatid.recording.time;

/**
 * The limits by which times are checked, each with its source. Fractions unless the name says
 * otherwise.
 */
final class TimeLimits {
  // Rates

  /** A stated rate further than this from the one of the times contradicts them (no source). */
  static final double SAME_RATE = 0.01;

  /**
   * What is sent to a computer's clock arrives at 98.3 Hz where 100 are stated (measured on public
   * recordings); so much less or more is still the same rate.
   */
  static final double NOMINAL_RATE = 0.03;

  /** A recording that is shorter than stated by less was rounded (no source). */
  static final double DURATION_ROUNDED = 0.01;

  /** A step of rounded times may be off by so much (no source). */
  static final double STEP_ROUNDED = 0.01;

  // Times that are coarser than the sampling

  /**
   * Times whose smallest step is so much larger than the rows' mean one are coarser than these (no
   * source).
   */
  static final double COARSE_STEPS = 1.5;

  /**
   * Where more rows than this share their time with another, times are coarser than the sampling
   * (no source).
   */
  static final double COARSE_SHARE = 0.05;

  // Gaps

  /** A step longer than this many usual steps is a gap (no source). */
  static final double GAP_STEPS = 1.5;

  /**
   * The same by a computer's clock: in good recordings of 13 public ones no step exceeds 26 ms,
   * where the median one is 10 ms (measured).
   */
  static final double UNEVEN_GAP_STEPS = 2.65;

  /** So many steps may make up for a long one of a computer's clock (no source). */
  static final int MADE_UP_WITHIN = 5;

  /**
   * More missing samples than this share are no recording of one stand (common practice, no
   * source).
   */
  static final double MOST_MISSING = 0.1;

  /**
   * A straight line over 0.1 s misses a centre of pressure by 0.19 mm in the median and by 2.1 mm
   * in one of 1,000 places (60 stands at 100 Hz of the open data set of Santos and Duarte 2016,
   * PeerJ 4:e2648, computed).
   */
  static final double LONGEST_BRIDGE_S = 0.1;

  /** More lines would make what is measured too much of their own (common practice, no source). */
  static final double MOST_BRIDGED = 0.01;

  // Uneven steps

  /** A step is off by more than this part of the usual one (common practice, no source). */
  static final double STEP_OFF = 0.2;

  /** Smaller differences are of the way numbers are kept (no source). */
  static final double STEP_NOISE = 0.01;

  /** Fewer steps, or a smaller share, may be off for another reason (no source). */
  static final int FEWEST_OFF = 5;

  static final double LEAST_OFF = 0.005;

  private TimeLimits() {}
}
