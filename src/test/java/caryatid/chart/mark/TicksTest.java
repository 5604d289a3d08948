package caryatid.chart.mark;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.wording.Wording;
import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TicksTest {
  @ParameterizedTest
  @CsvSource({"10, 5, 2", "10, 10, 1", "11, 10, 2", "100, 4, 50", "0.9, 5, 0.2", "400, 3, 200"})
  void stepsAreRoundAndNotMoreThanAsked(double range, double most, double step) {
    assertThat(Ticks.step(range, most)).isEqualTo(step);
  }

  /** As many decimals as the step between two figures has. */
  @ParameterizedTest
  @CsvSource({"7, 2, 7", "7, 1, 7", "0.6, 0.2, 0.6", "0.3, 0.1, 0.3", "0.15, 0.05, 0.15"})
  void aFigureHasAsManyDecimalsAsItsStep(double value, double step, String figure) {
    assertThat(Ticks.text(value, step, Wording.in(Locale.ENGLISH))).isEqualTo(figure);
  }
}
