package caryatid.standing;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.demo.Sways;
import caryatid.standing.PercentileRank.Measure;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/**
 * Percentiles of 1,930 real stands (Santos and Duarte 2016, PeerJ 4:e2648, computed from its data).
 */
class ReferencePercentilesTest {
  private static Sway sway(
      LoadLineOwner of, OptionalDouble lowPassHz, double sdAnterior, double speed) {
    return Sways.of(of, lowPassHz, 2, sdAnterior, 9, 30, 600, speed, 90, 0, 0.3, 20, 20);
  }

  private static List<PercentileRank> place(
      double sd, double speed, double seconds, double rateHz) {
    Sway sway = sway(LoadLineOwner.WHOLE_BODY, OptionalDouble.empty(), sd, speed);
    return ReferencePercentiles.place(List.of(sway), seconds, rateHz);
  }

  @Test
  void validation_valuesLieBetweenThePercentilesAroundThem() {
    assertThat(place(7.4, 18.3, 60, 100))
        .containsExactly(
            new PercentileRank(Measure.SD_ANTERIOR, 7.4, 25, 50),
            new PercentileRank(Measure.SD_RIGHT, 2, 5, 25),
            new PercentileRank(Measure.RANGE_ANTERIOR, 30, 25, 50),
            new PercentileRank(Measure.MEAN_SPEED, 18.3, 50, 75));
    assertThat(place(2.0, 5.1, 60, 100))
        .contains(new PercentileRank(Measure.SD_ANTERIOR, 2.0, 0, 1));
    assertThat(place(17.61, 63.51, 60, 100))
        .contains(
            new PercentileRank(Measure.SD_ANTERIOR, 17.61, 99, 100),
            new PercentileRank(Measure.MEAN_SPEED, 63.51, 99, 100));
  }

  @Test
  void onlyStandsOfAboutAMinuteCompareAndSpeedOnlyAt100Hz() {
    assertThat(place(7, 18, 53.9, 100)).isEmpty();
    assertThat(place(7, 18, 66.1, 100)).isEmpty();
    assertThat(place(7, 18, 54.1, 100)).hasSize(4);
    assertThat(place(7, 18, 65.9, 100)).hasSize(4);
    assertThat(place(7, 18, 60, 101.1)).hasSize(3);
    assertThat(place(7, 18, 60, 100.9)).hasSize(4);
  }

  @Test
  void aFootsSwayAndFilteredSwayDoNotCompare() {
    Sway foot = sway(LoadLineOwner.LEFT_FOOT, OptionalDouble.empty(), 7, 18);
    Sway filtered = sway(LoadLineOwner.WHOLE_BODY, OptionalDouble.of(10), 7, 18);
    assertThat(ReferencePercentiles.place(List.of(foot, filtered), 60, 100)).isEmpty();
  }
}
