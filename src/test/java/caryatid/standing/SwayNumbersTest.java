package caryatid.standing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Measures of sway that depend on both directions, on the mean, or on where a series ends. */
class SwayNumbersTest {

  /**
   * Validation (Chew 1966; k for 4 points is 71.25, computed from the closed form): variances 10/3
   * and 8/3, covariance 8/3, so the root of the determinant is 4/3 and the area 95 pi.
   */
  @Test
  void theEllipseOfCorrelatedSwayIsNarrower() {
    Sway sway =
        SwayMeasures.measure(
            LoadLineOwner.LEFT_FOOT,
            OptionalDouble.empty(),
            new double[] {2, -2, 1, -1},
            new double[] {2, -2, 0, 0},
            100);
    assertThat(sway.both().orElseThrow().covarianceMm2()).isCloseTo(8.0 / 3, within(1e-12));
    assertThat(sway.both().orElseThrow().ellipseMm2()).isCloseTo(95 * Math.PI, within(1e-9));
  }

  /** A circle of 5 mm, once round a second, wherever its middle is. */
  @Test
  void theMeanFrequencyDoesNotDependOnWhereTheWearerStands() {
    double[] right = new double[1000];
    double[] anterior = new double[1000];
    for (int i = 0; i < 1000; i++) {
      right[i] = 120 + 5 * Math.cos(2 * Math.PI * i / 100);
      anterior[i] = -80 + 5 * Math.sin(2 * Math.PI * i / 100);
    }
    Sway sway =
        SwayMeasures.measure(LoadLineOwner.LEFT_FOOT, OptionalDouble.empty(), right, anterior, 100);
    // A polygon of 100 sides is shorter than its circle by 1 part in 6000.
    assertThat(sway.both().orElseThrow().meanFrequencyHz()).isCloseTo(1, within(2e-4));
  }

  /** At lag 1 the products sum to exactly 0, at lag 2 to 1 of 4: the sum stops before. */
  @Test
  void theEffectiveSizeSumsUpToTheFirstZero() {
    assertThat(EffectiveSampleSize.of(new double[] {1, 0, 1, 0, -1, 0, -1, 0})).isEqualTo(8);
  }

  /** Half a wave, in 401 samples or in 602, which do not go evenly into 401 parts. */
  @Test
  void theEffectiveSizeDoesNotDependOnHowManySamplesArePutTogether() {
    assertThat(EffectiveSampleSize.of(halfWave(602)))
        .isCloseTo(EffectiveSampleSize.of(halfWave(401)), within(0.01));
  }

  private static double[] halfWave(int n) {
    return IntStream.range(0, n).mapToDouble(i -> Math.cos(Math.PI * (i + 0.5) / n)).toArray();
  }

  /** Turned about its ends, a straight line goes on straight, and a low-pass leaves it as it is. */
  @Test
  void theEndsOfAFilteredSeriesAreContinuedToTheirFullLength() {
    double[] line = IntStream.range(0, 60).mapToDouble(i -> 7 + 0.25 * i).toArray();
    double[] filtered = Butterworth.twoPasses(10, 100).zeroPhase(line, 40);
    // What the start of a pass leaves after 40 samples.
    assertThat(filtered).containsExactly(line, within(1e-3));
    double[] still = new double[60];
    Arrays.fill(still, 5);
    assertThat(Butterworth.twoPasses(10, 100).zeroPhase(still, 3))
        .containsExactly(still, within(1e-12));
  }

  /** A low-pass leaves a straight way as it is: so long are its ends continued. */
  @Test
  void lowPassedSwayIsContinuedAtItsEnds() {
    LoadSignals way =
        LoadSignals.of(
            LoadLineOwner.LEFT_FOOT,
            Made.at(100, 2)
                .plate("p", i -> 0.25 * i, i -> 0.5 * i, i -> 400)
                .recording()
                .plates()
                .get(0));
    Sway lowPassed = SwayMeasures.of(way, 100).get(1);
    assertThat(lowPassed.both().orElseThrow().rangeRightMm()).isCloseTo(0.25 * 199, within(0.01));
    assertThat(lowPassed.rangeAnteriorMm()).isCloseTo(0.5 * 199, within(0.01));
  }

  /** What does not move has no frequency, and every sample of it counts. */
  @Test
  void whatDoesNotMoveHasNoFrequency() {
    double[] still = new double[500];
    Sway sway =
        SwayMeasures.measure(LoadLineOwner.LEFT_FOOT, OptionalDouble.empty(), still, still, 100);
    assertThat(sway.both().orElseThrow().meanFrequencyHz()).isZero();
    assertThat(sway.both().orElseThrow().effectiveRight()).isEqualTo(500);
  }

  @Test
  void aSeriesShorterThanItsContinuationIsFilteredAllTheSame() {
    assertThat(Butterworth.twoPasses(10, 100).zeroPhase(new double[] {5, 5, 5}, 40))
        .containsExactly(new double[] {5, 5, 5}, within(1e-12));
  }

  /**
   * Two blocks of two samples: means 2 and 5 mm to the right, 30 and 12 mm anterior, or swapped.
   */
  @Test
  void blocksLieApartByTheDirectionInWhichTheyAreFurther() {
    assertThat(apart(new double[] {1, 3, 4, 6}, new double[] {29, 31, 11, 13})).isEqualTo(18);
    assertThat(apart(new double[] {29, 31, 11, 13}, new double[] {1, 3, 4, 6})).isEqualTo(18);
  }

  private static double apart(double[] right, double[] anterior) {
    LoadSignals signals =
        LoadSignals.of(
            LoadLineOwner.LEFT_FOOT,
            Made.at(100, 0.04)
                .plate("p", i -> right[i], i -> anterior[i], i -> 400)
                .recording()
                .plates()
                .get(0));
    return new Blocks(signals, new int[] {0, 2, 4}).apartMm(0, 1, 1, 2);
  }
}
