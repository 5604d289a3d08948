package caryatid.standing;

import caryatid.standing.PercentileRank.Measure;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * Sway of people without a prosthesis: percentiles of 1,930 stands of 60 s of the whole body, 100
 * Hz, not filtered, eyes open and closed, on firm ground and on foam (open data set of Santos and
 * Duarte 2016, PeerJ 4:e2648; percentiles computed from its data).
 */
final class ReferencePercentiles {
  private static final int[] PERCENTS = {1, 5, 25, 50, 75, 95, 99};

  private static final Map<Measure, double[]> PERCENTILES =
      new EnumMap<>(
          Map.of(
              Measure.SD_ANTERIOR, new double[] {2.0, 2.8, 4.3, 7.4, 10.7, 14.9, 17.6},
              Measure.SD_RIGHT, new double[] {1.1, 1.5, 2.7, 5.3, 8.1, 12.3, 15.1},
              Measure.RANGE_ANTERIOR, new double[] {11.7, 15.1, 23.6, 40.6, 61.6, 87.7, 106.5},
              Measure.MEAN_SPEED, new double[] {5.1, 6.2, 9.3, 18.2, 31.8, 48.3, 63.5}));

  /**
   * Spread grows with the length of a stand: within a tenth of the population's counts as alike.
   */
  private static final double LENGTH_S = 60;

  private static final double LENGTH_APART = 0.1;
  private static final double RATE_HZ = 100;
  private static final double RATE_APART = 0.01;

  private ReferencePercentiles() {}

  /** Places the whole body's unfiltered sway; nothing where length or rate do not compare. */
  static List<PercentileRank> place(List<Sway> sways, double durationS, double rateHz) {
    List<PercentileRank> placements = new ArrayList<>();
    if (Math.abs(durationS / LENGTH_S - 1) > LENGTH_APART) {
      return placements;
    }
    for (Sway sway : sways) {
      if (sway.of() == LoadLineOwner.WHOLE_BODY && sway.lowPassHz().isEmpty()) {
        placements.add(place(Measure.SD_ANTERIOR, sway.sdAnteriorMm()));
        sway.both().ifPresent(both -> placements.add(place(Measure.SD_RIGHT, both.sdRightMm())));
        placements.add(place(Measure.RANGE_ANTERIOR, sway.rangeAnteriorMm()));
        if (Math.abs(rateHz / RATE_HZ - 1) <= RATE_APART) {
          sway.both()
              .ifPresent(both -> placements.add(place(Measure.MEAN_SPEED, both.meanSpeedMmPerS())));
        }
      }
    }
    return placements;
  }

  private static PercentileRank place(Measure measure, double value) {
    double[] percentiles = PERCENTILES.get(measure);
    int above = 0;
    while (above < percentiles.length && value > percentiles[above]) {
      above++;
    }
    int from = above == 0 ? 0 : PERCENTS[above - 1];
    int to = above == percentiles.length ? 100 : PERCENTS[above];
    return new PercentileRank(measure, value, from, to);
  }
}
