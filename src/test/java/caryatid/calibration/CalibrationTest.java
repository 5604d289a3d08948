package caryatid.calibration;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.samples.Relaxation;
import org.junit.jupiter.api.Test;

/**
 * Validation: a small version of the calibration study with fixed seeds. Each limit is the one that
 * is claimed less three standard errors of the count, so that only a real change breaks it.
 */
class CalibrationTest {
  private static final int STANDS = 600;
  private static final int FITTINGS = 400;

  private static double standardError(double percent, int runs) {
    return Math.sqrt(percent * (100 - percent) / runs);
  }

  private static StandMeans oneRelaxation(double correlationTimes) {
    double timeS = 20 / correlationTimes;
    Family family = Family.of("one relaxation", (sdMm, noise) -> new Relaxation(sdMm, timeS));
    return StandMeans.of(family, new Clinic(50, 20, 1, 1), STANDS, 11);
  }

  @Test
  void this_stands_mean_is_covered_where_the_stretch_is_long_enough() {
    double three = 3 * standardError(95, STANDS);
    assertThat(oneRelaxation(40).coverage()).isBetween(93 - three, 97 + three);
  }

  @Test
  void this_stands_mean_is_covered_less_often_where_the_stretch_is_short() {
    double three = 3 * standardError(90, STANDS);
    assertThat(oneRelaxation(12).coverage()).isBetween(90 - three, 97.0);
    assertThat(oneRelaxation(3).coverage()).isLessThan(90);
  }

  @Test
  void three_stands_cover_this_alignments_mean_and_say_within_falsely_only_seldom() {
    Fittings fittings = Fittings.of(Families.RELAXATIONS, new Clinic(50, 20, 3, 2), FITTINGS, 12);
    Tally both = fittings.sagittal().plus(fittings.frontal());
    double three = 3 * standardError(95, both.runs());
    double each = 3 * standardError(95, fittings.sagittal().runs());
    assertThat(fittings.sagittal().coverage()).isBetween(93 - each, 97 + each);
    assertThat(fittings.frontal().coverage()).isBetween(93 - each, 97 + each);
    assertThat(both.falseWithinPercent()).isLessThan(6 + three / Math.sqrt(2));
    assertThat(both.outsideThoughWithin()).isLessThan(5 + 3 * standardError(5, both.saidWithin()));
    assertThat(both.withinThoughOutside()).isLessThan(5 + 3 * standardError(5, both.saidOutside()));
  }

  @Test
  void one_stand_covers_this_alignments_mean() {
    Fittings fittings = Fittings.of(Families.RELAXATIONS, new Clinic(50, 20, 1, 1), FITTINGS, 13);
    double three = 3 * standardError(93, FITTINGS);
    assertThat(fittings.sagittal().coverage()).isGreaterThan(93 - three);
    assertThat(fittings.frontal().coverage()).isGreaterThan(93 - three);
  }
}
