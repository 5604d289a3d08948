package caryatid.standing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import caryatid.geometry.Side;
import caryatid.recording.model.PlateAccuracy;
import caryatid.recording.model.Recording;
import caryatid.remark.BadInput;
import caryatid.wording.Wording;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Test;

class StandAnalysisTest {
  private static final Wording WORDS = Wording.in(Locale.ENGLISH);
  private static final Stance PLATES = new Stance.PlatePerFoot("left", "right");
  private static final Stance TOGETHER = new Stance.BothFeetOnOnePlate(Optional.empty());

  /** Too fast for its mean to be unsure, and more than a dead channel shows. */
  private static final IntToDoubleFunction TREMBLE = i -> i % 2 == 0 ? 0.2 : -0.2;

  /** A still person of 400 N on the plate, swaying by a millimetre or two. */
  private static IntToDoubleFunction sway(long seed, int n, double mean) {
    double[] noise = Made.autoregressive(new Random(seed), n, 0.99);
    return i -> mean + 1.5 * noise[i];
  }

  private static Recording foot(IntToDoubleFunction up) {
    return Made.at(100, 30).plate("plate 1", sway(1, 3000, 90), sway(2, 3000, 40), up).recording();
  }

  private static void refused(
      Recording recording, StandAnalysis.Conditions conditions, String sentence) {
    assertThatThrownBy(() -> StandAnalysis.analyse(recording, conditions))
        .isInstanceOfSatisfying(
            BadInput.class,
            bad -> assertThat(WORDS.say(bad.problems().get(0))).isEqualTo(sentence));
  }

  @Test
  void theMeanIsWeightedByForce() throws BadInput {
    Recording recording =
        Made.at(100, 10)
            .plate("p", i -> i % 2 == 0 ? 10 : 20, i -> i % 2, i -> i % 2 == 0 ? 404 : 396)
            .recording();
    MeanLoad load =
        StandAnalysis.analyse(recording, Made.rightFoot())
            .load(LoadLineOwner.RIGHT_FOOT)
            .orElseThrow();
    assertThat(load.copRightMm().orElseThrow().value())
        .isCloseTo((404 * 10 + 396 * 20) / 800.0, within(1e-12));
    assertThat(load.upN().orElseThrow().value()).isEqualTo(400);
  }

  @Test
  void twoPlatesGiveBothFeetAndTheWholeBodyOverTheSameStretch() throws BadInput {
    Recording recording =
        Made.at(100, 30)
            .plate("left", sway(3, 3000, -90), sway(4, 3000, 30), i -> 360)
            .plate("right", sway(5, 3000, 100), sway(6, 3000, 20), i -> 440)
            .recording();
    Standing standing = StandAnalysis.analyse(recording, Made.conditions(PLATES, Side.LEFT));
    double left =
        standing.load(LoadLineOwner.LEFT_FOOT).orElseThrow().copRightMm().orElseThrow().value();
    double right =
        standing.load(LoadLineOwner.RIGHT_FOOT).orElseThrow().copRightMm().orElseThrow().value();
    double whole =
        standing.load(LoadLineOwner.WHOLE_BODY).orElseThrow().copRightMm().orElseThrow().value();
    assertThat(whole).isCloseTo((360 * left + 440 * right) / 800, within(1e-10));
    assertThat(standing.share().get(Side.LEFT).value()).isCloseTo(0.45, within(1e-12));
    assertThat(standing.share().get(Side.RIGHT).value()).isCloseTo(0.55, within(1e-12));
    assertThat(standing.stretch().durationS()).isCloseTo(29.99, within(1e-9));
  }

  /**
   * A real foot of 2 mm accuracy counts by its share; force errors move the point between the feet.
   */
  @Test
  void thePlatesAccuracyReachesTheWholeBodysLineByTheLoadShares() throws BadInput {
    Recording recording =
        Made.at(100, 10)
            .plate("left", i -> -100 + TREMBLE.applyAsDouble(i), TREMBLE, i -> 300)
            .plate("right", i -> 100 + TREMBLE.applyAsDouble(i), TREMBLE, i -> 500)
            .recording();
    StandAnalysis.Conditions conditions =
        new StandAnalysis.Conditions(
            PLATES,
            List.of(Side.LEFT),
            OptionalDouble.empty(),
            new PlateAccuracy(2, 0, 0.005, 0),
            Optional.empty());
    Standing standing = StandAnalysis.analyse(recording, conditions);
    double fromPlaces = Math.hypot(2 * 0.375, 2 * 0.625);
    double fromForces = Math.sqrt(2) * 0.375 * 0.625 * 200 * 0.005;
    assertThat(
            standing
                .load(LoadLineOwner.WHOLE_BODY)
                .orElseThrow()
                .copRightMm()
                .orElseThrow()
                .standardUncertainty())
        // The tremble's own error is 0.0002 mm.
        .isCloseTo(Math.hypot(fromPlaces, fromForces), within(1e-7));
  }

