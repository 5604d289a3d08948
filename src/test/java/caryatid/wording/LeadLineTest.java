package caryatid.wording;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.alignment.AlignmentState;
import caryatid.alignment.Result;
import caryatid.demo.NearTheEdge;
import caryatid.demo.Numbered;
import caryatid.loadline.Finding;
import caryatid.loadline.Verdict;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

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
  void whatIsNotMetIsChangedBeforeWhatIsUndecidedIsMeasuredAgain() {
    assertThat(last(Verdict.OUTSIDE, Verdict.WITHIN, Verdict.OUTSIDE_TOO_CLOSE))
        .isEqualTo(
            "Not met comes first: change one thing, then measure again. What is undecided is"
                + " measured with it.");
    assertThat(last(Verdict.OUTSIDE, Verdict.WITHIN, Verdict.WITHIN)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "en|○ Undecided: ankle axis (sagittal). Measure again before changing.",
        "de|○ Unentschieden: Knöchelachse (sagittal). Erst erneut messen, dann ändern.",
        "fr|○ Indécis : axe de la cheville (sagittal). Remesurer avant de modifier.",
        "es|○ Sin decidir: eje del tobillo (sagital). Medir de nuevo antes de modificar."
      })
  void measuringAgainIsAskedForWhereItCanDecide(String language, String line) {
    assertThat(line(language, 0)).isEqualTo(line);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "en|○ Undecided: ankle axis (sagittal). More stands will not decide it. Mark the landmarks"
            + " more closely, or change one thing knowing that it is undecided.",
        "de|○ Unentschieden: Knöchelachse (sagittal). Weitere Standmessungen entscheiden es nicht."
            + " Messpunkte genauer markieren, oder eine Sache ändern im Wissen, dass es"
            + " unentschieden ist.",
        "fr|○ Indécis : axe de la cheville (sagittal). D'autres essais ne trancheront pas. Marquer"
            + " les repères plus précisément, ou modifier une seule chose en sachant que c'est"
            + " indécis.",
        "es|○ Sin decidir: eje del tobillo (sagital). Más ensayos no lo decidirán. Marcar los"
            + " puntos con más precisión, o modificar una sola cosa sabiendo que está sin decidir."
      })
  void closerMarksAreAskedForWhereStandsDoNotDecide(String language, String line) {
    assertThat(line(language, 4)).isEqualTo(line);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "en|○ Undecided: ankle axis (sagittal). More stands will not decide it. One thing may be"
            + " changed, knowing that it is undecided.",
        "de|○ Unentschieden: Knöchelachse (sagittal). Weitere Standmessungen entscheiden es nicht."
            + " Eine Sache darf geändert werden, im Wissen, dass es unentschieden ist.",
        "fr|○ Indécis : axe de la cheville (sagittal). D'autres essais ne trancheront pas. On peut"
            + " modifier une seule chose, en sachant que c'est indécis.",
        "es|○ Sin decidir: eje del tobillo (sagital). Más ensayos no lo decidirán. Se puede"
            + " modificar una sola cosa, sabiendo que está sin decidir."
      })
  void oneThingMayBeChangedWhereNothingDecides(String language, String line) {
    assertThat(line(language, 9)).isEqualTo(line);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "en|○ Undecided: ankle axis (sagittal), prosthetic knee axis (sagittal). Measure again"
            + " before changing. More stands will not decide prosthetic knee axis (sagittal).",
        "de|○ Unentschieden: Knöchelachse (sagittal), Prothesenknieachse (sagittal). Erst"
            + " erneut messen, dann ändern. Weitere Standmessungen entscheiden nicht über:"
            + " Prothesenknieachse (sagittal).",
        "fr|○ Indécis : axe de la cheville (sagittal), axe du genou prothétique (sagittal)."
            + " Remesurer avant de modifier. D'autres essais ne trancheront pas : axe du genou"
            + " prothétique (sagittal).",
        "es|○ Sin decidir: eje del tobillo (sagital), eje de la rodilla protésica (sagital). Medir"
            + " de nuevo antes de modificar. Más ensayos no decidirán: eje de la rodilla protésica"
            + " (sagital)."
      })
  void whatStandsDecideAndWhatTheyDoNotIsToldApart(String language, String line) {
    assertThat(line(language, 0, 9)).isEqualTo(line);
  }

  @Test
  void theLinesOfATerminalAgreeWithIt() {
    assertThat(terminal(0)).contains("Undecided: measure again before changing.");
    assertThat(terminal(4))
        .contains(
            "Undecided, and more stands will not decide it. Mark the landmarks more closely, or"
                + " change one thing knowing that it is undecided.")
        .doesNotContain("Undecided: measure again before changing.");
    assertThat(terminal(9))
        .contains(
            "Undecided, and more stands will not decide it. One thing may be changed, knowing that"
                + " it is undecided.");
  }

  private static List<String> terminal(double mm) {
    return ResultText.lines(
        new Result(Result.METHOD, "caryatid test", NearTheEdge.state(mm)), ENGLISH);
  }

  private static String line(String language, double... fromMiddleMm) {
    return LeadLine.of(NearTheEdge.state(fromMiddleMm), Wording.in(Locale.forLanguageTag(language)))
        .orElseThrow()
        .replace('\u00a0', ' ');
  }
}
