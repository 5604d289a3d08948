package caryatid.alignment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import caryatid.geometry.Side;
import caryatid.loadline.AssumedUncertainties;
import caryatid.loadline.Coordinate;
import caryatid.loadline.Landmark;
import caryatid.loadline.LandmarkKind;
import caryatid.loadline.Legs;
import caryatid.remark.BadInput;
import caryatid.standing.LoadLineOwner;
import caryatid.standing.Standing;
import caryatid.uncertainty.Cause;
import caryatid.uncertainty.Contribution;
import caryatid.uncertainty.Quantiles;
import caryatid.uncertainty.Source;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

class OffsetChangeTest {
  private static final double KNOWN = Double.POSITIVE_INFINITY;
  private static final Landmark KNEE =
      new Landmark(
          LandmarkKind.KNEE_CENTRE.name(),
          LandmarkKind.KNEE_CENTRE,
          Side.RIGHT,
          Optional.empty(),
          Optional.of(
              new Coordinate(
                  0,
                  List.of(
                      new Contribution(new Source(Cause.MARKING, "knee"), 3, 1, KNOWN),
                      new Contribution(new Source(Cause.REGISTRATION, "rear"), 1, 1, KNOWN)))),
          490,
          Optional.empty());

  /** The body does not swing, and what is usual between stands is 5 mm with 4 degrees. */
  private static final AssumedUncertainties STIFF =
      new AssumedUncertainties(0.002, 0.05, 30, 100, 1e12, 5, 4, 4);

  private static AlignmentState state(
      AssumedUncertainties doubts, List<EarlierState> before, double... anteriorMm)
      throws BadInput {
    List<Stand> stands = new ArrayList<>();
    for (double mm : anteriorMm) {
      Standing standing =
          Legs.standing(Legs.load(LoadLineOwner.RIGHT_FOOT, 85, mm, 400, 1, Optional.empty()));
      stands.add(Stands.of(standing, KNEE, Legs.rightFoot(doubts)));
    }
    return StateAnalysis.of(stands, doubts, before);
  }

  private static OffsetChange change(AlignmentState before, AlignmentState after) {
    List<OffsetChange> changes = OffsetChange.between(before, after);
    assertThat(changes).hasSize(1);
    return changes.get(0);
  }

  /**
   * One stand, then two. By hand: the second knows the scatter better, (4 x 25 + 8) / 5 with five
   * degrees; over one and two stands its root times the root of 3 / 2. Marked anew: twice 3 mm, and
   * twice 0.05 rad times the 30 mm of the lever.
   */
  @Test
  void whatIsWrongInBothStatesCancels() throws BadInput {
    OffsetChange change = change(state(STIFF, List.of(), 20), state(STIFF, List.of(), 28, 32));
    assertThat(change.beforeMm()).isEqualTo(20);
    assertThat(change.afterMm()).isCloseTo(30, within(1e-12));
    double scatter = Math.sqrt(108.0 / 5 * 1.5);
    assertThat(change.stayed().value()).isCloseTo(10, within(1e-12));
    assertThat(change.stayed().standardUncertainty()).isCloseTo(scatter, within(1e-6));
    assertThat(change.stayed().expanded(0.95))
        .isCloseTo(Quantiles.t(0.975, 5) * scatter, within(1e-6));
    assertThat(change.anew().standardUncertainty())
        .isCloseTo(Math.sqrt(108.0 / 5 * 1.5 + 2 * 9 + 2 * 1.5 * 1.5), within(1e-6));
  }

  /**
   * One stand, two of the changed state, one back. By hand: the changed state knows the scatter
   * best, (4 x 25 + 8) / 5 with five degrees, times 1/2 + (1 + 1) / 4, which is 1. Marked anew: 3
   * mm and 0.05 rad times 30 mm of the changed state, and half of each of the outer ones, so 1 +
   * 1/4 + 1/4 times their squares. The changed state lies 8 mm before the mean of 20 and 24 mm.
   */
  @Test
  void aChangedStateIsJudgedAgainstBothSidesOfIt() throws BadInput {
    AlignmentState changed = state(STIFF, List.of(), 28, 32);
    OffsetChange both = back(state(STIFF, List.of(), 20), changed, state(STIFF, List.of(), 24));
    assertThat(both.beforeMm()).isCloseTo(22, within(1e-12));
    assertThat(both.afterMm()).isCloseTo(30, within(1e-12));
    assertThat(both.stayed().value()).isCloseTo(8, within(1e-12));
    assertThat(both.stayed().standardUncertainty()).isCloseTo(Math.sqrt(21.6), within(1e-6));
    assertThat(both.stayed().expanded(0.95))
        .isCloseTo(Quantiles.t(0.975, 5) * Math.sqrt(21.6), within(1e-6));
    assertThat(both.anew().standardUncertainty())
        .isCloseTo(Math.sqrt(21.6 + 1.5 * (9 + 1.5 * 1.5)), within(1e-6));
  }

