package caryatid.alignment;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.demo.Numbered;
import caryatid.geometry.Plane;
import caryatid.geometry.Side;
import caryatid.loadline.LoadLineRemark;
import caryatid.remark.Argument;
import caryatid.remark.Remark;
import caryatid.remark.Topic;
import caryatid.remark.Unit;
import caryatid.standing.StandRemark;
import caryatid.wording.Wording;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What would make a result surer is not said where a prosthetic knee may bend. */
class GroupedRemarkTest {
  private static final Remark NARROW =
      Remark.of(
          StateRemark.TOLERANCE_TOO_NARROW,
          Argument.term(Plane.SAGITTAL),
          Argument.text("knee centre"),
          Argument.term(Side.LEFT),
          Argument.of(12.5, Unit.MM),
          Argument.of(17.9, Unit.MM),
          Argument.term(PrecisionHint.Remedy.values()[0]),
          Argument.of(9.3, Unit.MM));
  private static final Remark BENDS =
      Remark.of(LoadLineRemark.LINE_BEHIND_KNEE, Argument.of(19.8, Unit.MM));

  private static List<String> said(Remark... remarks) {
    AlignmentState state = Numbered.state();
    return GroupedRemark.of(
            new AlignmentState(
                state.stands(),
                state.offsets(),
                state.findings(),
                state.withheld(),
                List.of(remarks)))
        .stream()
        .map(GroupedRemark::remark)
        .filter(remark -> remark.topic() instanceof StateRemark)
        .map(Wording.in(Locale.ENGLISH)::say)
        .map(text -> text.replace('\u00a0', ' '))
        .toList();
  }

  @Test
  void whatWouldHelpIsSaidWithItsNumber() {
    assertThat(said(NARROW)).singleElement().asString().contains("12.5", "17.9", "to about 9.3 mm");
  }

  /** The second stand's stretch is not the first one's, and one of a single stand needs no name. */
  @Test
  void aStretchSetByHandIsSaidOfEachStandByItself() {
    AlignmentState state = Numbered.state();
    Stand stand = state.stands().get(0);
    Stand other = Stands.remarking(stand, byHand(5, 15.5), Remark.of(StandRemark.LOW_RATE));
    Stand first = Stands.remarking(stand, byHand(3, 12));
    assertThat(saidOf(state, first, other))
        .containsExactly(
            "Stand 1 (%s): the part used was set by hand, from 3.00 s to 12.00 s."
                .formatted(stand.recording().name()),
            "Stand 2 (%s): the part used was set by hand, from 5.00 s to 15.50 s."
                .formatted(stand.recording().name()));
    assertThat(saidOf(state, first))
        .containsExactly("The part used was set by hand, from 3.00 s to 12.00 s.");
  }

  private static Remark byHand(double fromS, double toS) {
    return Remark.of(StandRemark.SET_BY_HAND, Argument.of(fromS, Unit.S), Argument.of(toS, Unit.S));
  }

  private static List<String> saidOf(AlignmentState state, Stand... stands) {
    Set<Topic> byHand = Set.of(StandRemark.SET_BY_HAND, StateRemark.STRETCH_BY_HAND);
    return GroupedRemark.of(
            new AlignmentState(
                List.of(stands), state.offsets(), state.findings(), List.of(), List.of()))
        .stream()
        .filter(said -> byHand.contains(said.remark().topic()))
        .map(Wording.in(Locale.ENGLISH)::say)
        .map(text -> text.replace('\u00a0', ' '))
        .toList();
  }

  @Test
  void whereTheKneeMayBendTheNumbersAreSaidWithoutIt() {
    assertThat(said(BENDS, NARROW))
        .containsExactly(
            "The sagittal tolerance at knee centre (left), half-width 12.5 mm, is narrower than"
                + " this measurement can decide (half-width of its 95 % interval 17.9 mm).");
  }
}
