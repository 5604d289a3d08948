package caryatid.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** By hand from the formula of the NIST/SEMATECH handbook, 1.3.5.17: 0.6745 (x - median) / MAD. */
class ModifiedZScoresTest {
  /** Median 5.5; distances 4.5 3.5 2.5 1.5 0.5 0.5 1.5 2.5 3.5 94.5, so their median is 2.5. */
  @Test
  void oneFarValueDoesNotHideItself() {
    double[] scores = ModifiedZScores.of(new double[] {1, 2, 3, 4, 5, 6, 7, 8, 9, 100});
    assertThat(scores[9]).isCloseTo(25.4961, within(1e-9));
    assertThat(scores[0]).isCloseTo(-1.2141, within(1e-9));
    assertThat(scores[4]).isCloseTo(-0.1349, within(1e-9));
  }

  @Test
  void fewValuesSayNothing() {
    assertThat(ModifiedZScores.of(new double[] {1, 2, 3, 4, 5, 6, 7, 8, 100})).containsOnly(0);
    assertThat(ModifiedZScores.of(new double[0])).isEmpty();
  }

  @Test
  void noSpreadSaysNothing() {
    assertThat(ModifiedZScores.of(new double[] {5, 5, 5, 5, 5, 5, 5, 5, 5, 60})).containsOnly(0);
  }
}
