package caryatid.standing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import caryatid.uncertainty.Cause;
import caryatid.uncertainty.Contribution;
import caryatid.uncertainty.Quantiles;
import caryatid.uncertainty.SampleStatistics;
import caryatid.uncertainty.Source;
import java.util.Arrays;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class MeanStandardErrorTest {
  private static final Source SWAY = new Source(Cause.SWAY, "");

  private static Contribution error(double[] series) {
    double mean = SampleStatistics.mean(series);
    return MeanStandardError.of(SWAY, Arrays.stream(series).map(v -> v - mean).toArray());
  }

  @Test
  void theCosineTurnedOnStepByStepIsTheCosine() {
    double[] values = Made.autoregressive(new Random(3), 60_000, 0.9);
    for (int j = 1; j <= MeanStandardError.COSINES; j++) {
      double step = Math.PI * j / values.length;
      double direct =
          IntStream.range(0, values.length)
              .mapToDouble(t -> values[t] * StrictMath.cos(step * (t + 0.5)))
              .sum();
      assertThat(MeanStandardError.cosineSum(values, j)).isCloseTo(direct, within(1e-7));
    }
  }

  /** White noise of unit variance: the mean of 400 errs by 1/20 on average over the squares. */
  @Test
  void independentSamplesErrByTheRootOfTheirNumber() {
    Random random = new Random(4);
    double meanSquare =
        IntStream.range(0, 4000)
            .mapToDouble(i -> error(Made.autoregressive(random, 400, 0)).standardUncertainty())
            .map(u -> u * u)
            .average()
            .orElseThrow();
    // chi-square with 2 degrees of freedom over 4000 draws: relative standard error 1.6 %.
    assertThat(Math.sqrt(meanSquare)).isCloseTo(0.05, within(0.002));
  }

  @Test
  void theErrorScalesWithTheSeriesAndIsTheSameBackwards() {
    double[] series = Made.autoregressive(new Random(5), 3000, 0.98);
    double[] backwards = IntStream.range(0, 3000).mapToDouble(i -> -2 * series[2999 - i]).toArray();
    assertThat(error(backwards).standardUncertainty())
        .isCloseTo(2 * error(series).standardUncertainty(), within(1e-9));
    assertThat(error(series).degreesOfFreedom()).isEqualTo(2);
  }

  /** 95 % intervals over 20 relaxation times hold the long-run mean in 93 to 97 of 100 stands. */
  @Test
  void intervalsHoldTheLongRunMeanOverTwentyRelaxationTimes() {
    assertThat(coverage(20)).isBetween(0.93, 0.97);
  }

  @Test
  void andOverTwelveInNinetyOfAHundredAtLeast() {
    assertThat(coverage(12)).isBetween(0.90, 0.97);
  }

  /** 4000 stands; the standard error of the figure is 0.35 %. */
  private static double coverage(int relaxationTimes) {
    Random random = new Random(6);
    int n = 40 * relaxationTimes;
    double t = Quantiles.t(0.975, MeanStandardError.COSINES);
    long held =
        IntStream.range(0, 4000)
            .mapToObj(i -> Made.autoregressive(random, n, Math.exp(-1 / 40.0)))
            .filter(s -> Math.abs(SampleStatistics.mean(s)) <= t * error(s).standardUncertainty())
            .count();
    return held / 4000.0;
  }
}