  /** 10 mm of change, and from state to state 4 mm of drift: 14 mm one way, 10 mm both ways. */
  @Test
  void anEvenDriftCancelsOnGoingBack() throws BadInput {
    AlignmentState first = state(STIFF, List.of(), 20);
    AlignmentState changed = state(STIFF, List.of(), 34);
    assertThat(change(first, changed).stayed().value()).isCloseTo(14, within(1e-12));
    assertThat(back(first, changed, state(STIFF, List.of(), 28)).stayed().value())
        .isCloseTo(10, within(1e-12));
  }

  private static OffsetChange back(
      AlignmentState first, AlignmentState changed, AlignmentState again) {
    List<OffsetChange> changes = OffsetChange.againstBoth(first, changed, again);
    assertThat(changes).hasSize(1);
    return changes.get(0);
  }

  /** t(5) 0.975 is 2.5706, so 14.63 mm; both sides. */
  @Test
  void aChangeIsRealBeyondItsInterval() throws BadInput {
    AlignmentState before = state(STIFF, List.of(), 20);
    assertThat(OffsetChange.isReal(change(before, state(STIFF, List.of(), 32.6, 36.6)).stayed()))
        .isFalse();
    OffsetChange more = change(before, state(STIFF, List.of(), 32.7, 36.7));
    assertThat(OffsetChange.isReal(more.stayed())).isTrue();
    assertThat(OffsetChange.isReal(more.anew())).isFalse();
    assertThat(OffsetChange.isReal(change(before, state(STIFF, List.of(), 5.3, 1.3)).stayed()))
        .isTrue();
  }

  /** 2.5706 times root (21.6 x 2 / n): 16.90, 11.95, 9.76 mm and so on; 5.63 mm of nine. */
  @Test
  void itSaysHowManyStandsWouldShowAChange() throws BadInput {
    OffsetChange change = change(state(STIFF, List.of(), 20), state(STIFF, List.of(), 28, 32));
    assertThat(change.standsToShow(17)).hasValue(1);
    assertThat(change.standsToShow(16.8)).hasValue(2);
    assertThat(change.standsToShow(11.9)).hasValue(3);
    assertThat(change.standsToShow(5.7)).hasValue(9);
    assertThat(change.standsToShow(5.6)).isEmpty();
  }

  @Test
  void linesAndLandmarksOfOneStateAloneDidNotChange() throws BadInput {
    AlignmentState with = state(STIFF, List.of(), 20);
    AlignmentState without =
        new AlignmentState(with.stands(), List.of(), List.of(), List.of(), List.of());
    assertThat(OffsetChange.between(without, with)).isEmpty();
    assertThat(OffsetChange.between(with, without)).isEmpty();
  }

  /**
   * Validation: 2,000 wearers as usual ones differ, two states of three stands without a change
   * between them, the second knowing the first's spread. The standard error of a figure is 0.5 %.
   */
  @Test
  void falselyDifferentIsSaidInFourToSixOfAHundred() throws BadInput {
    AssumedUncertainties usual = new AssumedUncertainties(0, 0, 0, 0, 1e12, 5.5, 4, 5);
    Random random = new Random(5);
    int real = 0;
    int wearers = 2000;
    for (int i = 0; i < wearers; i++) {
      double chiSquare = 0;
      for (int k = 0; k < 5; k++) {
        chiSquare += Math.pow(random.nextGaussian(), 2);
      }
      double sdMm = 5.5 * Math.sqrt(5 / chiSquare);
      AlignmentState before = state(usual, List.of(), three(random, sdMm));
      EarlierState told = EarlierState.of(before, "0");
      AlignmentState after = state(usual, List.of(told), three(random, sdMm));
      real += OffsetChange.isReal(change(before, after).stayed()) ? 1 : 0;
    }
    assertThat(100.0 * real / wearers).isBetween(4.0, 6.0);
  }

  private static double[] three(Random random, double sdMm) {
    return new double[] {
      50 + sdMm * random.nextGaussian(),
      50 + sdMm * random.nextGaussian(),
      50 + sdMm * random.nextGaussian()
    };
  }
}
