package caryatid.wording;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.alignment.AlignmentState;
import caryatid.alignment.Result;
import caryatid.demo.Numbered;
import caryatid.loadline.Finding;
import caryatid.loadline.Verdict;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** What is done next: what is not met comes before what is undecided. */
class LeadLineTest {
  private static final Wording ENGLISH = Wording.in(Locale.ENGLISH);

  /** The invented state with other verdicts, in the order of its findings, and no remark. */
  private static AlignmentState judged(Verdict... verdicts) {
    AlignmentState state = Numbered.state();
    List<Finding> findings = new ArrayList<>();
    for (int i = 0; i < verdicts.length; i++) {
      Finding finding = state.findings().get(i);
      findings.add(
          new Finding(
              finding.offset(),
              finding.target(),
              finding.probabilityWithin(),
              finding.decidable(),
              verdicts[i]));
    }
    return new AlignmentState(state.stands(), state.offsets(), findings, List.of(), List.of());
  }

  private static String last(Verdict... verdicts) {
    List<String> lines =
        ResultText.lines(
            new Result(Result.METHOD, Numbered.result().program(), judged(verdicts)), ENGLISH);
    return lines.stream()
        .filter(line -> line.contains("measure again") && !line.contains("×"))
        .reduce((before, after) -> after)
        .orElse("");
  }

  @Test
  void whatIsNotMetLeadsAndWhatIsUndecidedIsNamedBehindIt() {
    assertThat(
            LeadLine.of(judged(Verdict.OUTSIDE, Verdict.WITHIN, Verdict.INSIDE_TOO_CLOSE), ENGLISH))
        .contains(
            "× Tolerance not met: ankle axis (sagittal). Undecided: prosthetic knee axis (frontal)."
                + " Change one thing, then measure again.");
    assertThat(LeadLine.of(judged(Verdict.OUTSIDE, Verdict.WITHIN, Verdict.WITHIN), ENGLISH))
        .contains(
            "× Tolerance not met: ankle axis (sagittal). Change one thing, then measure again.");
  }

  @Test
  void measuringAgainIsTheOnlyAdviceWhereNothingIsNotMet() {
    assertThat(last(Verdict.WITHIN, Verdict.WITHIN, Verdict.INSIDE_TOO_CLOSE))
        .isEqualTo("Undecided: measure again before changing.");
    assertThat(last(Verdict.OUTSIDE, Verdict.WITHIN, Verdict.OUTSIDE_TOO_CLOSE))
        .isEqualTo(
            "Not met comes first: change one thing, then measure again. What is undecided is"
                + " measured with it.");
    assertThat(last(Verdict.OUTSIDE, Verdict.WITHIN, Verdict.WITHIN)).isEmpty();
  }
}
