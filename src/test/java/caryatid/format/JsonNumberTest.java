package caryatid.format;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class JsonNumberTest {

  /**
   * Validation: known hard doubles; their shortest digits are in Adams, Ryu, PLDI 2018 (from
   * memory).
   */
  @ParameterizedTest
  @CsvSource({
    "0, 0",
    "-0.0, -0.0",
    "1, 1",
    "-12.5, -12.5",
    "0.1, 0.1",
    "0.30000000000000004, 0.30000000000000004",
    "1000, 1000",
    "2.0E-3, 0.002",
    "2E23, 2E+23",
    "9007199254740993, 9007199254740992",
    "1e-9, 1E-9",
    "4.9e-324, 4.94065645841247E-324",
    "1.7976931348623157e308, 1.7976931348623157E+308"
  })
  void writesFewDigitsThatReadBackAsTheSameNumber(double value, String written) {
    assertThat(JsonNumber.of(value)).isEqualTo(written);
    assertThat(Double.parseDouble(JsonNumber.of(value))).isEqualTo(value);
  }

  /** Validation against the platform's own correctly rounded reader. */
  @Test
  void everyFiniteNumberSurvives() {
    Random random = new Random(1);
    for (int i = 0; i < 100_000; i++) {
      double value = Double.longBitsToDouble(random.nextLong());
      if (Double.isFinite(value)) {
        assertThat(Double.parseDouble(JsonNumber.of(value))).isEqualTo(value);
      }
    }
  }

  @Test
  void whatIsNotFiniteIsRefused() {
    assertThatThrownBy(() -> JsonNumber.of(Double.POSITIVE_INFINITY))
        .isInstanceOf(NumberFormatException.class);
    assertThatThrownBy(() -> JsonNumber.of(Double.NaN)).isInstanceOf(NumberFormatException.class);
  }
}
