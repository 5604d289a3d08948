package caryatid.calibration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import caryatid.samples.Measures;
import caryatid.samples.Noise;
import caryatid.samples.Relaxation;
import caryatid.samples.Sway;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class FamiliesTest {
  private static final int DRIFT = 4;

  static List<Family> families() {
    return Stream.of(Families.CHOSEN_ON, Families.LOOKED_AT, Families.HELD_BACK, Families.FROZEN)
        .flatMap(List::stream)
        .toList();
  }

  /**
   * Validation: the middle person of each family sways as the middle half or so of 1,930 real
   * stands (Santos and Duarte 2016, PeerJ 4:e2648): every median lies between their 5th and 95th
   * percentile, and of standard deviations, speed and range the family's own 5th and 95th
   * percentiles within a factor of 2.5 of theirs. Few people are drawn, so the tails are rough.
   */
  @ParameterizedTest
  @MethodSource("families")
  void a_family_sways_as_real_people_do(Family family) {
    double[][] simulated = People.percentiles(family, 100, 1);
    for (int m = 0; m < simulated.length; m++) {
      double[] real = People.REAL[m];
      assertThat(simulated[m][1]).as(People.MEASURES.get(m)).isBetween(real[0], real[2]);
    }
    for (int m = 0; m < DRIFT; m++) {
      double[] real = People.REAL[m];
      assertThat(simulated[m][0] / real[0]).as(People.MEASURES.get(m)).isBetween(0.4, 2.5);
      assertThat(simulated[m][2] / real[2]).as(People.MEASURES.get(m)).isBetween(0.4, 2.5);
    }
  }

  /**
   * Validation: every family's long-run mean is 0. The mean of 400 stands of 20 s by different
   * people has a standard error that is estimated from them; four of it are allowed.
   */
  @ParameterizedTest
  @MethodSource("families")
  void the_long_run_mean_of_a_family_is_zero(Family family) {
    double[] means = new double[400];
    for (int i = 0; i < means.length; i++) {
      Noise noise = new Noise(i);
      means[i] = Measures.mean(family.draw(noise).fore().trace(400, 20, noise.split()));
    }
    double standardError = Measures.sd(means) / Math.sqrt(means.length);
    assertThat(Measures.mean(means)).isCloseTo(0, within(4 * standardError));
  }

  static List<Sway> swaysOfStatedSize() {
    return List.of(
        new PowerLaw(2, 0.8, 0.4, 3),
        new Postures(2, 10),
        new FreeWithin(2, 10),
        new Waves(2, 4, 20),
        new Pushes(2, 4, 8),
        new Unsteady(new Relaxation(2, 5), 0.4, 8));
  }

  /**
   * Validation: the stated standard deviation, which follows from each process's own definition.
   */
  @ParameterizedTest
  @MethodSource("swaysOfStatedSize")
  void a_sway_has_the_standard_deviation_it_states(Sway sway) {
    double squares = 0;
    for (int i = 0; i < 400; i++) {
      double[] x = sway.trace(1200, 20, new Noise(i));
      squares += Measures.sd(x) * Measures.sd(x) + Measures.mean(x) * Measures.mean(x);
    }
    assertThat(Math.sqrt(squares / 400)).isCloseTo(2, within(0.1));
  }

  /**
   * Validation: autocovariance of a damped oscillation; the first two follow from its coefficients.
   */
  @Test
  void an_oscillation_has_its_variance_and_first_correlation() {
    Sway sway = new Oscillation(3, 0.3, 1);
    double[] x = sway.trace(200_000, 10, new Noise(4));
    double keep = Math.exp(-0.1);
    double a = 2 * keep * Math.cos(2 * Math.PI * 0.03);
    double first = a / (1 + keep * keep);
    double sum = 0;
    for (int i = 0; i + 1 < x.length; i++) {
      sum += x[i] * x[i + 1];
    }
    double sd = Measures.sd(x);
    assertThat(sd).isCloseTo(3, within(0.06));
    assertThat(sum / x.length / (sd * sd)).isCloseTo(first, within(0.01));
  }
}
