package caryatid.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/**
 * Conformance probabilities of JCGM 106:2012, clause 7 (inputs from memory, recomputed
 * independently) and the properties a result must have.
 */
class ConformityTest {
  private static final double NONE = Double.POSITIVE_INFINITY;

  private static Estimate known(double value, double u) {
    return measured(value, u, NONE);
  }

  private static Estimate measured(double value, double u, double degrees) {
    return Estimate.exact(value).with(new Contribution(new Source(Cause.SWAY, ""), u, 1, degrees));
  }

  @Test
  void validation_anUpperLimitOfJcgm106() {
    Conformity one = Conformity.of(known(-5.47, 0.05), -NONE, -5.40);
    assertThat(one.within()).isCloseTo(0.91924, within(5e-6));
    assertThat(one.below()).isZero();
  }

  @Test
  void validation_aLowerLimitOfJcgm106() {
    Conformity one = Conformity.of(known(509.7, 8.6), 490, NONE);
    assertThat(one.within()).isCloseTo(0.98901, within(5e-6));
    assertThat(one.above()).isZero();
  }

  @Test
  void validation_aTwoSidedToleranceOfJcgm106() {
    assertThat(Conformity.of(known(13.6, 1.8), 12.5, 16.3).within())
        .isCloseTo(0.66263, within(5e-6));
  }

  /** JCGM 106:2012, table 1 (from memory): p and z, printed with two decimals. */
  @Test
  void validation_tableOneOfJcgm106() {
    double[][] table = {{0.80, 0.84}, {0.90, 1.28}, {0.95, 1.64}, {0.99, 2.33}, {0.999, 3.09}};
    for (double[] row : table) {
      assertThat(Quantiles.t(row[0], NONE)).isCloseTo(row[1], within(0.005));
    }
  }

  @Test
  void theThreeProbabilitiesAddUpToOne() {
    Conformity one = Conformity.of(measured(3, 2, 2.5), 1, 4);
    assertThat(one.below() + one.within() + one.above()).isCloseTo(1, within(1e-15));
  }

  @Test
  void anExactValueIsWithinOrNot() {
    assertThat(Conformity.of(Estimate.exact(4), 1, 4).within()).isEqualTo(1);
    assertThat(Conformity.of(Estimate.exact(Math.nextUp(4.0)), 1, 4).within()).isZero();
    assertThat(Conformity.of(Estimate.exact(1), 1, 4).within()).isEqualTo(1);
    assertThat(Conformity.of(Estimate.exact(Math.nextDown(1.0)), 1, 4).below()).isEqualTo(1);
  }

  @Test
  void aToleranceIsDecidableUpToTheHalfWidthOfTheInterval() {
    double halfWidth = known(0, 1).expanded(0.95);
    assertThat(Conformity.decidable(known(99, 1), 0, 2 * halfWidth, 0.95)).isTrue();
    assertThat(Conformity.decidable(known(99, 1), 0, 2 * halfWidth - 1e-9, 0.95)).isFalse();
  }

  @Test
  void limitsMustBeInOrder() {
    assertThatThrownBy(() -> Conformity.of(known(0, 1), 2, 1))
        .hasMessage("tolerance from 2.0 to 1.0");
  }
}
