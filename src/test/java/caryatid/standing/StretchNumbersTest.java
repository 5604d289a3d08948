package caryatid.standing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import caryatid.geometry.Side;
import caryatid.recording.model.PlateAccuracy;
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

/** Which samples are used, sample by sample: 40 s at 100 Hz, judged in blocks of half a second. */
class StretchNumbersTest {
  private static final int N = 4000;

  private static Recording recording(IntToDoubleFunction shift, IntToDoubleFunction up) {
    double[] x = Made.autoregressive(new Random(71), N, 0.99);
    double[] y = Made.autoregressive(new Random(72), N, 0.99);
    return Made.at(100, N / 100)
        .plate("p", i -> 0.3 * x[i] + shift.applyAsDouble(i), i -> 0.3 * y[i], up)
        .recording();
  }

  private static QuietStretch found(IntToDoubleFunction shift, IntToDoubleFunction up)
      throws BadInput {
    return StandAnalysis.analyse(recording(shift, up), Made.rightFoot()).stretch();
  }

  private static QuietStretch byHand(double fromS, double toS, IntToDoubleFunction up)
      throws BadInput {
    StandAnalysis.Conditions conditions =
        new StandAnalysis.Conditions(
            new Stance.ProstheticFootOnPlate(Optional.empty()),
            List.of(Side.RIGHT),
            OptionalDouble.empty(),
            PlateAccuracy.ASSUMED,
            Optional.of(new Stretch(fromS, toS)));
    return StandAnalysis.analyse(recording(i -> 0, up), conditions).stretch();
  }

  private static void refused(
      org.assertj.core.api.ThrowableAssert.ThrowingCallable what, String sentence) {
    assertThatThrownBy(what)
        .isInstanceOfSatisfying(
            BadInput.class,
            bad ->
                assertThat(
                        Wording.in(Locale.ENGLISH)
                            .say(bad.problems().get(0))
                            .replace('\u00a0', ' '))
                    .startsWith(sentence));
  }

  /**
   * A second of 25 mm: two seconds before and after any moment differ by half of it, 12.5 mm, which
   * is no step (15 mm); half a second would differ by all of it.
   */
  @Test
  void aStepIsJudgedOverTwoSeconds() throws BadInput {
    assertThat(found(i -> i >= 2000 && i < 2100 ? 25 : 0, i -> 400).size()).isEqualTo(N);
    assertThat(found(i -> i >= 2000 && i < 2100 ? 35 : 0, i -> 400).size()).isLessThan(N);
  }

  /**
   * Two seconds before the end a step of 17 mm has its two seconds still; half a second later none.
   */
  @Test
  void aStepTwoSecondsBeforeTheEndIsFound() throws BadInput {
    assertThat(found(i -> i >= 3800 ? 17 : 0, i -> 400).toIndex()).isEqualTo(3750);
    assertThat(found(i -> i >= 3800 ? 13 : 0, i -> 400).toIndex()).isEqualTo(N);
    assertThat(found(i -> i >= 3850 ? 17 : 0, i -> 400).toIndex()).isEqualTo(N);
  }

  /**
   * 30 of 800 N from one foot to the other, 600 mm apart: 22.5 mm, more than the 15 mm of a step,
   * but a small change of either force. Before both feet are on, the whole body has no place.
   */
  @Test
  void weightThatShiftsBetweenTheFeetIsFoundAfterNobodyStood() throws BadInput {
    double[] sway = Made.autoregressive(new Random(73), N, 0.99);
    Recording recording =
        Made.at(100, N / 100)
            .plate(
                "left",
                i -> -300 + sway[i],
                i -> sway[N - 1 - i],
                i -> i < 300 ? 0 : i < 3000 ? 400 : 430)
            .plate(
                "right",
                i -> 300 + sway[i],
                i -> sway[N - 1 - i],
                i -> i < 300 ? 0 : i < 3000 ? 400 : 370)
            .recording();
    QuietStretch stretch =
        StandAnalysis.analyse(
                recording, Made.conditions(new Stance.PlatePerFoot("left", "right"), Side.RIGHT))
            .stretch();
    assertThat(stretch.fromIndex()).isEqualTo(500);
    assertThat(stretch.toIndex()).isBetween(2800, 2999);
  }

