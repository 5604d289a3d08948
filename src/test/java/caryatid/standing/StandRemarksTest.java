package caryatid.standing;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.geometry.Side;
import caryatid.recording.model.PlateAccuracy;
import caryatid.recording.model.Recording;
import caryatid.remark.BadInput;
import caryatid.remark.Remark;
import caryatid.remark.Topic;
import caryatid.wording.Wording;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Test;

/** Both sides of every limit from which a stand is remarked. */
class StandRemarksTest {
  private static final Stance PLATES = new Stance.PlatePerFoot("left", "right");
  private static final double GRAVITY = 9.80665;

  /** What is remarked beside what every stand says. */
  private static List<Topic> topics(Standing standing) {
    return standing.remarks().stream()
        .map(Remark::topic)
        .filter(topic -> topic != StandRemark.SLOWER_UNSEEN)
        .toList();
  }

  private static Made feet(double rateHz, double seconds, double leftN, double rightN, double mm) {
    int n = (int) (rateHz * seconds);
    double memory = Math.exp(-1 / rateHz);
    double[] x = Made.autoregressive(new Random(31), n, memory);
    double[] y = Made.autoregressive(new Random(32), n, memory);
    return Made.at(rateHz, seconds)
        .plate("left", i -> -90 + mm * x[i], i -> mm * y[i], i -> leftN)
        .plate("right", i -> 90 + mm * x[i], i -> mm * y[i], i -> rightN);
  }

  private static List<Topic> remarks(Recording recording, double bodyMassKg) throws BadInput {
    StandAnalysis.Conditions conditions =
        new StandAnalysis.Conditions(
            PLATES,
            List.of(Side.LEFT),
            OptionalDouble.of(bodyMassKg),
            PlateAccuracy.ASSUMED,
            Optional.empty());
    return topics(StandAnalysis.analyse(recording, conditions));
  }

  @Test
  void aPlainStandHasNoRemark() throws BadInput {
    assertThat(remarks(feet(100, 60, 400, 400, 3).recording(), 800 / GRAVITY)).isEmpty();
  }

  @Test
  void aHardlyLoadedProsthesisIsRemarked() throws BadInput {
    assertThat(remarks(feet(100, 60, 239, 561, 3).recording(), 800 / GRAVITY))
        .containsExactly(StandRemark.PROSTHESIS_LITTLE_LOADED);
    assertThat(remarks(feet(100, 60, 241, 559, 3).recording(), 800 / GRAVITY)).isEmpty();
  }

  @Test
  void aBodyMassThatThePlatesDoNotWeighIsRemarked() throws BadInput {
    Recording recording = feet(100, 60, 400, 400, 3).recording();
    assertThat(remarks(recording, 800 / GRAVITY / 1.051))
        .containsExactly(StandRemark.BODY_MASS_DIFFERS);
    assertThat(remarks(recording, 800 / GRAVITY / 1.049)).isEmpty();
  }

  @Test
  void aShortStretchIsRemarked() throws BadInput {
    assertThat(remarks(feet(100, 24.99, 400, 400, 3).recording(), 800 / GRAVITY))
        .contains(StandRemark.SHORT_STRETCH);
    assertThat(remarks(feet(100, 25, 400, 400, 3).recording(), 800 / GRAVITY))
        .doesNotContain(StandRemark.SHORT_STRETCH);
  }

  @Test
  void aLowRateIsRemarked() throws BadInput {
    assertThat(remarks(feet(49, 60, 400, 400, 3).recording(), 800 / GRAVITY))
        .contains(StandRemark.LOW_RATE);
    assertThat(remarks(feet(50, 60, 400, 400, 3).recording(), 800 / GRAVITY))
        .doesNotContain(StandRemark.LOW_RATE);
  }

  @Test
  void tooMuchAndTooLittleSwayAreRemarked() throws BadInput {
    assertThat(remarks(trembling(0.0999), 800 / GRAVITY)).contains(StandRemark.HARDLY_ANY_SWAY);
    assertThat(remarks(trembling(0.1001), 800 / GRAVITY))
        .doesNotContain(StandRemark.HARDLY_ANY_SWAY);
    assertThat(remarks(feet(100, 60, 400, 400, 20).recording(), 800 / GRAVITY))
        .contains(StandRemark.MUCH_SWAY);
    assertThat(remarks(feet(100, 60, 400, 400, 14).recording(), 800 / GRAVITY))
        .doesNotContain(StandRemark.MUCH_SWAY);
  }

  /** Ten seconds in which hardly any sway is not yet that of a dead channel. */
  private static Recording trembling(double sdMm) {
    IntToDoubleFunction sway = i -> (i % 2 == 0 ? sdMm : -sdMm) * Math.sqrt(999 / 1000.0);
    return Made.at(100, 10)
        .plate("left", i -> -90 + sway.applyAsDouble(i), sway, i -> 400)
        .plate("right", i -> 90 + sway.applyAsDouble(i), sway, i -> 400)
        .recording();
  }

