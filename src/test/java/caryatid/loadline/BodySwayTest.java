package caryatid.loadline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import caryatid.geometry.Plane;
import caryatid.standing.LoadLineOwner;
import caryatid.standing.Standing;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The stands' sway is 3 mm sideways (effective size 20) and 5 mm fore and aft (15). */
class BodySwayTest {
  private static Standing of(LoadLineOwner... lines) {
    return Legs.standing(
        java.util.Arrays.stream(lines)
            .map(line -> Legs.load(line, 0, 0, 400, 1, Optional.empty()))
            .toArray(caryatid.standing.MeanLoad[]::new));
  }

  @Test
  void theWholeBodysSwingCountsWhereItIsKnown() {
    Standing both = of(LoadLineOwner.LEFT_FOOT, LoadLineOwner.RIGHT_FOOT, LoadLineOwner.WHOLE_BODY);
    assertThat(BodySway.of(both, LoadLineOwner.LEFT_FOOT, Plane.FRONTAL))
        .isEqualTo(new BodySway(3, 20));
    assertThat(BodySway.of(both, LoadLineOwner.LEFT_FOOT, Plane.SAGITTAL))
        .isEqualTo(new BodySway(5, 15));
  }

  @Test
  void theBodyIsTakenToSwingSidewaysAsFarAsOneFootShowsForeAndAft() {
    Standing one = of(LoadLineOwner.LEFT_FOOT);
    assertThat(BodySway.of(one, LoadLineOwner.LEFT_FOOT, Plane.FRONTAL).sdMm()).isEqualTo(5);
    assertThat(BodySway.of(one, LoadLineOwner.LEFT_FOOT, Plane.SAGITTAL).sdMm())
        .isCloseTo(5 / 0.7, within(1e-12));
  }

  /**
   * Validation: JCGM 100:2008, G.4.2, a standard uncertainty known to 26 % has 7.396 degrees of
   * freedom, one known to 35 % 4.082; 1/15 + 1/7.396 = 1/4.954 and 1/15 + 1/4.082 = 1/3.208.
   */
  @Test
  void whatOneFootShowsOfTheBodysSwingIsKnownLessWell() {
    Standing one = of(LoadLineOwner.LEFT_FOOT);
    assertThat(BodySway.of(one, LoadLineOwner.LEFT_FOOT, Plane.SAGITTAL).degreesOfFreedom())
        .isCloseTo(4.954, within(0.001));
    assertThat(BodySway.of(one, LoadLineOwner.LEFT_FOOT, Plane.FRONTAL).degreesOfFreedom())
        .isCloseTo(3.208, within(0.001));
  }
}
