package caryatid.samples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import caryatid.geometry.Axes;
import caryatid.geometry.Direction;
import java.util.Arrays;
import org.junit.jupiter.api.Test;

class GeneratorTest {

  /** Validation: first outputs of SplitMix64 for the seed 1234567 (from memory). */
  @Test
  void random_numbers_are_those_of_splitmix64() {
    Noise noise = new Noise(1234567);
    assertThat(noise.next()).isEqualTo(6457827717110365317L);
    assertThat(noise.next()).isEqualTo(3203168211198807973L);
    assertThat(noise.next()).isEqualTo(-8629252141511181193L);
  }

  /**
   * Validation: the normal distribution has mean 0, variance 1 and fourth moment 3. Standard errors
   * with a million numbers are 0.001, 0.0014 and 0.0098; four of each are allowed.
   */
  @Test
  void normal_numbers_have_the_moments_of_the_normal_distribution() {
    Noise noise = new Noise(1);
    double[] moments = new double[5];
    for (int i = 0; i < 1_000_000; i++) {
      double x = noise.normal();
      for (int k = 1; k < 5; k++) {
        moments[k] += StrictMath.pow(x, k) / 1e6;
      }
    }
    assertThat(moments[1]).isCloseTo(0, within(0.004));
    assertThat(moments[2]).isCloseTo(1, within(0.0057));
    assertThat(moments[4]).isCloseTo(3, within(0.04));
  }

  /**
   * Validation: autocorrelation exp(-t / T) of an Ornstein-Uhlenbeck process; four standard errors.
   */
  @Test
  void a_relaxation_forgets_at_its_pace() {
    double[] x = new Relaxation(2, 0.5).trace(400_000, 100, new Noise(2));
    double variance = 0;
    double after = 0;
    for (int i = 0; i + 50 < x.length; i++) {
      variance += x[i] * x[i];
      after += x[i] * x[i + 50];
    }
    assertThat(after / variance).isCloseTo(StrictMath.exp(-1), within(0.06));
    assertThat(variance / x.length).isCloseTo(4, within(0.26));
  }

  /**
   * Validation: the long-run mean of a pendulum is 0. Over 200 stands of ten minutes the variance
   * is that of the posture's relaxations, 2 sd2 T / t each: a standard error of 0.066 mm; four of
   * it are allowed.
   */
  @Test
  void the_long_run_mean_of_a_pendulum_is_zero() {
    double sum = 0;
    for (int i = 0; i < 200; i++) {
      double[] trace = People.foreAndAft(1).trace(6_000, 10, new Noise(100 + i));
      sum += Arrays.stream(trace).average().orElseThrow() / 200;
    }
    assertThat(sum).isCloseTo(0, within(0.26));
  }

  /**
   * Validation: CoP from forces and moments about a true origin (a, b, c) below the surface, x =
   * -(My + c Fx) / Fz + a, y = (Mx - c Fy) / Fz + b, Tz = Mz - (x - a) Fy + (y - b) Fx (C3D
   * convention for plates of type 2), on the case of a vector of (0.5, -1, -40) mm from the true
   * origin to the surface, which puts the origin at (-0.5, 1, 40), and F = (10, -20, 800) N.
   */
  @Test
  void the_moments_of_a_plate_lead_back_to_the_centre_of_pressure() {
    FootTrace foot = FootTrace.empty(1);
    foot.rightMm()[0] = 50;
    foot.anteriorMm()[0] = -30;
    foot.rightN()[0] = 10;
    foot.anteriorN()[0] = -20;
    foot.upN()[0] = 800;
    foot.turnNmm()[0] = 1500;
    Axes axes = new Axes(Direction.PLUS_X, Direction.PLUS_Y, Direction.PLUS_Z);
    PlateModel plate = new PlateModel(axes, true, 0, 0, new PlateModel.Vector(-0.5, 1, 40));
    PlateModel.Vector moment = plate.read(foot)[0].moment();
    assertThat(moment).isEqualTo(new PlateModel.Vector(-25600, -40800, 800));
  }

  /** Validation: the same way back in the axes of two plates, y up, forces on the plate. */
  @Test
  void turned_axes_lead_back_to_the_centre_of_pressure() {
    Stand stand = Stand.of(M4.barefoot(), 500, 100, new Noise(3));
    Axes axes = new Axes(Direction.PLUS_Z, Direction.PLUS_X, Direction.PLUS_Y);
    PlateModel plate = new PlateModel(axes, false, -205, 10, new PlateModel.Vector(2, -45, 3));
    PlateModel.Reading[] readings = plate.read(stand.left());
    for (int i = 0; i < readings.length; i++) {
      PlateModel.Vector f = readings[i].force();
      PlateModel.Vector m = readings[i].moment();
      double x = (m.z() + 45 * f.x()) / f.y() + 2;
      double z = -(m.x() - 45 * f.z()) / f.y() + 3;
      assertThat(x + 10).isCloseTo(stand.left().anteriorMm()[i], within(1e-9));
      assertThat(z - 205).isCloseTo(stand.left().rightMm()[i], within(1e-9));
      assertThat(f.y()).isEqualTo(-stand.left().upN()[i]);
    }
  }

  /** Validation: both feet together bear the weight, and push against each other without a rest. */
  @Test
  void both_feet_together_bear_the_weight() {
    Stand stand = Stand.of(K7.barefoot(), 6000, 100, new Noise(5));
    FootTrace whole = stand.whole();
    assertThat(whole.meanUpN(0, 6000)).isCloseTo(82 * 9.80665, within(0.5));
    assertThat(Arrays.stream(whole.rightN()).average().orElseThrow()).isCloseTo(0, within(0.2));
    assertThat(Arrays.stream(whole.anteriorN()).average().orElseThrow()).isCloseTo(0, within(0.2));
  }

  @Test
  void numbers_are_written_with_a_fixed_count_of_decimals() {
    assertThat(Digits.write(-1.005, 1)).isEqualTo("-1.0");
    assertThat(Digits.write(-0.04, 1)).isEqualTo("0.0");
    assertThat(Digits.write(12.25, 1)).isEqualTo("12.3");
    assertThat(Digits.write(999.96, 1)).isEqualTo("1000.0");
    assertThat(Digits.write(-7.5, 0)).isEqualTo("-8");
  }
}
