package caryatid.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class VarianceOfPersonsTest {
  private static SampleVariance seen(double variance, double degrees) {
    return new SampleVariance(variance, degrees);
  }

  /** By hand: (4 x 25 + 2 x 9 + 1 x 50) / 7. */
  @Test
  void variancesArePooledByTheirDegrees() {
    SampleVariance pooled = SampleVariance.pooled(List.of(seen(25, 4), seen(9, 2), seen(50, 1)));
    assertThat(pooled).isEqualTo(seen(24, 7));
  }

  /**
   * Validation: the formulas of Smyth 2004, section 6.2, computed by SciPy 1.17.1
   * (scipy.special.digamma and polygamma, scipy.optimize.brentq) for these five variances. The
   * library's trigamma is known to about eight digits, hence the tolerance.
   */
  @Test
  void validation_scaleAndDegreesAreThoseOfSmyth2004() {
    SampleVariance usual =
        VarianceOfPersons.fit(
            List.of(
                seen(28.09, 7), seen(104.04, 7), seen(34.81, 8), seen(38.44, 6), seen(243.36, 7)));
    assertThat(usual.variance()).isCloseTo(58.556814176370374, within(1e-6));
    assertThat(usual.degreesOfFreedom()).isCloseTo(4.943572839353598, within(1e-6));
  }

  /**
   * The evidence of docs/method.md, section 6: five runs of twelve real stands, root mean squares
   * of successive differences over root 2, 11 differences of which neighbours share a stand being
   * worth 2/3 of as many degrees (von Neumann 1941, Ann Math Stat 12:367-395; from memory).
   */
  @Test
  void whatFiveRunsOfRealStandsTellOfTheUsualScatter() {
    SampleVariance fore = fiveRuns(5.3, 10.2, 5.9, 6.2, 15.6);
    assertThat(Math.sqrt(fore.variance())).isCloseTo(7.6, within(0.05));
    assertThat(fore.degreesOfFreedom()).isCloseTo(4.8, within(0.05));
    SampleVariance side = fiveRuns(2.6, 4.5, 10.8, 4.8, 10.7);
    assertThat(Math.sqrt(side.variance())).isCloseTo(5.0, within(0.05));
    assertThat(side.degreesOfFreedom()).isCloseTo(2.5, within(0.05));
  }

  private static SampleVariance fiveRuns(double... rms) {
    return VarianceOfPersons.fit(
        Arrays.stream(rms).mapToObj(mm -> seen(mm * mm, 22.0 / 3)).toList());
  }

  /** Validation: trigamma of it is 0.4 by SciPy 1.17.1; and trigamma(1) is pi² / 6. */
  @Test
  void validation_theInverseOfTrigamma() {
    assertThat(VarianceOfPersons.trigammaInverse(0.4)).isCloseTo(2.9675403021436115, within(1e-7));
    assertThat(VarianceOfPersons.trigammaInverse(Math.PI * Math.PI / 6)).isCloseTo(1, within(1e-7));
  }

  /**
   * Persons whose variances are 30 mm² times 5 over a chi-square of 5 degrees, each shown by three
   * stands: 20,000 give the two numbers back, within about four standard errors.
   */
  @Test
  void personsDrawnFromThePriorGiveItBack() {
    Random random = new Random(3);
    List<SampleVariance> persons = new ArrayList<>();
    for (int i = 0; i < 20_000; i++) {
      double variance = 30 * 5 / chiSquare(random, 5);
      persons.add(seen(variance * chiSquare(random, 2) / 2, 2));
    }
    SampleVariance usual = VarianceOfPersons.fit(persons);
    assertThat(usual.variance()).isCloseTo(30, within(1.5));
    assertThat(usual.degreesOfFreedom()).isCloseTo(5, within(0.7));
  }

  private static double chiSquare(Random random, int degrees) {
    double sum = 0;
    for (int i = 0; i < degrees; i++) {
      sum += Math.pow(random.nextGaussian(), 2);
    }
    return sum;
  }

  @Test
  void personsWhoDifferByChanceAloneHaveOneVariance() {
    SampleVariance usual = VarianceOfPersons.fit(List.of(seen(20, 4), seen(20, 4), seen(20, 4)));
    assertThat(usual.degreesOfFreedom()).isInfinite();
    assertThat(usual.variance()).isGreaterThan(20);
  }

  @Test
  void onePersonOrNoScatterTellsNothing() {
    assertThatThrownBy(() -> VarianceOfPersons.fit(List.of(seen(20, 4))))
        .hasMessage("variances of persons: [SampleVariance[variance=20.0, degreesOfFreedom=4.0]]");
    assertThatThrownBy(() -> VarianceOfPersons.fit(List.of(seen(20, 4), seen(0, 4))))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> seen(-1, 4)).hasMessage("variance -1.0, 4.0");
    assertThatThrownBy(() -> seen(1, 0)).hasMessage("variance 1.0, 0.0");
  }
}
