package caryatid.standing;

/**
 * What counts as quiet standing. Where a limit cites "real stands", these are 1,930 stands of 60 s
 * of people without a prosthesis (open data set of Santos and Duarte 2016, PeerJ 4:e2648; eyes open
 * and closed, on firm ground and on foam), or 60 of them where it says so.
 *
 * @param shortestS shortest stretch that is used, s, above 0
 * @param blockS the recording is judged in blocks of this length, s, above 0
 * @param windowS means over this long before and after a moment are compared, s, above 0
 * @param settlingS left out after the wearer stepped on, and half of it before stepping off, s
 * @param shiftMm a change of these means is a shift only when larger than this, mm,
 * @param shiftTimes and larger than this many times the stand's own median change,
 * @param mostShiftMm or, in a recording of a minute, larger than this whatever the stand's own, mm
 * @param driftMm largest difference between the first and the last quarter of a stretch, mm
 * @param mostSdMm largest standard deviation of the centre of pressure in any direction, mm
 * @param leastSdMm smallest standard deviation of the centre of pressure, sideways and fore and
 *     aft, in a stretch of {@code leastSdS}, mm, above 0
 * @param leastSdS the length of stretch that this limit is for, s; in a shorter one it is smaller
 *     as the root of the length
 * @param mostLean largest mean horizontal force of a plate, as a fraction of its mean vertical
 *     force
 * @param foot limits of one foot's vertical force
 * @param wholeBody limits of the whole body's vertical force
 * @param leastShare smallest share of the whole load on a prosthesis, 0 to 1
 */
record Limits(
    double shortestS,
    double blockS,
    double windowS,
    double settlingS,
    double shiftMm,
    double shiftTimes,
    double mostShiftMm,
    double driftMm,
    double mostSdMm,
    double leastSdMm,
    double leastSdS,
    double mostLean,
    Force foot,
    Force wholeBody,
    double leastShare) {

  private static final double SHORTEST_SEEN_S = 10;
  private static final double LONGEST_SEEN_S = 60;

  /** By which part the largest change is less in a recording shorter by a factor of e. */
  private static final double LESS_EACH_E = 0.123;

  /**
   * Limits of a vertical force, as fractions of its mean.
   *
   * @param shift largest change between adjacent windows
   * @param sd largest standard deviation
   * @param real largest standard deviation seen in real standing, shown for comparison
   */
  public record Force(double shift, double sd, double real) {
    /**
     * @throws IllegalArgumentException if one is not above 0
     */
    public Force {
      positive(shift, sd, real);
    }
  }

  /**
   * The usual limits.
   *
   * <ul>
   *   <li>shortest stretch 5 s, blocks 0.5 s, windows and settling 2 s: common practice, no source;
   *   <li>shift 15 mm and 8 times the median change, or 50 mm: of 60 real stands none exceeds 15 mm
   *       and 8 times its median at once, and the largest change is 44 mm;
   *   <li>drift 25.4 mm: the 99th percentile of real stands, at every length: that of parts of 10
   *       to 60 s of 60 of them shows no trend (docs/real-data.md);
   *   <li>standard deviation 35 mm: twice the 99th percentile of real stands fore and aft (17.6
   *       mm);
   *   <li>least standard deviation 0.1 mm in 20 s: a fifth of the smallest in any 20 s of 60 real
   *       stands, 0.54 mm sideways and 1.37 mm fore and aft (computed); a channel that is dead but
   *       for its noise stays below. The root of the length is how a sum of independent steps
   *       spreads; slower sway would make the limit of a short stretch smaller;
   *   <li>mean horizontal force 0.2 of the vertical, 11 deg (common practice, no source): one
   *       foot's mean force leans by about 4 deg in real standing;
   *   <li>whole body's force: shift 2 %, standard deviation 3 %, where quiet standing shows 0.11 to
   *       0.33 % and slow squats 13 %;
   *   <li>one foot's force: shift 35 %, standard deviation 30 %: sideways sway is load that moves
   *       between the feet. The 95th percentile of real stands, 12.3 mm, is 13 % of the force of a
   *       foot that bears 42 % at a stance width of 225 mm (assumed), and a tighter limit would
   *       choose the steadier part of a stand by chance;
   *   <li>smallest share 0.1 of the load (common practice, no source).
   * </ul>
   */
  public static final Limits USUAL =
      new Limits(
          5,
          0.5,
          2,
          2,
          15,
          8,
          50,
          25.4,
          35,
          0.1,
          20,
          0.2,
          new Force(0.35, 0.30, 0.13),
          new Force(0.02, 0.03, 0.0033),
          0.1);

  /**
   * @throws IllegalArgumentException if a number is out of its range
   */
  public Limits {
    positive(shortestS, blockS, windowS, shiftMm, shiftTimes, mostShiftMm, driftMm, mostSdMm);
    positive(leastSdMm, leastSdS, mostLean);
    if (!(settlingS >= 0) || !(leastShare >= 0 && leastShare <= 1)) {
      throw new IllegalArgumentException("settling " + settlingS + " s, share " + leastShare);
    }
  }

  /**
   * The largest change in a recording of some length, mm: the longer somebody stands, the larger is
   * the largest. A straight line in the logarithm of the length, which is 1.21 to 1.26 times the
   * 99th percentile of parts of 10, 20, 30 and 60 s of 60 real stands (30.9, 35.6, 37.1 and 40.2
   * mm; docs/real-data.md); below 10 s and above 60 s as there.
   */
  double mostShiftMm(double recordedS) {
    double seen = Math.max(SHORTEST_SEEN_S, Math.min(LONGEST_SEEN_S, recordedS));
    return mostShiftMm * (1 - LESS_EACH_E * Math.log(LONGEST_SEEN_S / seen));
  }

  /** The smallest standard deviation in a stretch of some length, mm. */
  double leastSdMm(double durationS) {
    return leastSdMm * Math.sqrt(Math.min(1, durationS / leastSdS));
  }

  /** The limits of the force that a trace shows. */
  Force of(LoadLineOwner line) {
    return line == LoadLineOwner.WHOLE_BODY ? wholeBody : foot;
  }

  private static void positive(double... numbers) {
    for (double number : numbers) {
      if (!(number > 0)) {
        throw new IllegalArgumentException("a limit must be above 0: " + number);
      }
    }
  }
}
