package caryatid.alignment;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.demo.Demo;
import caryatid.demo.Sways;
import caryatid.geometry.Plane;
import caryatid.geometry.Side;
import caryatid.loadline.LandmarkInPlane;
import caryatid.loadline.LoadLineMethod;
import caryatid.loadline.LoadLineQuestion;
import caryatid.loadline.Offset;
import caryatid.loadline.WhichLeg;
import caryatid.recording.model.Provenance;
import caryatid.recording.model.RecordingRemark;
import caryatid.remark.Argument;
import caryatid.remark.Question;
import caryatid.remark.Remark;
import caryatid.remark.Topic;
import caryatid.standing.LoadLineOwner;
import caryatid.standing.QuietStretch;
import caryatid.standing.Stance;
import caryatid.standing.Standing;
import caryatid.standing.Sway;
import caryatid.uncertainty.Estimate;
import java.util.List;
import java.util.Optional;
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
    Sway sway = Sways.of(of.of(), lowPassHz, 1, sdAnteriorMm, 4, 4, 100, 5, 20, 0, 0.2, 20, 20);
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

  /** A stand whose line runs a little behind the ankle axis, under another name. */
  private static Stand behind(String name) {
    Stand stand = Demo.transtibial(Side.RIGHT).result().state().stands().get(0);
    Offset odd =
        new Offset(
            new LandmarkInPlane(Plane.SAGITTAL, Side.RIGHT, "ankle axis"),
            LoadLineOwner.RIGHT_FOOT,
            LoadLineMethod.VERTICAL,
            Estimate.exact(-1));
    return of(stand, name, List.of(odd), List.of());
  }

  private static Stand of(Stand stand, String name, List<Offset> offsets, List<Remark> remarks) {
    Provenance file = stand.recording();
    return new Stand(
        new Provenance(name, file.bytes(), file.sha512()),
        stand.sheet(),
        stand.description(),
        stand.trial(),
        stand.landmarks(),
        stand.standing(),
        offsets,
        List.of(),
        remarks);
  }

  private static List<Question> asked(Topic topic, Stand... stands) {
    AlignmentState state =
        new AlignmentState(List.of(stands), List.of(), List.of(), List.of(), List.of());
    return StateQuestions.of(state, OptionalDouble.empty()).stream()
        .filter(question -> question.topic() == topic)
        .toList();
  }

  @Test
  void aQuestionNamesTheRecordingsItIsAskedOf() {
    Stand usual = Demo.transtibial(Side.RIGHT).result().state().stands().get(0);
    Question one = asked(LoadLineQuestion.ODD_OFFSET, usual, behind("b.csv")).get(0);
    assertThat(one.arguments()).last().isEqualTo(Argument.text("b.csv"));
    List<Question> two =
        asked(LoadLineQuestion.ODD_OFFSET, behind("a.csv"), usual, behind("c.csv"));
    assertThat(two)
        .allMatch(q -> q.arguments().get(5).equals(Argument.text("a.csv, c.csv")))
        .allMatch(q -> q.answer().equals("ankle axis right sagittal"));
  }

  @Test
  void leftHandedAxesThatNothingProvesAreAskedAbout() {
    Stand stand = Demo.transtibial(Side.RIGHT).result().state().stands().get(0);
    Argument axes = Argument.text("axes: {right: +y, anterior: +x, up: +z}");
    Remark remark = Remark.of(RecordingRemark.LEFT_HANDED, axes);
    Question question =
        asked(
                StateQuestions.StateQuestion.LEFT_HANDED,
                of(stand, "a.csv", List.of(), List.of(remark)))
            .get(0);
    assertThat(question.line()).isEqualTo("as-meant: ['left-handed axes']");
    assertThat(question.arguments()).containsExactly(axes);
    assertThat(asked(StateQuestions.StateQuestion.LEFT_HANDED, stand)).isEmpty();
  }

  /** Which marks would prove it depends on the plates. */
  @Test
  void theQuestionOfTheSideNamesTheMarksThatWouldProveIt() {
    Stand stand = Demo.transtibial(Side.RIGHT).result().state().stands().get(0);
    assertThat(side(stand, new Stance.ProstheticFootOnPlate(Optional.empty())))
        .isEqualTo(LoadLineQuestion.SIDE_UNPROVEN_BY_BORDER);
    assertThat(side(stand, new Stance.PlatePerFoot("1", "2")))
        .isEqualTo(LoadLineQuestion.SIDE_UNPROVEN);
  }

  private static Topic side(Stand stand, Stance stance) {
    return WhichLeg.side(stand.standing(), List.of(), stance, List.of(Side.RIGHT))
        .orElseThrow()
        .topic();
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
