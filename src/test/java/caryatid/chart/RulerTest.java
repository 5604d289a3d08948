package caryatid.chart;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.chart.mark.PaperPoint;
import caryatid.chart.mark.Scale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How long the bar is that shows a drawing's scale: 6 mm of paper at the most. */
class RulerTest {
  @ParameterizedTest
  @CsvSource({"1, 5", "2, 10", "7, 20", "0.5, 2", "10, 50", "100, 500", "0.05, 1", "0.2, 1"})
  void theBarIsTheLargestRoundLengthThatFits(double oneTo, double mm) {
    assertThat(Ruler.barMm(new Scale(oneTo, new PaperPoint(0, 0)))).isEqualTo(mm);
  }
}
