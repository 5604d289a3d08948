package caryatid.calibration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import caryatid.samples.Noise;
import org.junit.jupiter.api.Test;

class ScrewByGeometryTest {

  /** Validation: tan(1 deg) = 0.0174551 over the 412 mm from the ankle to the knee is 7.191 mm. */
  @Test
  void the_slope_of_a_degree_follows_from_the_height_of_the_knee() {
    double above = Wearer.KNEE_UP_MM - AlignedWearer.ANKLE_UP_MM;
    assertThat(Screw.ANKLE.slope(0)).isCloseTo(above * Math.tan(Math.toRadians(1)), within(5e-4));
    assertThat(Screw.FOOT_TILT.slope(2)).isEqualTo(Screw.ANKLE.slope(0));
  }

  /** Validation: the shares that the mixture states, with four standard errors of the count. */
  @Test
  void the_mixture_has_the_shares_it_states() {
    int none = 0;
    int reversed = 0;
    int runs = 4000;
    for (int i = 0; i < runs; i++) {
      double mm = Responses.draw(new Noise(i)).mm()[0][0];
      none += mm == 0 ? 1 : 0;
      reversed += mm < 0 ? 1 : 0;
    }
    assertThat(100.0 * none / runs).isCloseTo(10, within(1.9));
    assertThat(100.0 * reversed / runs).isCloseTo(5, within(1.4));
  }

  @Test
  void one_screw_at_a_time_brings_most_wearers_there() {
    Courses courses = Courses.of(ScrewByGeometry::new, 30, 900_000);
    assertThat(courses.percentileOfStands(50)).isBetween(2, 5);
    assertThat(courses.neverPercent()).isLessThan(50);
  }
}
