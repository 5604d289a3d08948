package caryatid.standing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import caryatid.geometry.Side;
import caryatid.recording.model.Recording;
import caryatid.remark.BadInput;
import caryatid.standing.UnusedPart.Reason;
import caryatid.wording.Wording;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Test;

class QuietStretchTest {
  private static final int N = 4000;

  private static IntToDoubleFunction sway(long seed) {
    return sway(seed, N);
  }

  private static IntToDoubleFunction sway(long seed, int samples) {
    double[] noise = Made.autoregressive(new Random(seed), samples, 0.99);
    return i -> 3 * noise[i];
  }

  private static QuietStretch found(IntToDoubleFunction shift, IntToDoubleFunction up)
      throws BadInput {
    IntToDoubleFunction right = sway(1);
    Recording recording =
        Made.at(100, 40)
            .plate("p", i -> right.applyAsDouble(i) + shift.applyAsDouble(i), sway(2), up)
            .recording();
    return StandAnalysis.analyse(recording, Made.rightFoot()).stretch();
  }

  @Test
  void aQuietRecordingIsUsedWhole() throws BadInput {
    QuietStretch stretch = found(i -> 0, i -> 400);
    assertThat(stretch.size()).isEqualTo(N);
    assertThat(stretch.leftOut()).isEmpty();
    assertThat(stretch.byHand()).isFalse();
  }

  /** Loaded from 5 s to 35 s: two seconds of settling after, one before stepping off. */
  @Test
  void steppingOnAndOffIsLeftOutWithTheSettling() throws BadInput {
    QuietStretch stretch = found(i -> 0, i -> i >= 500 && i < 3500 ? 400 : 0);
    assertThat(stretch.fromS()).isCloseTo(7, within(1e-9));
    assertThat(stretch.toS()).isCloseTo(33.99, within(1e-9));
    assertThat(stretch.leftOut())
        .extracting(UnusedPart::reason)
        .containsExactly(Reason.UNLOADED, Reason.SETTLING, Reason.SETTLING, Reason.UNLOADED);
  }

  /** A step of 60 mm at 15 s: the longer part after it is used, not the one before. */
  @Test
  void theLongerSideOfAStepIsUsed() throws BadInput {
    QuietStretch stretch = found(i -> i < 1500 ? 0 : 60, i -> 400);
    assertThat(stretch.fromS()).isBetween(15.0, 17.0);
    assertThat(stretch.toS()).isCloseTo(39.99, within(1e-9));
    assertThat(stretch.leftOut())
        .extracting(UnusedPart::reason)
        .containsExactly(Reason.SHORTER_STRETCH, Reason.STEP_OR_SHIFT);
  }

  /**
   * A body that swings evenly by so much that the means of 2 s before and after a moment differ by
   * 1.273 times 35 mm, 44.6 mm, again and again: more than the 41.9 mm of a recording of 16 s, less
   * than the 50 mm of one of a minute. 1.273 is 4 / pi: a quarter of the period has 0.9003 of the
   * amplitude as its mean, and the next one lies a right angle on.
   */
  @Test
  void aLargerShiftIsRealInALongerRecording() throws BadInput {
    IntToDoubleFunction swing = i -> 35 * Math.cos(2 * Math.PI * i / 800.0);
    Recording minute = Made.at(100, 60).plate("p", sway(1, 6000), swing, i -> 400).recording();
    assertThat(StandAnalysis.analyse(minute, Made.rightFoot()).stretch().size()).isEqualTo(6000);
    assertThat(refusal(Made.at(100, 16).plate("p", sway(1), swing, i -> 400)))
        .contains("because: a step or a shift of weight.");
  }

  /** By hand: 50 (1 - 0.123 ln(60 / T)), T from 10 to 60 s. */
  @Test
  void theLargestShiftFollowsTheLengthOfTheRecording() {
    double[][] lengths = {{5, 38.98}, {10, 38.98}, {20, 43.24}, {30, 45.74}, {60, 50}, {90, 50}};
    for (double[] each : lengths) {
      assertThat(Limits.USUAL.mostShiftMm(each[0])).isCloseTo(each[1], within(0.005));
    }
  }

  /** Only the load moves to this foot from the other, at 25 s: by 40 %, and by less than 35 %. */
  @Test
  void aShiftOfWeightEndsAStretchToo() throws BadInput {
    QuietStretch stretch = found(i -> 0, i -> i < 2500 ? 400 : 600);
    assertThat(stretch.fromS()).isZero();
    assertThat(stretch.toS()).isBetween(23.0, 25.0);
    assertThat(found(i -> 0, i -> i < 2500 ? 400 : 560).size()).isEqualTo(N);
  }

