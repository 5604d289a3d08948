package caryatid.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ToleranceFactorTest {
  /**
   * Validation: two-sided factors of ISO 16269-6 and the NIST handbook, 7.2.6.3 (as tabled; exact;
   * both from memory).
   */
  @ParameterizedTest
  @CsvSource({"10, 0.95, 0.95, 3.379, 3.393", "43, 0.90, 0.99, 2.217, 2.223"})
  void factorsAreThoseOfTheHandbook(
      int n, double share, double confidence, double tabled, double exact) {
    assertThat(ToleranceFactor.tabled(n, share, confidence)).isCloseTo(tabled, within(6e-4));
    assertThat(ToleranceFactor.of(n, share, confidence)).isCloseTo(exact, within(6e-4));
  }

  @Test
  void theShareOfAFactorIsTheOneItWasMadeFor() {
    double factor = ToleranceFactor.of(7, 0.8, 0.95);
    assertThat(ToleranceFactor.share(7, factor, 0.95)).isCloseTo(0.8, within(1e-6));
    assertThat(ToleranceFactor.share(7, 0, 0.95)).isZero();
    assertThat(ToleranceFactor.share(20, 50, 0.95)).isEqualTo(1);
  }

  /** By hand: mean 1, standard deviation 1 of five; factor 4.291 exact for 90 % by 95 %. */
  @Test
  void attemptsAreSummedUp() {
    List<Double> errors = List.of(1.0, 2.0, 1.0, -0.4142135623730951, 1.4142135623730951);
    RepeatedSetting five = RepeatedSetting.of(errors, 5).orElseThrow();
    assertThat(five.meanMm()).isCloseTo(1, within(1e-12));
    assertThat(five.reachMm())
        .isCloseTo(five.sdMm() * ToleranceFactor.of(5, 0.9, 0.95), within(1e-9));
    assertThat(five.share()).isBetween(0.5, 0.95);
    assertThat(five.more()).isPresent();
    int enough = 5 + five.more().getAsInt();
    assertThat(ToleranceFactor.of(enough, 0.9, 0.95) * five.sdMm()).isLessThanOrEqualTo(4);
    assertThat(ToleranceFactor.of(enough - 1, 0.9, 0.95) * five.sdMm()).isGreaterThan(4);
  }

  @Test
  void nothingIsSaidOfASingleAttempt() {
    assertThat(RepeatedSetting.of(List.of(1.0), 3)).isEmpty();
    assertThat(RepeatedSetting.of(List.of(9.0, 9.5), 3).orElseThrow().more()).isEmpty();
    assertThat(RepeatedSetting.of(List.of(9.0, 9.5), 3).orElseThrow().share()).isZero();
    assertThat(RepeatedSetting.of(List.of(1.0, 1.0), 3).orElseThrow().more()).hasValue(0);
  }
}
