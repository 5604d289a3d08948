package caryatid.samples;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;

/**
 * Validation: the whole body's sway of the invented wearers against the 5th and 95th percentiles of
 * 1,930 real stands of 60 s at 100 Hz (open data set of Santos and Duarte 2016, PeerJ 4:e2648,
 * computed from it by an independent program). Of 40 stands, the median must lie between them; of
 * the vertical force, between the 0.11 and 0.33 % of body weight seen in real standing.
 */
class RealisticSwayTest {
  private static final Walked[] STANDS = stands();

  private record Walked(double[] fore, double[] side, double[] upN) {}

  private static Walked[] stands() {
    Walked[] stands = new Walked[40];
    for (int i = 0; i < stands.length; i++) {
      Person person = i % 2 == 0 ? K7.barefoot() : M4.barefoot();
      FootTrace whole = Stand.of(person, 6000, 100, new Noise(1000 + i)).whole();
      stands[i] = new Walked(whole.anteriorMm(), whole.rightMm(), whole.upN());
    }
    return stands;
  }

  private static double median(ToDoubleFunction<Walked> measure) {
    double[] sorted = Arrays.stream(STANDS).mapToDouble(measure).sorted().toArray();
    return (sorted[19] + sorted[20]) / 2;
  }

  @Test
  void standard_deviations_are_those_of_real_stands() {
    assertThat(median(s -> Measures.sd(s.fore))).isBetween(2.8, 14.9);
    assertThat(median(s -> Measures.sd(s.side))).isBetween(1.5, 12.3);
  }

  @Test
  void mean_speed_is_that_of_real_stands() {
    assertThat(median(s -> Measures.speed(s.fore, s.side, 100))).isBetween(6.2, 48.3);
  }

  @Test
  void the_range_is_that_of_real_stands() {
    assertThat(median(s -> Measures.range(s.fore))).isBetween(15.1, 87.7);
  }

  @Test
  void the_drift_from_first_to_last_quarter_is_that_of_real_stands() {
    assertThat(median(s -> Measures.drift(s.fore))).isBetween(0.4, 16.6);
  }

  @Test
  void the_largest_step_between_samples_is_that_of_real_stands() {
    assertThat(median(s -> Measures.largestStep(s.fore))).isBetween(0.34, 3.9);
  }

  @Test
  void the_vertical_force_varies_as_in_real_stands() {
    double ofWeight = median(s -> Measures.sd(s.upN) / Measures.mean(s.upN));
    assertThat(ofWeight).isBetween(0.0009, 0.0033);
  }
}
