package caryatid.alignment;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.demo.Numbered;
import caryatid.geometry.Plane;
import caryatid.geometry.Side;
import caryatid.loadline.LoadLineRemark;
import caryatid.remark.Argument;
import caryatid.remark.Remark;
import caryatid.remark.Unit;
import caryatid.wording.Wording;
import java.util.List;
import java.util.Locale;
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

  @Test
  void whereTheKneeMayBendTheNumbersAreSaidWithoutIt() {
    assertThat(said(BENDS, NARROW))
        .containsExactly(
            "The sagittal tolerance at knee centre (left), half-width 12.5 mm, is narrower than"
                + " this measurement can decide (half-width of its 95 % interval 17.9 mm).");
  }
}