  @Test
  void aGapOfOneBlockEndsTheStretchRightBeforeIt() throws BadInput {
    QuietStretch stretch = found(i -> 0, i -> i == 3020 ? 0 : 400);
    assertThat(stretch.fromIndex()).isZero();
    assertThat(stretch.toIndex()).isEqualTo(3000);
    assertThat(stretch.leftOut())
        .containsExactly(
            new UnusedPart(30, 30.49, Reason.GAP),
            new UnusedPart(30.5, 39.99, Reason.SHORTER_STRETCH));
  }

  @Test
  void aGapAfterTheFirstBlockIsAGap() throws BadInput {
    QuietStretch stretch = found(i -> 0, i -> i == 60 ? 0 : 400);
    assertThat(stretch.fromIndex()).isEqualTo(100);
    assertThat(stretch.leftOut())
        .containsExactly(
            new UnusedPart(0, 0.49, Reason.SHORTER_STRETCH), new UnusedPart(0.5, 0.99, Reason.GAP));
  }

  /** One second before stepping off is settling, also where only the last block is unloaded. */
  @Test
  void steppingOffInTheLastBlockIsSteppingOff() throws BadInput {
    QuietStretch stretch = found(i -> 0, i -> i >= 3960 ? 0 : 400);
    assertThat(stretch.toIndex()).isEqualTo(3850);
    assertThat(stretch.leftOut())
        .containsExactly(
            new UnusedPart(38.5, 39.49, Reason.SETTLING),
            new UnusedPart(39.5, 39.99, Reason.UNLOADED));
  }

  /** Unloaded for 34 s, then settling for 2: the longer of both is the reason. */
  @Test
  void whatTookMostIsTheReasonForTooShortAStretch() {
    refused(
        () -> found(i -> 0, i -> i < 3400 ? 0 : 400),
        "made.csv: expected at least 5.00 s of quiet standing, found 3.99 s; most of the rest was"
            + " left out because: unloaded.");
  }

  @Test
  void byHandFiveSecondsAreEnoughAndLessIsRefusedByHowLongItIs() throws BadInput {
    assertThat(byHand(3, 8, i -> 400).durationS()).isEqualTo(5);
    refused(
        () -> byHand(3, 7.5, i -> 400),
        "made.csv: expected at least 5.00 s in the part set by hand, found 4.50 s. Its times count"
            + " from the first sample, and the recording lasts 40.00 s.");
    refused(
        () -> byHand(50, 60, i -> 400),
        "made.csv: expected at least 5.00 s in the part set by hand, found 0.00 s.");
  }

  @Test
  void byHandNothingIsLeftOutWhereAllIsAskedFor() throws BadInput {
    QuietStretch stretch = byHand(0, 100, i -> 400);
    assertThat(stretch.size()).isEqualTo(N);
    assertThat(stretch.leftOut()).isEmpty();
  }

  @Test
  void byHandAGapIsNamedByItsTime() {
    refused(
        () -> byHand(3, 20, i -> i == 1020 ? 0 : 400),
        "made.csv: expected usable samples all through the part set by hand, found none at 10.20"
            + " s:");
  }

  /** A mean of 400 N, half a sample more or less of which would show. */
  @Test
  void byHandTheMeanIsOverThatPartAlone() throws BadInput {
    StandAnalysis.Conditions conditions =
        new StandAnalysis.Conditions(
            new Stance.ProstheticFootOnPlate(Optional.empty()),
            List.of(Side.RIGHT),
            OptionalDouble.empty(),
            PlateAccuracy.ASSUMED,
            Optional.of(new Stretch(0, 19.99)));
    Recording recording = recording(i -> 0, i -> i < 2000 ? 400 : 480);
    assertThat(
            StandAnalysis.analyse(recording, conditions).loads().get(0).upN().orElseThrow().value())
        .isCloseTo(400, within(1e-9));
  }
}
