package caryatid.advice;

import caryatid.uncertainty.SampleStatistics;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What repeated attempts of the wearer's own at one setting show: the wearer sets it anew each
 * time, and it is measured.
 *
 * @param n attempts, 2 or more
 * @param meanMm mean of what was set less what was wanted, mm
 * @param sdMm its standard deviation between attempts, mm
 * @param reachMm half-width about the mean of the interval that holds 90 % of all attempts with 95
 *     % confidence, mm (ISO 16269-6)
 * @param share share of attempts that are expected within the tolerance, with 95 % confidence at
 *     least, 0 to 1
 * @param more how many more attempts, should they scatter alike, would show with 95 % confidence
 *     that 90 % are within; 0 where it is shown; empty where 50 would not
 */
public record RepeatedSetting(
    int n, double meanMm, double sdMm, double reachMm, double share, OptionalInt more) {
  public static final double SHARE = 0.9;
  public static final double CONFIDENCE = 0.95;
  private static final int MOST = 50;

  /**
   * What attempts show; empty for fewer than two.
   *
   * @param errorsMm what was set less what was wanted, mm
   * @param toleranceMm how far from what was wanted is good enough, mm, above 0
   */
  public static Optional<RepeatedSetting> of(List<Double> errorsMm, double toleranceMm) {
    int n = errorsMm.size();
    if (n < 2) {
      return Optional.empty();
    }
    double[] errors = errorsMm.stream().mapToDouble(each -> each).toArray();
    double mean = SampleStatistics.mean(errors);
    double sd = SampleStatistics.standardDeviation(errors);
    double room = toleranceMm - Math.abs(mean);
    return Optional.of(
        new RepeatedSetting(
            n,
            mean,
            sd,
            ToleranceFactor.of(n, SHARE, CONFIDENCE) * sd,
            share(n, room, sd),
            more(n, room, sd)));
  }

  private static double share(int n, double room, double sd) {
    if (sd == 0) {
      return room >= 0 ? 1 : 0;
    }
    return ToleranceFactor.share(n, room / sd, CONFIDENCE);
  }

  private static OptionalInt more(int n, double room, double sd) {
    for (int more = 0; more <= MOST && room >= 0; more++) {
      if (ToleranceFactor.of(n + more, SHARE, CONFIDENCE) * sd <= room) {
        return OptionalInt.of(more);
      }
    }
    return OptionalInt.empty();
  }
}
