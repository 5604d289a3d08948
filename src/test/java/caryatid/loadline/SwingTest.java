package caryatid.loadline;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.geometry.Plane;
import caryatid.standing.LineOf;
import caryatid.standing.Standing;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The stands' sway is 3 mm sideways (effective size 20) and 5 mm fore and aft (15). */
class SwingTest {
  private static Standing of(LineOf... lines) {
    return Legs.standing(
        java.util.Arrays.stream(lines)
            .map(line -> Legs.load(line, 0, 0, 400, 1, Optional.empty()))
            .toArray(caryatid.standing.MeanLoad[]::new));
  }

  @Test
  void theWholeBodysSwingCountsWhereItIsKnown() {
    Standing both = of(LineOf.LEFT_FOOT, LineOf.RIGHT_FOOT, LineOf.WHOLE_BODY);
    assertThat(Swing.of(both, LineOf.LEFT_FOOT, Plane.FRONTAL)).isEqualTo(new Swing(3, 20));
    assertThat(Swing.of(both, LineOf.LEFT_FOOT, Plane.SAGITTAL)).isEqualTo(new Swing(5, 15));
  }

  @Test
  void oneFootIsTakenToSwingSidewaysAsFarAsForeAndAft() {
    Standing one = of(LineOf.LEFT_FOOT);
    assertThat(Swing.of(one, LineOf.LEFT_FOOT, Plane.FRONTAL)).isEqualTo(new Swing(5, 15));
    assertThat(Swing.of(one, LineOf.LEFT_FOOT, Plane.SAGITTAL)).isEqualTo(new Swing(5, 15));
  }
}
