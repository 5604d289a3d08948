package caryatid.calibration;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.samples.Relaxation;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Validation: a middle version of the calibration study, with other seeds than the published one.
 * Limits are those that are claimed, widened by three standard errors of the count.
 */
@Tag("proof")
class CalibrationProofTest {
  private static final int FITTINGS = Integer.getInteger("fittings", 2000);

  /** The limits below are widened for 2000; fewer have larger standard errors. */
  private static final double WIDER = Math.sqrt(2000.0 / FITTINGS);

  @ParameterizedTest
  @CsvSource({"40, 20, 93, 97", "20, 20, 93, 97", "20, 60, 93, 97", "12, 20, 90, 97"})
  void this_stands_mean_is_covered(double times, double seconds, double least, double most) {
    Family family =
        Family.of("one relaxation", (sdMm, noise) -> new Relaxation(sdMm, seconds / times));
    StandMeans means = StandMeans.of(family, new Clinic(50, seconds, 1, 1), FITTINGS, 31_000);
    assertThat(means.coverage()).isBetween(least - 1.5 * WIDER, most + 1.5 * WIDER);
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2})
  void three_stands_hold_what_is_claimed_for_people_not_chosen_on(int which) {
    Family family = Families.HELD_BACK.get(which);
    Fittings fittings = Fittings.of(family, new Clinic(50, 20, 3, 2), FITTINGS, 32_000);
    assertThat(fittings.sagittal().coverage()).isBetween(93 - 1.7 * WIDER, 97 + 1.2 * WIDER);
    assertThat(fittings.frontal().coverage()).isBetween(93 - 1.7 * WIDER, 97 + 1.2 * WIDER);
    Tally both = fittings.sagittal().plus(fittings.frontal());
    assertThat(both.falseWithinPercent()).isLessThan(6 + 0.8 * WIDER);
    assertThat(both.outsideThoughWithin()).isLessThan(5.0);
    assertThat(both.withinThoughOutside()).isLessThan(5 + 2.7 * WIDER);
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2})
  void one_stand_holds_what_is_claimed_for_people_not_chosen_on(int which) {
    Family family = Families.HELD_BACK.get(which);
    Fittings fittings = Fittings.of(family, new Clinic(50, 20, 1, 1), FITTINGS, 33_000);
    assertThat(fittings.sagittal().coverage()).isGreaterThan(93 - 1.7 * WIDER);
    assertThat(fittings.frontal().coverage()).isGreaterThan(93 - 1.7 * WIDER);
  }

  @Test
  void five_stands_hold_this_alignments_mean_in_each_plane() {
    Fittings fittings =
        Fittings.of(Families.HELD_BACK.get(0), new Clinic(50, 20, 5, 1), FITTINGS, 34_000);
    assertThat(fittings.sagittal().coverage()).isBetween(93 - 1.7 * WIDER, 97 + 1.2 * WIDER);
    assertThat(fittings.frontal().coverage()).isBetween(93 - 1.7 * WIDER, 97 + 1.2 * WIDER);
  }
}
