package caryatid.wording;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import caryatid.geometry.Side;
import caryatid.recording.model.NamedBytes;
import caryatid.remark.BadInput;
import caryatid.sheet.TrialSheet;
import caryatid.sheet.TrialSheetReader;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** An ankle axis is called so only where somebody says that the ankle has one. */
class AnkleNameTest {
  private static final Wording ENGLISH = Wording.in(Locale.ENGLISH);
  private static final String ANKLE =
      "  - {name: ankle axis, side: right, forward-mm: 90, up-mm: 82, marking-mm: 3}\n";

  private static TrialSheet sheet(String level, String side, String more) throws BadInput {
    String yaml =
        """
        trial-sheet: 1
        wearer: K7
        at: 2026-03-04T10:15+01:00
        side: %s
        level: %s
        stance: {kind: both feet on one plate}
        hands: free
        footwear: {worn: barefoot, heel-height-mm: 0}
        landmarks:
        """
            .formatted(side, level);
    return TrialSheetReader.read(
        NamedBytes.of("sheet.yaml", (yaml + ANKLE + more).getBytes(StandardCharsets.UTF_8)),
        name -> Optional.empty());
  }

  private static String name(TrialSheet sheet) {
    return new LandmarkWords(ENGLISH, sheet).name("ankle axis");
  }

  @ParameterizedTest
  @CsvSource({
    "en, ankle axis, foot reference point",
    "de, Knöchelachse, Fußbezugspunkt",
    "fr, axe de la cheville, point de référence du pied",
    "es, eje del tobillo, punto de referencia del pie"
  })
  void anAnkleAxisIsCalledSoOnlyIfTheSheetSaysThatThereIsOne(
      String language, String axis, String point) throws BadInput {
    Wording wording = Wording.in(Locale.forLanguageTag(language));
    TrialSheet with = sheet("transtibial", "right", "ankle-axis: yes\n");
    TrialSheet without = sheet("transtibial", "right", "ankle-axis: no\n");
    TrialSheet silent = sheet("transtibial", "right", "");
    assertThat(new LandmarkWords(wording, with).name("ankle axis")).isEqualTo(axis);
    assertThat(new LandmarkWords(wording, without).name("ankle axis")).isEqualTo(point);
    assertThat(new LandmarkWords(wording, silent).name("ankle axis")).isEqualTo(point);
    assertThat(LandmarkWords.open(with, wording)).isEmpty();
    assertThat(LandmarkWords.open(without, wording)).isEmpty();
    assertThat(LandmarkWords.open(silent, wording).orElseThrow())
        .contains("`ankle-axis: yes`")
        .contains(point);
  }

  @Test
  void aSheetThatMarksBothPointsKeepsThemApart() throws BadInput {
    String foot = "  - {name: foot reference point, forward-mm: 60, up-mm: 20, marking-mm: 3}\n";
    TrialSheet sheet = sheet("transtibial", "right", foot);
    assertThat(name(sheet)).isEqualTo("ankle axis");
    assertThat(LandmarkWords.open(sheet, ENGLISH)).isEmpty();
  }

  @Test
  void theAnkleOfAPartialFootIsTheWearersOwn() throws BadInput {
    TrialSheet sheet = sheet("partial foot", "right", "");
    assertThat(name(sheet)).isEqualTo("ankle axis");
    assertThat(LandmarkWords.open(sheet, ENGLISH)).isEmpty();
  }

  @Test
  void twoProsthesesHaveAnAnswerEach() throws BadInput {
    LandmarkWords names =
        new LandmarkWords(ENGLISH, sheet("transtibial", "both", "ankle-axis: left\n"));
    assertThat(names.name("ankle axis", Side.LEFT)).isEqualTo("ankle axis");
    assertThat(names.name("ankle axis", Side.RIGHT)).isEqualTo("foot reference point");
    assertThat(names.name("ankle axis")).isEqualTo("foot reference point");
    assertThat(name(sheet("transtibial", "both", "ankle-axis: yes\n"))).isEqualTo("ankle axis");
  }

  @Test
  void anAxisOfTheSoundAnkleIsRefused() {
    assertThatThrownBy(() -> sheet("transtibial", "right", "ankle-axis: left\n"))
        .isInstanceOfSatisfying(
            BadInput.class,
            e ->
                assertThat(ENGLISH.say(e.problems().get(0)))
                    .isEqualTo(
                        "sheet.yaml line 11, column 13: `ankle-axis` names the left leg, but the"
                            + " sheet has no prosthesis there. Write `yes` or `no`."));
  }
}
