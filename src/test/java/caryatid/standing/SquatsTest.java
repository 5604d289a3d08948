package caryatid.standing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import caryatid.geometry.Side;
import caryatid.recording.model.Recording;
import caryatid.remark.BadInput;
import caryatid.wording.Wording;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Test;

/** Squats, with one foot on the plate. Limits and squats: see {@link Squats}. */
class SquatsTest {
  private static final double RATE_HZ = 100;

  /** A sine of a standard deviation, 20 s long. */
  private static IntToDoubleFunction wave(double sd, double hz) {
    return i -> sd * Math.sqrt(2) * Math.sin(2 * Math.PI * hz * i / RATE_HZ);
  }

  private static Made foot(double forceFraction, double hz, double anteriorMm) {
    IntToDoubleFunction sway = wave(2, 0.3);
    IntToDoubleFunction force = wave(400 * forceFraction, hz);
    return Made.at(RATE_HZ, 20)
        .plate("plate 1", sway, wave(anteriorMm, 0.5), i -> 400 + force.applyAsDouble(i));
  }

  private static List<String> refusals(Recording recording) {
    BadInput bad =
        catchThrowableOfType(
            BadInput.class,
            () ->
                StandAnalysis.analyse(
                    recording,
                    Made.conditions(
                        new Stance.ProstheticFootOnPlate(Optional.of("plate 1")), Side.RIGHT)));
    return bad == null
        ? List.of()
        : bad.problems().stream()
            .map(p -> Wording.in(Locale.ENGLISH).say(p).replace('\u00a0', ' '))
            .toList();
  }

  /**
   * Force and movement of the smallest of four real traces of squats; what is quick is a
   * regression.
   */
  @Test
  void aSquatOfOneFootOnThePlateIsRefused() {
    assertThat(refusals(foot(0.130, 0.5, 32).recording()))
        .containsExactly(
            "made.csv: expected quiet standing; the right foot's line exceeds at least two of three"
                + " limits that real feet keep on a plate: the vertical force varies by 13.0 % of"
                + " its mean (at most 9.8 %), faster than 0.4 Hz by 6.5 % (at most 4.7 %), and the"
                + " centre of pressure fore and aft by 32.0 mm (at most 17.3 mm; standard"
                + " deviations). This is squatting, rocking or stepping; record a quiet stand.");
  }

  @Test
  void twoOfTheThreeLimitsMakeASquat() {
    assertThat(refusals(foot(0.099, 2, 17.2).recording())).hasSize(1);
    assertThat(refusals(foot(0.097, 2, 17.2).recording())).isEmpty();
    assertThat(refusals(foot(0.097, 2, 17.4).recording())).hasSize(1);
    assertThat(refusals(foot(0.099, 0.1, 17.2).recording())).isEmpty();
    assertThat(refusals(foot(0.046, 2, 17.4).recording())).isEmpty();
  }

  /** What moves between the feet is no squat, however much it is. */
  @Test
  void theOtherPlatesTellWhetherTheWholeBodyIsQuiet() {
    assertThat(refusals(withOther(-1))).isEmpty();
    assertThat(refusals(withOther(1)))
        .containsExactly(
            "made.csv: expected quiet standing, with a vertical force (whole body's line) that"
                + " varies by at most 3.0 % of its mean (standard deviation), found 12.0 %; in"
                + " plain standing it is about 0.3 % or less. This is walking, squatting, sitting"
                + " down, jumping or stepping on and off; record a quiet stand.");
  }

  private static Recording withOther(int sense) {
    IntToDoubleFunction force = wave(400 * 0.12, 0.5);
    return foot(0.12, 0.5, 20)
        .plate("plate 2", wave(2, 0.3), wave(3, 0.3), i -> 400 + sense * force.applyAsDouble(i))
        .recording();
  }

  /** A plate that is empty, or bears a tenth at most, tells nothing of the other foot. */
  @Test
  void aPlateThatBearsHardlyAnythingTellsNothing() {
    IntToDoubleFunction sway = wave(2, 0.3);
    Recording recording = foot(0.13, 0.5, 32).plate("plate 2", sway, sway, i -> 40).recording();
    assertThat(refusals(recording)).hasSize(1);
  }

  @Test
  void aWholeBodyOfSixKilogramsIsRefused() {
    assertThat(body(6))
        .containsExactly(
            "made.csv: expected the weight of a wearer on the plates, at least 10.0 kg, found 6.0"
                + " kg. Check the unit of force (units: force), and that nothing stood on the"
                + " plates when they were set to zero.");
    assertThat(body(9.99)).hasSize(1);
    assertThat(body(10.01)).isEmpty();
  }

  private static List<String> body(double kg) {
    Recording recording =
        Made.at(RATE_HZ, 20).plate("p", wave(3, 0.3), wave(4, 0.3), i -> 9.80665 * kg).recording();
    BadInput bad =
        catchThrowableOfType(
            BadInput.class,
            () ->
                StandAnalysis.analyse(
                    recording,
                    Made.conditions(new Stance.BothFeetOnOnePlate(Optional.empty()), Side.RIGHT)));
    return bad == null
        ? List.of()
        : bad.problems().stream()
            .map(p -> Wording.in(Locale.ENGLISH).say(p).replace('\u00a0', ' '))
            .toList();
  }

  @Test
  void aPlainFootIsNoSquat() {
    assertThatCode(() -> StandAnalysis.analyse(foot(0.01, 0.5, 5).recording(), Made.rightFoot()))
        .doesNotThrowAnyException();
  }
}
