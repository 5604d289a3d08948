package caryatid.calibration;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Validation: a middle version of the calibration study, and rows of the published one made again.
 */
@Tag("proof")
class CalibrationProofTest {

  /** Limits as claimed, widened by three standard errors of 2,000 fittings in two planes. */
  @Test
  void three_stands_hold_what_is_claimed_for_people_not_chosen_on() {
    Fittings fittings = Fittings.of(Families.ANY_RELAXATIONS, new Clinic(50, 20, 3, 2), 2000, 21);
    Tally both = fittings.sagittal().plus(fittings.frontal());
    assertThat(both.coverage()).isBetween(93 - 1.0, 97 + 1.0);
    assertThat(both.falseWithinPercent()).isLessThan(6 + 0.7);
    assertThat(both.outsideThoughWithin()).isLessThan(5.0);
    assertThat(both.withinThoughOutside()).isLessThan(5.0);
  }

  @Test
  void the_published_table_of_known_memory_is_what_the_command_makes() throws IOException {
    String page = Files.readString(Path.of("docs", "calibration.md"));
    assertThat(page).contains(new Tables(1).knownMemory().toString());
  }
}
