package caryatid.standing;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.geometry.Side;
import caryatid.wording.Wording;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Test;

/** How far a line wanders within the part used, in 60 s at 100 Hz. Validation by construction. */
class WanderingTest {
  private static List<String> notes(IntToDoubleFunction right, IntToDoubleFunction anterior)
      throws Exception {
    Wording english = Wording.in(Locale.ENGLISH);
    Made made = Made.at(100, 60).plate("p", right, anterior, i -> 800);
    Stance stance = new Stance.BothFeetOnOnePlate(Optional.empty());
    return StandAnalysis.analyse(made.recording(), Made.conditions(stance, Side.RIGHT))
        .remarks()
        .stream()
        .filter(r -> r.topic() == StandRemark.DRIFT_INSIDE || r.topic() == StandRemark.SHIFT_INSIDE)
        .map(remark -> english.say(remark).replace('\u00a0', ' '))
        .toList();
  }

  private static IntToDoubleFunction trembling(double sdMm) {
    double[] x = Made.autoregressive(new Random(5), 6000, 0.9);
    return i -> sdMm * x[i];
  }

  /** The means of a ramp's first and last quarter lie three quarters of it apart. */
  @Test
  void aDriftIsSaidWithItsSize() throws Exception {
    IntToDoubleFunction sway = i -> 2 * Math.sin(2 * Math.PI * i / 100);
    assertThat(notes(trembling(1), i -> sway.applyAsDouble(i) + 12.4 * i / 6000))
        .containsExactly(
            "Within the part used the line (whole body's line) drifts by 9.3 mm from the first"
                + " quarter to the last.");
    assertThat(notes(trembling(1), i -> sway.applyAsDouble(i) + 11.8 * i / 6000)).isEmpty();
  }

  /** There and back where a slow sway turns, so that the quarters agree. */
  @Test
  void aShiftIsSaidWithItsSizeAndTime() throws Exception {
    assertThat(notes(trembling(1), i -> slow(i) + (i >= 2000 && i < 3600 ? 17 : 0)))
        .containsExactly(
            "Within the part used the line (whole body's line) shifts by 17.0 mm at 20.00 s (means"
                + " over 2 s before and after).");
    assertThat(notes(trembling(1), i -> slow(i) + (i >= 2000 && i < 3600 ? 14 : 0))).isEmpty();
  }

  private static double slow(int i) {
    return 9 * Math.sin(2 * Math.PI * i / 1600.0);
  }
}
