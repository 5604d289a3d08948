package caryatid.alignment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import caryatid.geometry.Plane;
import caryatid.geometry.Side;
import caryatid.loadline.AssumedUncertainties;
import caryatid.loadline.DecisionRule;
import caryatid.loadline.Landmark;
import caryatid.loadline.LandmarkKind;
import caryatid.loadline.Legs;
import caryatid.loadline.Target;
import caryatid.remark.BadInput;
import caryatid.standing.LoadLineOwner;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ForesightTest {
  private static final Landmark KNEE = Legs.mark(LandmarkKind.KNEE_CENTRE, Side.RIGHT, 80, 0, 490);
  private static final Target TARGET =
      Legs.target(Plane.SAGITTAL, LandmarkKind.KNEE_CENTRE, 15, 10, 14);
  private static final AssumedUncertainties SCATTER_ONLY =
      new AssumedUncertainties(0, 0, 0, 0, 1e12, 5, 3.5, 4);

  private static AlignmentState state(DecisionRule rule, double... anteriorMm) throws BadInput {
    List<Stand> stands = new ArrayList<>();
    for (double mm : anteriorMm) {
      Stand stand =
          Stands.of(
              Legs.standing(Legs.load(LoadLineOwner.RIGHT_FOOT, 85, mm, 400, 1, Optional.empty())),
              KNEE,
              Legs.rightFoot(SCATTER_ONLY),
              TARGET);
      stands.add(Stands.ruled(stand, rule));
    }
    return StateAnalysis.of(stands, SCATTER_ONLY);
  }

  /**
   * Half-width of the tolerance 12 mm, scatter 5 mm with 4 degrees. One stand: t(4) 0.975 is 2.776,
   * so 13.9 mm, never. Three stands: 2.887 mm; the tail beyond the nearer edge may be 5 % less the
   * other one's, 0.2 % at most: t(4) 0.95 is 2.132 and 0.952 2.166, so 12 - 6.2 = 5.8 mm.
   */
  @Test
  void itSaysFromHowManyStandsAndHowNearTheMiddleMetCanBeSaid() throws BadInput {
    Foresight ahead = Foresight.of(state(DecisionRule.USUAL, 15)).get(0);
    assertThat(ahead.target()).isEqualTo(TARGET);
    assertThat(ahead.decidesWithinMm(1)).isEmpty();
    assertThat(ahead.decidesWithinMm(3).orElseThrow()).isCloseTo(5.8, within(0.1));
    assertThat(ahead.decidesWithinMm(5).orElseThrow())
        .isGreaterThan(ahead.decidesWithinMm(3).orElseThrow());
  }

  /** Two stands at the same offset: (4 x 25 + 0) / 5, a scatter of 4.47 mm of one. */
  @Test
  void whatTheStandsShowedSoFarCounts() throws BadInput {
    Foresight ahead = Foresight.of(state(DecisionRule.USUAL, 15, 15)).get(0);
    assertThat(ahead.scatter().standardUncertainty()).isCloseTo(Math.sqrt(20), within(1e-9));
    assertThat(ahead.decidesWithinMm(1)).isPresent();
  }

  @Test
  void theSimpleRuleDecidesWhatever() throws BadInput {
    assertThat(Foresight.of(state(DecisionRule.SIMPLE, 15))).isEmpty();
  }
}
