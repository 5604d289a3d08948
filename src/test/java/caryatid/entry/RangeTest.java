package caryatid.entry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** What an entry says is refused where a number is outside its range; both ends are inside. */
class RangeTest {
  @Test
  void bothEndsAreInsideAndWhatIsNoNumberIsNot() {
    assertThat(Range.SCORE.holds(0)).isTrue();
    assertThat(Range.SCORE.holds(10)).isTrue();
    assertThat(Range.SCORE.holds(-1e-9)).isFalse();
    assertThat(Range.SCORE.holds(10.000001)).isFalse();
    assertThat(Range.SCORE.holds(Double.NaN)).isFalse();
  }

  @Test
  void aNumberOutsideIsRefusedWithItsRange() {
    assertThat(item("2500").set()).isEqualTo("2500");
    assertThatThrownBy(() -> item("2500.1"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("2500.1 is not from -2500.0 to 2500.0");
  }

  private static BenchAlignment.Item item(String set) {
    return new BenchAlignment.Item(
        TermOrText.of(BenchItem.HEIGHT),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        new BigDecimal(set),
        SettingUnit.MM,
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  @Test
  void moreSuccessesThanAttemptsAreRefused() {
    assertThat(own(3, 3).succeeded()).isEqualTo(3);
    assertThatThrownBy(() -> own(3, 4))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("4 of 3");
    assertThatThrownBy(() -> own(101, 4)).isInstanceOf(IllegalArgumentException.class);
  }

  private static OwnSetting own(int attempts, int succeeded) {
    return new OwnSetting(
        "ankle", attempts, succeeded, Optional.empty(), Optional.empty(), Optional.empty());
  }

  @Test
  void aLowerLimitAboveTheUpperOneIsRefused() {
    assertThat(foot(2, 2).mobilityGradeLowest()).hasValue(2);
    assertThatThrownBy(() -> foot(3, 2))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("3 is above 2");
  }

  private static Components.ComponentLimits foot(int lowest, int highest) {
    return new Components.ComponentLimits(
        "foot",
        Optional.empty(),
        "demo foot",
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        OptionalInt.of(lowest),
        OptionalInt.of(highest),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }
}