  /** A sine's standard deviation is its amplitude over root 2: 1.4 and 1.43 % of the weight. */
  @Test
  void aForceThatVariesMoreThanInPlainStandingIsRemarked() throws BadInput {
    assertThat(remarks(bobbing(0.0140), 800 / GRAVITY)).isEmpty();
    assertThat(remarks(bobbing(0.0143), 800 / GRAVITY)).containsExactly(StandRemark.FORCE_VARIES);
  }

  /** Slow enough for no window of 4 s to show it; 9.69 and 9.90 % of a foot's force. */
  @Test
  void slowWeightShiftsBetweenTheFeetAreRemarked() throws BadInput {
    assertThat(remarks(shifting(0.137), 800 / GRAVITY)).doesNotContain(StandRemark.FORCE_VARIES);
    assertThat(remarks(shifting(0.140), 800 / GRAVITY)).contains(StandRemark.FORCE_VARIES);
  }

  private static Recording shifting(double amplitude) {
    double[] x = Made.autoregressive(new Random(35), 6000, 0.99);
    IntToDoubleFunction moved = i -> 400 * amplitude * Math.sin(2 * Math.PI * i / 3000.0);
    return Made.at(100, 60)
        .plate("left", i -> -90 + x[i], i -> 3 * x[i], i -> 400 + moved.applyAsDouble(i))
        .plate("right", i -> 90 + x[i], i -> 3 * x[i], i -> 400 - moved.applyAsDouble(i))
        .recording();
  }

  private static Recording bobbing(double amplitude) {
    double[] x = Made.autoregressive(new Random(35), 6000, 0.99);
    IntToDoubleFunction up = i -> 400 * (1 + amplitude * Math.sin(2 * Math.PI * i / 100.0));
    return Made.at(100, 60)
        .plate("left", i -> -90 + x[i], i -> 3 * x[i], up)
        .plate("right", i -> 90 + x[i], i -> 3 * x[i], up)
        .recording();
  }

  /** 0.3 deg of 800 N are 4.19 N; each plate is pushed by half. */
  @Test
  void aHorizontalForceThatDoesNotCancelIsRemarked() throws BadInput {
    double limit = 800 * Math.toRadians(0.3);
    assertThat(remarks(pushed(limit + 0.01), 800 / GRAVITY))
        .containsExactly(StandRemark.SHEAR_OFFSET);
    assertThat(remarks(pushed(limit - 0.01), 800 / GRAVITY)).isEmpty();
  }

  /** Each foot may lean by itself; only both together must not. */
  private static Recording pushed(double togetherN) {
    int n = 6000;
    double[] x = Made.autoregressive(new Random(33), n, 0.99);
    return Made.at(100, 60)
        .plate("left", i -> -90 + x[i], i -> 3 * x[i], i -> 400)
        .pushed(0, 30 + togetherN)
        .plate("right", i -> 90 + x[i], i -> 3 * x[i], i -> 400)
        .pushed(0, -30)
        .recording();
  }

  @Test
  void anUnknownLoadShareIsRemarked() throws BadInput {
    double[] x = Made.autoregressive(new Random(34), 6000, 0.99);
    Recording recording =
        Made.at(100, 60).plate("p", i -> x[i], i -> 3 * x[i], i -> 400).recording();
    assertThat(topics(StandAnalysis.analyse(recording, Made.rightFoot())))
        .containsExactly(StandRemark.SHARE_UNKNOWN);
  }

  @Test
  void aLoadShareIsUnknownWithoutForceWhateverTheSheetSays() throws BadInput {
    double[] x = Made.autoregressive(new Random(34), 6000, 0.99);
    Recording recording = Made.at(100, 60).copAlone("p", x, x).recording();
    assertThat(topics(StandAnalysis.analyse(recording, Made.rightFoot())))
        .contains(StandRemark.SHARE_WITHOUT_FORCE)
        .doesNotContain(StandRemark.SHARE_UNKNOWN);
  }

  /** A slow wave all through the stand counts as a handful of independent samples. */
  @Test
  void aStandSaysHowManyMeasurementsItIsWorth() throws BadInput {
    Recording slow =
        Made.at(100, 60)
            .copAlone("p", wave(6000, 1 / 25.0, 3), wave(6000, 1 / 30.0, 4))
            .recording();
    Standing standing =
        StandAnalysis.analyse(
            slow, Made.conditions(new Stance.BothFeetOnOnePlate(Optional.empty()), Side.LEFT));
    Remark remark =
        standing.remarks().stream()
            .filter(r -> r.topic() == StandRemark.SLOWER_UNSEEN)
            .findFirst()
            .orElseThrow();
    assertThat(Wording.in(Locale.ENGLISH).say(remark))
        .startsWith("Because sway is slow, the 59.99\u00a0s used are worth only about ")
        .contains(" independent measurements; ");
  }

  private static double[] wave(int n, double hertz, double mm) {
    double[] values = new double[n];
    for (int i = 0; i < n; i++) {
      values[i] = mm * Math.sin(2 * Math.PI * hertz * i / 100);
    }
    return values;
  }
}
