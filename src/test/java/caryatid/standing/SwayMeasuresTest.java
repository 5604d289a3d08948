package caryatid.standing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SwayMeasuresTest {
  private static Sway measure(double[] right, double[] anterior, double rateHz) {
    return SwayMeasures.measure(
        LoadLineOwner.WHOLE_BODY, OptionalDouble.empty(), right, anterior, rateHz);
  }

  private static double[] wave(int n, double amplitude, double turnsPerSample, double phase) {
    return IntStream.range(0, n)
        .mapToDouble(i -> amplitude * StrictMath.cos(2 * Math.PI * turnsPerSample * i + phase))
        .toArray();
  }

  /**
   * The factor of the 95 % prediction ellipse after Chew 1966; Schubert and Kirchner 2014, Gait
   * Posture 39:518-522; values computed independently.
   */
  @ParameterizedTest
  @CsvSource({
    "4, 71.25",
    "10, 11.035951",
    "30, 7.150016",
    "100, 6.303865",
    "1000, 6.021522",
    "3000, 6.001456",
    "1000000000, 5.991465"
  })
  void validation_theFactorOfTheEllipse(long n, double k) {
    assertThat(SwayMeasures.ellipseFactor(n)).isCloseTo(k, within(6e-7));
  }

  /** Four points (+/-a, 0), (0, +/-b): exactly 47.5 pi a b. */
  @Test
  void validation_theEllipseOfFourPoints() {
    double[] right = {3, -3, 0, 0};
    double[] anterior = {0, 0, 7, -7};
    assertThat(measure(right, anterior, 1).both().orElseThrow().ellipseMm2())
        .isCloseTo(47.5 * Math.PI * 21, within(1e-10));
  }

  /**
   * A circle of 5 mm, 1 Hz, at 1000 Hz: mean speed 31.415875 mm/s, by chords; one turn a second.
   */
  @Test
  void validation_aCircle() {
    Sway sway = measure(wave(60_001, 5, 1e-3, 0), wave(60_001, 5, 1e-3, -Math.PI / 2), 1000);
    assertThat(sway.both().orElseThrow().meanSpeedMmPerS()).isCloseTo(31.415875, within(5e-7));
    assertThat(sway.both().orElseThrow().rangeRightMm()).isCloseTo(10, within(1e-9));
    // The closing sample counts twice, which shifts the centre by 5 mm / 60001.
    assertThat(sway.both().orElseThrow().meanFrequencyHz()).isCloseTo(1, within(1e-4));
    assertThat(sway.both().orElseThrow().covarianceMm2()).isCloseTo(0, within(1e-9));
  }

  /**
   * A sine of amplitude A and frequency f: RMS A / sqrt 2, mean speed 4 A f (Prieto et al. 1996).
   */
  @Test
  void validation_aSine() {
    int n = 60_000;
    Sway sway = measure(new double[n], wave(n, 8, 0.5e-3, 0), 1000);
    // The standard deviation is taken with n - 1 and the wave sampled 120000 times a minute.
    assertThat(sway.sdAnteriorMm()).isCloseTo(8 / Math.sqrt(2), within(1e-4));
    assertThat(sway.both().orElseThrow().meanSpeedMmPerS()).isCloseTo(4 * 8 * 0.5, within(1e-3));
    // Mean distance 2 A / pi, so the mean frequency is speed / (4 A) = f.
    assertThat(sway.both().orElseThrow().meanFrequencyHz()).isCloseTo(0.5, within(1e-4));
    assertThat(sway.both().orElseThrow().ellipseMm2()).isZero();
  }

  @Test
  void aSlowRateHasNoLowPassedMeasures() {
    LoadSignals slow = LoadSignals.of(LoadLineOwner.WHOLE_BODY, plate(20));
    LoadSignals quick = LoadSignals.of(LoadLineOwner.WHOLE_BODY, plate(21));
    assertThat(SwayMeasures.of(slow, 20)).hasSize(1);
    assertThat(SwayMeasures.of(quick, 21)).hasSize(2);
  }

  private static caryatid.recording.model.PlateTrack plate(double rateHz) {
    return Made.at(rateHz, 10)
        .plate("p", i -> i % 2, i -> i % 3, i -> 1)
        .recording()
        .plates()
        .get(0);
  }
}