  /** The longest eligible stretch is used although a steadier one is there. */
  @Test
  void theLongestIsUsedNotTheSteadiest() throws BadInput {
    IntToDoubleFunction lively = sway(5);
    QuietStretch stretch = found(i -> i < 1500 ? 0 : 60 + lively.applyAsDouble(i), i -> 400);
    assertThat(stretch.fromS()).isGreaterThan(15);
  }

  /** A steady drift of 1.6 mm/s: quarters of a stretch of T seconds lie 1.2 T mm apart. */
  @Test
  void driftBeyondRealStandingShortensTheStretch() throws BadInput {
    QuietStretch stretch = found(i -> i * 0.016, i -> 400);
    assertThat(stretch.durationS()).isBetween(17.0, 25.0);
    assertThat(stretch.leftOut()).extracting(UnusedPart::reason).containsOnly(Reason.DRIFT);
    assertThat(found(i -> i * 0.007, i -> 400).size()).isEqualTo(N);
  }

  @Test
  void aRecordingThatIsShortItselfIsCalledThat() {
    assertThat(refusal(Made.at(100, 4.9).plate("p", i -> 0, i -> 0, i -> 400)))
        .isEqualTo(
            "made.csv: expected at least 5.00 s of quiet standing, but the recording lasts only"
                + " 4.89 s. Record longer.");
  }

  /** Two parts of three seconds: what lies between them is the reason, not that one is shorter. */
  @Test
  void whatKeepsPartsFromBeingUsedIsSaid() {
    assertThat(refusal(Made.at(100, 8).plate("p", i -> 0, i -> 0, i -> i / 50 == 8 ? 0 : 400)))
        .contains("most of the rest was left out because: samples missing or unloaded.");
  }

  private static String refusal(Made made) {
    try {
      StandAnalysis.analyse(
          made.recording(),
          Made.conditions(new Stance.ProstheticFootOnPlate(Optional.empty()), Side.LEFT));
      return "";
    } catch (BadInput e) {
      return Wording.in(Locale.ENGLISH).say(e.problems().get(0)).replace('\u00a0', ' ');
    }
  }

  @Test
  void aGapEndsAStretchAndIsSaid() throws BadInput {
    QuietStretch stretch = found(i -> 0, i -> i == 1020 ? 0 : 400);
    assertThat(stretch.fromS()).isCloseTo(10.5, within(1e-9));
    assertThat(stretch.leftOut())
        .extracting(UnusedPart::reason)
        .containsExactly(Reason.SHORTER_STRETCH, Reason.GAP);
  }

  @Test
  void theSameRecordingGivesTheSameStretch() throws BadInput {
    IntToDoubleFunction step = i -> i < 2000 ? 0 : 60;
    assertThat(found(step, i -> 400)).isEqualTo(found(step, i -> 400));
  }

  @Test
  void aStretchSetByHandIsTakenAsItIs() throws BadInput {
    Recording recording = Made.at(100, 40).plate("p", sway(1), sway(2), i -> 400).recording();
    StandAnalysis.Conditions byHand =
        new StandAnalysis.Conditions(
            new Stance.ProstheticFootOnPlate(Optional.empty()),
            List.of(caryatid.geometry.Side.LEFT),
            OptionalDouble.empty(),
            caryatid.recording.model.PlateAccuracy.ASSUMED,
            Optional.of(new Stretch(3, 12)));
    QuietStretch stretch = StandAnalysis.analyse(recording, byHand).stretch();
    assertThat(stretch.fromIndex()).isEqualTo(300);
    assertThat(stretch.toIndex()).isEqualTo(1201);
    assertThat(stretch.byHand()).isTrue();
    assertThat(stretch.leftOut())
        .containsExactly(
            new UnusedPart(0, 2.99, Reason.BY_HAND), new UnusedPart(12.01, 39.99, Reason.BY_HAND));
  }

  /** Times from a rate that is not quite 100 Hz: sample 300 stands at 2.9999 or at 3.0001 s. */
  @Test
  void aStretchSetByHandBeginsAtTheNearestSample() throws BadInput {
    for (double rateHz : new double[] {99.997, 100.003}) {
      Recording recording = Made.at(rateHz, 40).plate("p", sway(1), sway(2), i -> 400).recording();
      StandAnalysis.Conditions byHand =
          new StandAnalysis.Conditions(
              new Stance.ProstheticFootOnPlate(Optional.empty()),
              List.of(caryatid.geometry.Side.LEFT),
              OptionalDouble.empty(),
              caryatid.recording.model.PlateAccuracy.ASSUMED,
              Optional.of(new Stretch(3, 12)));
      QuietStretch stretch = StandAnalysis.analyse(recording, byHand).stretch();
      assertThat(stretch.fromIndex()).as("at %s Hz", rateHz).isEqualTo(300);
      assertThat(stretch.toIndex()).as("at %s Hz", rateHz).isEqualTo(1201);
    }
  }
}
