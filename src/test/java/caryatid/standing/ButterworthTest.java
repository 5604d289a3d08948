package caryatid.standing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class ButterworthTest {

  /**
   * Winter, Biomechanics and Motor Control of Human Movement, ch. 2 and 3 (from memory): 6 Hz at 60
   * Hz; a1 and a2 there stand on the other side of the equation.
   */
  @Test
  void validation_wintersCoefficients() {
    Butterworth filter = Butterworth.onePass(6, 60);
    assertThat(filter.b0).isCloseTo(0.06746, within(5e-6));
    assertThat(2 * filter.b0).isCloseTo(0.13491, within(5e-6));
    assertThat(-filter.a1).isCloseTo(1.14298, within(5e-6));
    assertThat(-filter.a2).isCloseTo(-0.41280, within(5e-6));
  }

  /** Order 2, 0.2 of half the rate: SciPy's signal.butter. */
  @Test
  void validation_sciPysCoefficients() {
    Butterworth filter = Butterworth.onePass(10, 100);
    assertThat(filter.b0).isCloseTo(0.0674552739, within(5e-11));
    assertThat(filter.a1).isCloseTo(-1.1429805025, within(5e-11));
    assertThat(filter.a2).isCloseTo(0.4128015981, within(5e-11));
  }

  /** Order 4, 0.2 of half the rate, as two sections one after the other: SciPy's signal.butter. */
  @Test
  void validation_sciPysCoefficientsOfFourthOrder() {
    double warped = Butterworth.warped(10, 100);
    Butterworth one = new Butterworth(warped, 2 * Math.cos(Math.PI / 8));
    Butterworth two = new Butterworth(warped, 2 * Math.cos(3 * Math.PI / 8));
    double b = one.b0 * two.b0;
    assertThat(new double[] {b, 4 * b, 6 * b})
        .containsExactly(new double[] {0.0048243434, 0.0192973734, 0.0289460601}, within(5e-11));
    assertThat(
            new double[] {
              one.a1 + two.a1,
              one.a2 + one.a1 * two.a1 + two.a2,
              one.a1 * two.a2 + one.a2 * two.a1,
              one.a2 * two.a2
            })
        .containsExactly(
            new double[] {-2.3695130072, 2.3139884144, -1.0546654059, 0.1873794924}, within(5e-11));
  }

  /**
   * Why the warped cutoff is corrected and not the cutoff itself: divided by 0.802 (the fourth root
   * of root 2 - 1), 10 Hz at 100 Hz leaves 0.7229 after two passes (computed independently).
   */
  @Test
  void validation_correctingTheCutoffItselfLeavesTooMuch() {
    double[] wave = wave(4000);
    double[] passed =
        Butterworth.onePass(10 / Math.pow(Math.sqrt(2) - 1, 0.25), 100).zeroPhase(wave, 30);
    assertThat(passed[2000] / wave[2000]).isCloseTo(0.7229, within(5e-5));
  }

  /** Two passes, 10 Hz at 100 Hz: each pass has its cutoff at 12.249241 Hz. */
  @Test
  void validation_theCutoffCorrectedForTwoPasses() {
    Butterworth filter = Butterworth.twoPasses(10, 100);
    assertThat(filter.b0).isCloseTo(0.0944467439, within(5e-11));
    assertThat(filter.a1).isCloseTo(-0.9626413088, within(5e-11));
    assertThat(filter.a2).isCloseTo(0.3404282844, within(5e-11));
    assertThat(Butterworth.onePass(12.249241, 100).b0).isCloseTo(filter.b0, within(5e-9));
  }

  @Test
  void validation_twoPassesTogetherLeaveOneOverRootTwoAtTheCutoff() {
    double[] wave = wave(4000);
    double[] passed = Butterworth.twoPasses(10, 100).zeroPhase(wave, 30);
    double[] middle = Arrays.copyOfRange(passed, 1000, 3000);
    double[] before = Arrays.copyOfRange(wave, 1000, 3000);
    double gain = Math.sqrt(square(middle) / square(before));
    assertThat(gain).isCloseTo(1 / Math.sqrt(2), within(1e-12));
    assertThat(middle[5] / before[5]).as("not delayed").isCloseTo(gain, within(1e-9));
  }

  @Test
  void aLineStaysALine() {
    double[] line = IntStream.range(0, 200).mapToDouble(i -> 3 + 0.1 * i).toArray();
    double[] passed = Butterworth.twoPasses(5, 100).zeroPhase(line, 60);
    IntStream.range(0, 200).forEach(i -> assertThat(passed[i]).isCloseTo(line[i], within(2e-3)));
  }

  @Test
  void theCutoffMustLieBelowHalfTheRate() {
    assertThat(Butterworth.onePass(49.9, 100).b0).isPositive();
    assertThatThrownBy(() -> Butterworth.onePass(50, 100))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("cutoff 50.0 Hz at 100.0 Hz");
  }

  private static double[] wave(int n) {
    return IntStream.range(0, n)
        .mapToDouble(i -> StrictMath.cos(2 * Math.PI * 10 / 100 * i + 0.3))
        .toArray();
  }

  private static double square(double[] values) {
    return Arrays.stream(values).map(v -> v * v).sum();
  }
}
