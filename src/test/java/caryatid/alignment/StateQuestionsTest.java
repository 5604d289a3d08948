package caryatid.alignment;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.demo.Demo;
import caryatid.geometry.Side;
import caryatid.remark.Question;
import caryatid.standing.QuietStretch;
import caryatid.standing.Standing;
import caryatid.standing.Sway;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class StateQuestionsTest {
  private static Stand swaying(double sdAnteriorMm, double seconds, boolean filtered) {
    Stand stand = Demo.transtibial(Side.RIGHT).result().state().stands().get(0);
    Standing s = stand.standing();
    QuietStretch part = s.stretch();
    QuietStretch stretch =
        new QuietStretch(
            part.fromIndex(),
            part.toIndex(),
            part.fromS(),
            part.fromS() + seconds,
            part.byHand(),
            part.leftOut());
    Sway of = s.sway().get(0);
    OptionalDouble lowPassHz = filtered ? OptionalDouble.of(5) : OptionalDouble.empty();
    Sway sway = new Sway(of.of(), lowPassHz, 1, sdAnteriorMm, 4, 4, 100, 5, 20, 0, 0.2, 20, 20);
    Standing standing =
        new Standing(
            stretch, s.rateHz(), s.loads(), List.of(sway), s.placements(), s.share(), List.of());
    return new Stand(
        stand.recording(),
        stand.sheet(),
        stand.description(),
        stand.trial(),
        stand.landmarks(),
        standing,
        stand.offsets(),
        stand.moments(),
        stand.remarks());
  }

  private static boolean isAsked(Stand stand) {
    AlignmentState state = Demo.transtibial(Side.RIGHT).result().state();
    AlignmentState swaying =
        new AlignmentState(
            List.of(stand), state.offsets(), state.findings(), state.withheld(), List.of());
    return StateQuestions.of(swaying, OptionalDouble.empty()).stream()
        .map(Question::topic)
        .anyMatch(StateQuestions.StateQuestion.HARDLY_ANY_SWAY::equals);
  }

  /** The limit, 0.6 mm in 20 s, is StateQuestions' own and has its source there. */
  @Test
  void aSwayBelowTheLeastIsAskedAbout() {
    assertThat(isAsked(swaying(0.599, 20, false))).isTrue();
    assertThat(isAsked(swaying(0.6, 20, false))).isFalse();
    assertThat(isAsked(swaying(0.599, 40, false))).isTrue();
    assertThat(isAsked(swaying(0.6, 40, false))).isFalse();
  }

  /** In a quarter of the time half the sway. */
  @Test
  void theLeastShrinksAsTheRootOfAShorterStretch() {
    assertThat(isAsked(swaying(0.299, 5, false))).isTrue();
    assertThat(isAsked(swaying(0.301, 5, false))).isFalse();
  }

  @Test
  void aFilteredSwayIsNotAskedAbout() {
    assertThat(isAsked(swaying(0.1, 20, true))).isFalse();
  }
}
