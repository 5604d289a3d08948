package caryatid.loadline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import caryatid.geometry.Plane;
import caryatid.geometry.Side;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The least and greatest numbers that limits, doubts, rules and targets take. */
class RangesTest {
  private static void refused(org.assertj.core.api.ThrowableAssert.ThrowingCallable what) {
    assertThatThrownBy(what).isInstanceOf(IllegalArgumentException.class);
  }

  @ParameterizedTest
  @CsvSource({"-1, 10, 0.1", "3, 2, 0.1", "3, 10, -1", "NaN, 10, 0.1", "3, NaN, 0.1", "3, 10, NaN"})
  void limitsOfUseAreNotNegativeAndInOrder(double level, double most, double lean) {
    refused(() -> new UseLimits(level, most, lean));
  }

  @Test
  void limitsOfUseMayBeNothingAndAlike() {
    assertThatCode(() -> new UseLimits(0, 0, 0)).doesNotThrowAnyException();
  }

  @Test
  void noDoubtIsADoubtOfZero() {
    assertThatCode(() -> new AssumedUncertainties(0, 0, 0, 0, 1e-9, 0, 0, 1e-9))
        .doesNotThrowAnyException();
    refused(() -> new AssumedUncertainties(0, 0, 0, 0, 0, 0, 0, 4));
    refused(() -> new AssumedUncertainties(0, 0, 0, 0, 1, 0, 0, 0));
  }

  @Test
  void theLevelThatADescriptionStatesTakesThePlaceOfOneAlone() {
    assertThat(new AssumedUncertainties(1, 2, 3, 4, 5, 6, 7, 8).withLevel(0.5, 8))
        .isEqualTo(new AssumedUncertainties(0.5, 2, 3, 4, 5, 6, 7, 8));
  }

  @Test
  void aDecisionNeedsMoreThanEvenOddsAndLessThanCertainty() {
    refused(() -> new DecisionRule(0.5, true));
    refused(() -> new DecisionRule(1, true));
    assertThat(new DecisionRule(0.51, true).confidence()).isEqualTo(0.51);
  }

  private static Target target(double mm, double below, double above) {
    return new Target(
        new LandmarkInPlane(Plane.SAGITTAL, Side.LEFT, "knee"),
        mm,
        below,
        above,
        "leaflet",
        Target.MeantFor.FOOT,
        Optional.empty(),
        Optional.empty());
  }

  @Test
  void aTargetMayBeOpenToOneSideAlone() {
    assertThat(target(5, 0, 7).highestMm()).isEqualTo(12);
    assertThat(target(5, 7, 0).lowestMm()).isEqualTo(-2);
    refused(() -> target(5, 0, 0));
    refused(() -> target(5, -1, 7));
    refused(() -> target(5, 7, -1));
    refused(() -> target(Double.NaN, 1, 1));
  }
}
