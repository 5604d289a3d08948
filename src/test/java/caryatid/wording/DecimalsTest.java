package caryatid.wording;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.remark.Argument;
import caryatid.remark.Unit;
import java.util.List;
import org.junit.jupiter.api.Test;

class DecimalsTest {
  private static int decimals(Unit unit, double... values) {
    return Decimals.of(
        unit, java.util.Arrays.stream(values).mapToObj(v -> Argument.of(v, unit)).toList());
  }

  @Test
  void numbersThatDifferEnoughTakeThoseOfTheirUnit() {
    assertThat(decimals(Unit.PERCENT, 10, 9.9)).isEqualTo(1);
    assertThat(decimals(Unit.PERCENT, 10, 10)).isEqualTo(1);
    assertThat(decimals(Unit.COUNT, 3, 4)).isZero();
  }

  @Test
  void aLimitAndAValueBeyondItDoNotPrintAlike() {
    assertThat(decimals(Unit.PERCENT, 10, 9.98)).isEqualTo(2);
    assertThat(decimals(Unit.PERCENT, 10, 9.9996)).isEqualTo(4);
    assertThat(decimals(Unit.PERCENT, 10, 10 - 1e-9)).isEqualTo(1);
  }

  @Test
  void whatIsNotZeroDoesNotPrintAsZero() {
    assertThat(decimals(Unit.KG, 0.08, 79)).isEqualTo(1);
    assertThat(decimals(Unit.KG, 0.008, 79)).isEqualTo(2);
    assertThat(decimals(Unit.KG, 0, 79)).isEqualTo(1);
    assertThat(decimals(Unit.MM, 1e-12)).isEqualTo(1);
  }

  @Test
  void numbersOfAnotherUnitDoNotCount() {
    List<Argument> arguments = List.of(Argument.of(10, Unit.MM), Argument.of(10.01, Unit.S));
    assertThat(Decimals.of(Unit.MM, arguments)).isEqualTo(1);
  }
}
