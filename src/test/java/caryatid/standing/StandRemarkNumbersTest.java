package caryatid.standing;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.demo.Sways;
import caryatid.geometry.Side;
import caryatid.recording.model.PlateAccuracy;
import caryatid.recording.model.Recording;
import caryatid.uncertainty.Estimate;
import caryatid.wording.Wording;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The numbers that remarks about a stand say, from a stand that is put together by hand so that
 * every remark is due and no two numbers are alike.
 */
class StandRemarkNumbersTest {
  private static final Stance PLATES = new Stance.PlatePerFoot("left", "right");

  /** Twelve seconds at 40 Hz, set by hand; 812 N on both plates, which lean by 2 and 3 degrees. */
  private static Standing standing() {
    ForceInclination lean =
        new ForceInclination(
            Estimate.exact(Math.tan(Math.toRadians(2))),
            Estimate.exact(-Math.tan(Math.toRadians(3.3))));
    return new Standing(
        new QuietStretch(530, 1008, 0.75, 12.7, true, List.of()),
        40,
        List.of(
            new MeanLoad(
                LoadLineOwner.WHOLE_BODY,
                Optional.of(Estimate.exact(1)),
                Estimate.exact(2),
                Optional.of(Estimate.exact(812)),
                Optional.of(lean))),
        List.of(
            sway(LoadLineOwner.LEFT_FOOT, OptionalDouble.empty(), 18.3, 21.4, 9.4, 13.6),
            sway(LoadLineOwner.LEFT_FOOT, OptionalDouble.of(10), 18.1, 21.2, 9.6, 13.8),
            sway(LoadLineOwner.RIGHT_FOOT, OptionalDouble.empty(), 0.04, 0.06, 8.2, 5.6),
            sway(LoadLineOwner.RIGHT_FOOT, OptionalDouble.of(10), 0.03, 0.05, 8.4, 5.8)),
        List.of(),
        Map.of(Side.LEFT, Estimate.exact(0.0834), Side.RIGHT, Estimate.exact(0.9166)),
        List.of());
  }

  private static Sway sway(
      LoadLineOwner of,
      OptionalDouble lowPassHz,
      double sdRight,
      double sdAnterior,
      double effectiveRight,
      double effectiveAnterior) {
    return Sways.of(
        of,
        lowPassHz,
        sdRight,
        sdAnterior,
        31,
        32,
        33,
        34,
        35,
        36,
        37,
        effectiveRight,
        effectiveAnterior);
  }

  /** Half the samples 400 N more or less by a part: that part is the standard deviation. */
  private static List<LoadSignals> quiet() {
    int n = 100_000;
    Recording recording =
        Made.at(40, n / 40.0)
            .plate("left", i -> 1, i -> 2, i -> 400 * (1 + (i % 2 == 0 ? 0.237 : -0.237)))
            .plate("right", i -> 1, i -> 2, i -> 400 * (1 + (i % 2 == 0 ? 0.213 : -0.213)))
            .recording();
    LoadSignals left = LoadSignals.of(LoadLineOwner.LEFT_FOOT, recording.plates().get(0));
    LoadSignals right = LoadSignals.of(LoadLineOwner.RIGHT_FOOT, recording.plates().get(1));
    return List.of(left, right, LoadSignals.both(left, right));
  }

  private static List<String> said() {
    StandAnalysis.Conditions conditions =
        new StandAnalysis.Conditions(
            PLATES,
            List.of(Side.LEFT),
            OptionalDouble.of(71.5),
            PlateAccuracy.ASSUMED,
            Optional.empty());
    Wording english = Wording.in(Locale.ENGLISH);
    return StandRemarks.of(standing(), quiet(), conditions, Limits.USUAL).stream()
        .map(remark -> english.say(remark).replace('\u00a0', ' '))
        .toList();
  }

  /**
   * 812 N over 9.80665 m/s2 are 82.8 kg; both plates together vary by the mean of 23.7 and 21.3 %.
   */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "The left prosthesis bears only 8.3 % of the load: ",
        "The right foot bears 91.7 % of the body's weight: ",
        "The plates measure 82.8 kg, but the sheet says 71.5 kg: ",
        "Much sway (left foot's line, standard deviation 21.4 mm): ",
        "Hardly any sway (right foot's line, standard deviation 0.1 mm): ",
        "The vertical force (left foot's line) varies by 23.7 % of its mean (standard deviation);"
            + " in plain standing it is less than 9.8 %. ",
        "The vertical force (right foot's line) varies by 21.3 % of its mean (standard deviation);"
            + " in plain standing it is less than 9.8 %. ",
        "The vertical force (whole body's line) varies by 22.5 % of its mean (standard deviation);"
            + " in plain standing it is less than 1.0 %. ",
        "Because sway is slow, the 11.95 s used are worth only about 6 independent measurements; ",
        "Only 11.95 s were used; sway measures need at least 25.00 s, ",
        "Recorded at 40.0 Hz; sway measures need at least 50.0 Hz. ",
        "The part used was set by hand, from 0.75 s to 12.70 s.",
        "The mean horizontal force leans 3.3° from the vertical "
      })
  void everyRemarkSaysItsOwnNumbers(String words) {
    assertThat(said()).anyMatch(sentence -> sentence.startsWith(words));
  }

  @Test
  void nothingElseIsRemarked() {
    assertThat(said()).hasSize(17);
  }
}
