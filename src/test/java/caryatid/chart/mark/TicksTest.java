package caryatid.chart.mark;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TicksTest {
  @ParameterizedTest
  @CsvSource({"10, 5, 2", "10, 10, 1", "11, 10, 2", "100, 4, 50", "0.9, 5, 0.2", "400, 3, 200"})
  void stepsAreRoundAndNotMoreThanAsked(double range, double most, double step) {
    assertThat(Ticks.step(range, most)).isEqualTo(step);
  }
}
