package caryatid.clinic;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.time.LocalDate;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MeasuredDoubtTest {
  private static MeasuredDoubt doubt(String value, String degrees) {
    return new MeasuredDoubt(
        MeasuredDoubt.What.HAND,
        "AB",
        LocalDate.of(2026, 11, 28),
        new BigDecimal(value),
        new BigDecimal(degrees));
  }

  @ParameterizedTest
  @CsvSource({"0, 1", "100, 1", "2, 0.001", "2, 1000000"})
  void aNumberInItsRangeIsTaken(String value, String degrees) {
    assertThat(doubt(value, degrees).value()).isEqualTo(new BigDecimal(value));
  }

  @ParameterizedTest
  @CsvSource({"-0.001, 4", "100.001, 4", "2, 0", "2, -1", "2, 1000000.1"})
  void aNumberOutOfItsRangeIsRefused(String value, String degrees) {
    assertThatThrownBy(() -> doubt(value, degrees))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage(value + ", " + degrees);
  }
}
