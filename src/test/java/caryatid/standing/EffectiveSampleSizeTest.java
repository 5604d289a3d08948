package caryatid.standing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EffectiveSampleSizeTest {

  /**
   * n / (1 + 2 sum (1 - k/n) rho_k) with rho_k = rho^k, exact (Zieba 2010, Metrol Meas Syst 17;
   * formula from memory; values computed independently).
   */
  @ParameterizedTest
  @CsvSource({
    "100, 0.5, 33.783784",
    "100, 0.9, 5.813937",
    "1000, 0.9, 53.134963",
    "3000, 0.99, 15.592516"
  })
  void validation_firstOrderProcesses(int n, double rho, double effective) {
    assertThat(EffectiveSampleSize.of(n, k -> Math.pow(rho, k), n))
        .isCloseTo(effective, within(5e-7));
  }

  /** Long beside its memory a series shows its true effective size on average, within a quarter. */
  @Test
  void aLongSeriesShowsItsEffectiveSize() {
    Random random = new Random(11);
    double mean =
        DoubleStream.generate(
                () -> EffectiveSampleSize.of(Made.autoregressive(random, 20_000, 0.99)))
            .limit(200)
            .average()
            .orElseThrow();
    double known = EffectiveSampleSize.of(20_000, k -> Math.pow(0.99, k), 20_000);
    assertThat(mean).isBetween(0.75 * known, 1.25 * known);
  }

  @Test
  void whatDoesNotVaryCountsInFull() {
    assertThat(EffectiveSampleSize.of(new double[500])).isEqualTo(500);
  }
}
