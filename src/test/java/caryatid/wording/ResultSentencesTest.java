package caryatid.wording;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.alignment.AlignmentState;
import caryatid.alignment.PrecisionHint;
import caryatid.alignment.Result;
import caryatid.alignment.StateOffset;
import caryatid.alignment.StateRemark;
import caryatid.demo.Numbered;
import caryatid.geometry.Plane;
import caryatid.geometry.Side;
import caryatid.loadline.Finding;
import caryatid.loadline.LandmarkInPlane;
import caryatid.loadline.LoadLineMethod;
import caryatid.loadline.LoadLineRemark;
import caryatid.loadline.Offset;
import caryatid.loadline.Target;
import caryatid.loadline.Verdict;
import caryatid.remark.Argument;
import caryatid.remark.Remark;
import caryatid.remark.Unit;
import caryatid.standing.LoadLineOwner;
import caryatid.uncertainty.Estimate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A result in sentences, from a result in which no two numbers are alike. Half-widths as in {@link
 * ResultTextNumbersTest}: 12.47, 12.67 and 11.63 mm.
 */
class ResultSentencesTest {
  private static final Wording ENGLISH = Wording.in(Locale.ENGLISH);
  private static final AlignmentState STATE = Numbered.state();

  private static Result result(List<Finding> findings, Remark... remarks) {
    return new Result(
        Result.METHOD,
        "caryatid test",
        new AlignmentState(
            STATE.stands(), STATE.offsets(), findings, STATE.withheld(), List.of(remarks)));
  }

  private static List<String> said(List<Finding> findings) {
    return ResultSentences.findings(result(findings), ENGLISH).stream()
        .map(said -> said.result() + ". " + said.sentence())
        .map(said -> said.replace('\u00a0', ' '))
        .toList();
  }

  /** 47.3 from 34.8 to 59.8; -12.6 from -25.3 to 0.1; 5.8 from -5.8 to 17.4. */
  @Test
  void everyFindingSaysItsOwnNumbersAndDirections() {
    assertThat(said(STATE.findings()))
        .containsExactly(
            "○ undecided: 8 mm within the tolerance, give or take 12 mm. ankle axis: load line 47"
                + " mm anterior (35 to 60 mm);"
                + " recommended 44 mm anterior (37 to 55 mm).",
            "× tolerance not met. prosthetic knee axis: load line 13 mm posterior (0 to 25 mm);"
                + " recommended 4 mm posterior (9 mm posterior to 5 mm anterior).",
            "● tolerance met. prosthetic knee axis: load line 6 mm lateral (6 mm medial to 17 mm"
                + " lateral); recommended 2 mm lateral (1 mm medial to 10 mm lateral).");
  }

  /** Only the undecided finding says it, and none does where a knee may bend. */
  @Test
  void whatHelpsMostIsSaidOfWhatIsUndecidedUnlessAKneeMayBend() {
    assertThat(help(result(KNEE_OPEN)))
        .containsExactly(
            "",
            "What narrows it most, though it will not decide alone: mark better, from ± 13.1 mm to"
                + " ± 7.7 mm.",
            "");
    assertThat(help(result(KNEE_OPEN, BENDS))).containsOnly("");
  }

  /** Of the ankle's offset it is said that stands would narrow it most; they do not decide it. */
  @Test
  void moreStandsAreNoHelpWhereTheyDoNotDecide() {
    assertThat(STATE.offset(STATE.findings().get(0)).flatMap(StateOffset::hint))
        .map(PrecisionHint::remedy)
        .contains(PrecisionHint.Remedy.REPEAT);
    assertThat(help(result(STATE.findings())).get(0)).isEmpty();
  }

  private static List<String> help(Result result) {
    return ResultSentences.findings(result, ENGLISH).stream()
        .map(said -> said.help().orElse("").replace('\u00a0', ' '))
        .toList();
  }

  /** The knee's sagittal finding as if it were undecided. */
  private static final List<Finding> KNEE_OPEN =
      STATE.findings().stream()
          .map(
              f ->
                  f.verdict() != Verdict.OUTSIDE
                      ? f
                      : new Finding(
                          f.offset(),
                          f.target(),
                          f.probabilityWithin(),
                          f.decidable(),
                          Verdict.OUTSIDE_TOO_CLOSE))
          .toList();

  private static Finding within(double lowest, double highest) {
    LandmarkInPlane at = new LandmarkInPlane(Plane.SAGITTAL, Side.RIGHT, "point");
    double recommended = (lowest + highest) / 2;
    return new Finding(
        new Offset(
            at, LoadLineOwner.RIGHT_FOOT, LoadLineMethod.VERTICAL, Estimate.exact(recommended)),
        new Target(
            at,
            recommended,
            recommended - lowest,
            highest - recommended,
            "leaflet",
            Target.MeantFor.FOOT,
            Optional.empty(),
            Optional.empty()),
        0.97,
        true,
        Verdict.WITHIN);
  }

  /** An end at zero has no direction, and needs none. */
  @ParameterizedTest
  @CsvSource({
    "0, 8, (0 to 8 mm)",
    "-8, 0, (0 to 8 mm)",
    "-0.4, 8, (0 to 8 mm)",
    "-8, 0.4, (0 to 8 mm)",
    "-8, -2, (2 to 8 mm)",
    "-1, 8, (1 mm posterior to 8 mm anterior)",
    "-8, 1, (8 mm posterior to 1 mm anterior)"
  })
  void aRangeHasDirectionsOnlyWhereItsEndsDiffer(double lowest, double highest, String range) {
    assertThat(said(List.of(within(lowest, highest))))
        .singleElement()
        .asString()
        .endsWith(" " + range + ".");
  }

  private static final Remark BENDS =
      Remark.of(
          LoadLineRemark.LINE_BEHIND_KNEE, Argument.term(Side.RIGHT), Argument.of(9, Unit.MM));
  private static final Remark NARROW =
      Remark.of(
          StateRemark.TOLERANCE_TOO_NARROW,
          Argument.term(Plane.SAGITTAL),
          Argument.text("point"),
          Argument.term(Side.RIGHT),
          Argument.of(7.5, Unit.MM),
          Argument.of(12.5, Unit.MM),
          Argument.text("stand longer"),
          Argument.of(9.5, Unit.MM));

  @Test
  void whatIsUnsafeIsSaidApart() {
    Result unsafe = result(List.of(), Remark.of(StateRemark.ONE_STAND), BENDS);
    assertThat(ResultSentences.unsafe(unsafe, ENGLISH))
        .extracting(said -> said.replace('\u00a0', ' '))
        .containsExactly(
            "The knee may bend. Seat the wearer, or hands on the rails and a helper. Correct it,"
                + " then stand again. The load line runs 9.0 mm behind the right prosthetic knee's"
                + " axis.");
    assertThat(ResultSentences.help(unsafe, ENGLISH)).isEmpty();
  }

  @Test
  void whatWouldHelpIsSaidApart() {
    Result narrow = result(List.of(), Remark.of(StateRemark.ONE_STAND), NARROW);
    assertThat(ResultSentences.help(narrow, ENGLISH))
        .extracting(said -> said.replace('\u00a0', ' '))
        .containsExactly(
            "The sagittal tolerance at point (right), half-width 7.5 mm, is narrower than this"
                + " measurement can decide (half-width of its 95 % interval 12.5 mm). What would"
                + " help most: stand longer, to about 9.5 mm.");
    assertThat(ResultSentences.unsafe(narrow, ENGLISH)).isEmpty();
  }
}
