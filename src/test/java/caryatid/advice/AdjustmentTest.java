package caryatid.advice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class AdjustmentTest {
  private static double[] amounts(double set, double lowest, double highest, double step) {
    return new Adjustment(
            ChangeKind.FOOT_FORWARD, set, lowest, highest, step, OptionalDouble.empty())
        .amounts();
  }

  @Test
  void amountsAreStepsWithinTheTravel() {
    assertThat(amounts(0, -4, 5, 2)).containsExactly(-4, -2, 2, 4);
    assertThat(amounts(0, 0, 0, 2)).isEmpty();
  }

  /** An entry may say so: nothing beyond the travel is proposed, and no change by nothing. */
  @Test
  void whatIsSetBeyondItsTravelIsOnlyBroughtBackIntoIt() {
    assertThat(amounts(10, 0, 5, 2)).containsExactly(-10, -8, -6);
    assertThat(amounts(-10, -5, 0, 2)).containsExactly(6, 8, 10);
    assertThat(amounts(10, 4.5, 5, 2)).isEmpty();
  }

  @Test
  void fineStepsAreTakenTogetherToFortyToASide() {
    assertThat(amounts(0, -20, 20, 0.1)).hasSize(80).contains(-20, -0.5, 0.5, 20);
  }
}
