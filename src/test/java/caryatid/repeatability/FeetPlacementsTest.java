package caryatid.repeatability;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import caryatid.recording.model.NamedBytes;
import caryatid.remark.BadInput;
import caryatid.uncertainty.SampleVariance;
import caryatid.wording.Wording;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class FeetPlacementsTest {
  private static FeetPlacements read(int... rightMm) throws BadInput {
    StringBuilder text = new StringBuilder();
    text.append("feet-turn: 1\nat: 2026-11-28T09:00+01:00\nby: AB\nbetween-heels-mm: 100\n");
    text.append("placements:\n");
    for (int mm : rightMm) {
      text.append("  - {left-mm: 20, right-mm: ").append(mm).append("}\n");
    }
    return FeetPlacements.read(NamedBytes.of("turn.yaml", text.toString().getBytes(UTF_8)));
  }

  /**
   * Validation, by hand: heels 100 mm apart, the right one 5, -5, 5, -5 and 0 mm in front of the
   * left: tangents of 0.05 four times, atan 0.04995840; mean square 4/5 of its square.
   */
  @Test
  void theTurnIsTheMeanSquareAboutNoTurn() throws BadInput {
    SampleVariance variance = read(25, 15, 25, 15, 20).variance();
    assertThat(variance.variance()).isCloseTo(0.8 * 0.0499583957 * 0.0499583957, within(1e-10));
    assertThat(variance.degreesOfFreedom()).isEqualTo(5);
  }

  @Test
  void whatIsCommonToAllPlacementsCounts() throws BadInput {
    assertThat(Math.sqrt(read(25, 25, 25, 25, 25).variance().variance()))
        .isCloseTo(0.04995840, within(1e-8));
  }

  /**
   * Validation, by hand: both distances are read to a millimetre, 1 / 12 mm^2 each (JCGM 100:2008,
   * F.2.2.1); heels 100 mm apart: 2 / 12 / 100^2.
   */
  @Test
  void placementsThatShowNoTurnAreKnownToWhatTheRulerShows() throws BadInput {
    SampleVariance variance = read(20, 20, 20, 20, 20).variance();
    assertThat(variance.variance()).isCloseTo(1.6667e-5, within(1e-9));
    assertThat(variance.degreesOfFreedom()).isEqualTo(5);
  }

  /** By hand: the tangents of 19.8 and 20.3 degrees are 0.36 and 0.37. */
  @Test
  void aTurnOfMoreThanTwentyDegreesIsTakenForASlip() throws BadInput {
    assertThat(read(56, 56, 56, 56, 56).placements()).hasSize(5);
    BadInput refused = catchThrowableOfType(BadInput.class, () -> read(57, 57, 57, 57, 57));
    assertThat(refused.problems().stream().map(Wording.in(Locale.ENGLISH)::say))
        .containsExactly(
            "turn.yaml line 6, column 3: they scatter by 20.3°; more than 20.0° is taken for a"
                + " typing error. Check the numbers.");
  }

  @Test
  void fourPlacementsAreTooFew() {
    BadInput refused = catchThrowableOfType(BadInput.class, () -> read(20, 20, 20, 20));
    assertThat(refused.problems().stream().map(Wording.in(Locale.ENGLISH)::say))
        .containsExactly(
            "turn.yaml line 6, column 3: 4 placements; at least 5 are needed. Let the wearer step"
                + " off and place the feet again.");
  }
}