  @Test
  void oneFootsShareComesFromTheBodyMass() throws BadInput {
    StandAnalysis.Conditions massKnown =
        new StandAnalysis.Conditions(
            new Stance.ProstheticFootOnPlate(Optional.of("plate 1")),
            List.of(Side.RIGHT),
            OptionalDouble.of(80),
            PlateAccuracy.ASSUMED,
            Optional.empty());
    Standing standing = StandAnalysis.analyse(foot(i -> 40 * 9.80665), massKnown);
    assertThat(standing.share().get(Side.RIGHT).value()).isCloseTo(0.5, within(1e-12));
    // 1 % of the weight and 0.5 % of the force.
    assertThat(standing.share().get(Side.RIGHT).standardUncertainty())
        .isCloseTo(0.5 * Math.hypot(0.01, 0.005), within(1e-9));
    refused(
        foot(i -> 0.0999 * 80 * 9.80665),
        massKnown,
        "made.csv: expected at least 10.00\u00a0% of the load on the right side, found 9.99\u00a0%."
            + " The line of an unloaded leg says nothing about its alignment; let the wearer load"
            + " the prosthesis, and check the body mass in the sheet.");
  }

  @Test
  void anEmptyPlateIsRefused() {
    refused(
        foot(i -> 0),
        Made.rightFoot(),
        "made.csv: expected a loaded plate, found no sample with load and a value in every column."
            + " Check that the wearer stood on this plate, and the sign and unit of the vertical"
            + " force in the plate description.");
  }

  /** Slow squats vary the whole body's force by 13 %, with the same mean. */
  @Test
  void squatsAreRefused() {
    Recording squats =
        Made.at(100, 30)
            .plate(
                "p",
                sway(7, 3000, 0),
                sway(8, 3000, 0),
                i -> 800 * (1 + 0.13 * Math.sqrt(2) * Math.sin(i / 100.0)))
            .recording();
    refused(
        squats,
        Made.conditions(TOGETHER, Side.LEFT),
        "made.csv: expected quiet standing, with a vertical force (whole body's line) that varies"
            + " by at most 3.0\u00a0% of its mean (standard deviation), found 13.0\u00a0%; in plain"
            + " standing it is about 0.3\u00a0% or less. This is walking, squatting, sitting down,"
            + " jumping or stepping on and off; record a quiet stand.");
  }

  /** Half sines: root of pi^2 / 8 - 1, which is 48.3 %. */
  @Test
  void walkingOverThePlateIsRefused() {
    refused(
        foot(i -> i % 120 < 65 ? 500 * Math.sin(Math.PI * (i % 120 + 0.5) / 65) : 0),
        Made.rightFoot(),
        "made.csv: expected quiet standing, with a vertical force (right foot's line) that varies"
            + " by at most 30.0\u00a0% of its mean (standard deviation), found 48.3\u00a0%; in"
            + " plain standing it is about 13.0\u00a0% or less. This is walking, squatting, sitting"
            + " down, jumping or stepping on and off; record a quiet stand.");
  }

  @Test
  void aStandOfLessThan5SecondsIsRefused() {
    refused(
        foot(i -> i < 590 ? 400 : 0),
        Made.rightFoot(),
        "made.csv: expected at least 5.00\u00a0s of quiet standing, found 4.49\u00a0s; most of the"
            + " rest was left out because: unloaded. Record the stand again, or set the part to use"
            + " by hand with --from and --to.");
  }

  @Test
  void aWanderingCentreOfPressureIsRefused() {
    double[] wander = Made.autoregressive(new Random(9), 3000, 0);
    double scale = 35.1 / caryatid.uncertainty.SampleStatistics.standardDeviation(wander);
    double[] wide = java.util.Arrays.stream(wander).map(v -> v * scale).toArray();
    refused(
        Made.at(100, 30).copAlone("p", new double[3000], wide).recording(),
        Made.conditions(TOGETHER, Side.LEFT),
        "made.csv: expected quiet standing, with a centre of pressure (whole body's line) whose"
            + " standard deviation is at most 35.0\u00a0mm, found 35.1\u00a0mm. Record a quiet"
            + " stand, or check the unit of the centre of pressure in the plate description.");
  }

  @Test
  void plateNamesAreAskedFor() {
    Recording two =
        Made.at(100, 10)
            .plate("a", i -> 0, i -> 0, i -> 1)
            .plate("b", i -> 0, i -> 0, i -> 1)
            .recording();
    refused(
        two,
        Made.rightFoot(),
        "made.csv: expected the stance to name its plate, because the recording has several: a, b."
            + " Add the plate's name to the stance.");
    refused(
        two,
        Made.conditions(PLATES, Side.LEFT),
        "made.csv: expected a plate named left as the stance says, found a, b. Name one of these in"
            + " the stance.");
    refused(
        two,
        Made.conditions(new Stance.ProstheticFootOnPlate(Optional.of("a")), Side.LEFT, Side.RIGHT),
        "made.csv: expected one prosthetic side for a stance of one foot on the plate, found two"
            + " prostheses. Record each foot on its own plate, or both feet on one plate.");
  }
}
