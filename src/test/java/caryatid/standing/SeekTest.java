package caryatid.standing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import caryatid.geometry.Side;
import caryatid.recording.model.Recording;
import caryatid.remark.BadInput;
import caryatid.remark.Problem;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.IntToDoubleFunction;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What is only sought is found, or refused, as an analysis finds or refuses it. */
class SeekTest {
  private static final IntToDoubleFunction LOAD = i -> 400;

  /** A recording and the topic of its refusal, where it is refused. */
  record Case(String topic, Recording recording) {}

  private static IntToDoubleFunction sway(int seed) {
    double[] values = Made.autoregressive(new Random(seed), 3000, 0.98);
    return i -> 3 * values[i];
  }

  private static Recording recording(
      double seconds,
      IntToDoubleFunction right,
      IntToDoubleFunction anterior,
      IntToDoubleFunction up) {
    return Made.at(100, seconds).plate("plate 1", right, anterior, up).recording();
  }

  static List<Case> cases() {
    return List.of(
        new Case("", recording(30, sway(1), sway(2), LOAD)),
        new Case("StandProblem.SHORT_RECORDING", recording(2, sway(1), sway(2), LOAD)),
        new Case("StandProblem.NOTHING_USABLE", recording(30, sway(1), sway(2), i -> 0)),
        new Case(
            "StandProblem.FORCE_UNSTEADY",
            recording(30, sway(1), sway(2), i -> i % 2 == 0 ? 100 : 700)),
        new Case("StandProblem.STILL_SIDEWAYS", recording(30, i -> 12, sway(2), LOAD)),
        new Case("StandProblem.WANDERING", recording(30, sway(1), i -> i % 2 * 100, LOAD)),
        new Case(
            "StandProblem.LEANING_FORCE",
            Made.at(100, 30).plate("plate 1", sway(1), sway(2), LOAD).pushed(100, 0).recording()));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void asAnAnalysisDoes(Case each) {
    List<Stance> stances =
        List.of(
            new Stance.BothFeetOnOnePlate(Optional.of("plate 1")),
            new Stance.ProstheticFootOnPlate(Optional.of("plate 1")));
    for (Stance stance : stances) {
      List<Problem> sought = problems(() -> StandAnalysis.seek(each.recording(), stance));
      assertThat(sought)
          .isEqualTo(
              problems(
                  () ->
                      StandAnalysis.analyse(each.recording(), Made.conditions(stance, Side.LEFT))));
      assertThat(sought).extracting(p -> p.topic().code()).allMatch(each.topic()::equals);
      assertThat(sought.isEmpty()).isEqualTo(each.topic().isEmpty());
    }
  }

  /** One foot's load moves to the other by more than a whole body's changes. */
  @Test
  void byTheLimitsOfWhatStoodThere() {
    Recording shifting = recording(30, sway(1), sway(2), i -> 400 + 20 * Math.sin(i / 100.0));
    Optional<String> plate = Optional.of("plate 1");
    assertThat(
            problems(() -> StandAnalysis.seek(shifting, new Stance.ProstheticFootOnPlate(plate))))
        .isEmpty();
    assertThat(problems(() -> StandAnalysis.seek(shifting, new Stance.BothFeetOnOnePlate(plate))))
        .isNotEmpty();
  }

  private static List<Problem> problems(ThrowingCallable act) {
    BadInput bad = catchThrowableOfType(BadInput.class, act);
    return bad == null ? List.of() : bad.problems();
  }
}
