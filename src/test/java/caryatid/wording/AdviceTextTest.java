package caryatid.wording;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.advice.AdviceRemark;
import caryatid.demo.TurnedAnkle;
import caryatid.remark.Argument;
import caryatid.remark.Remark;
import caryatid.views.RecordAdvice;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class AdviceTextTest {
  private static final Wording ENGLISH = Wording.in(Locale.ENGLISH);

  private static List<String> lines(Locale locale) {
    return AdviceText.lines(
            RecordAdvice.of(TurnedAnkle.turnedOnce().record(), Map.of()).get(0), Wording.in(locale))
        .stream()
        .map(line -> line.replace('\u00a0', ' '))
        .toList();
  }

  @Test
  void theChangeComesFirstInDegreesThenInTurns() {
    List<String> lines = lines(Locale.ENGLISH);
    assertThat(lines.get(0)).isEqualTo("What to change next, right, from the stand of entry 7:");
    assertThat(lines.get(1))
        .matches(
            "Next: plantarflex the foot by \\d\\.\\d°, to \\d\\.\\d°\\. Probability that every offset"
                + " is then within its tolerance: \\d+ % \\(now < 1 %\\)\\.");
    assertThat(lines.get(2))
        .contains("turns of the set screw. The screws work in pairs: loosen one and tighten");
    assertThat(lines).anyMatch(line -> line.contains("geometry expects"));
  }

  /** Said always, whole. */
  @Test
  void whatIsSaidAlwaysIsThere() {
    assertThat(lines(Locale.ENGLISH))
        .contains(
            "Change one thing at a time, unloaded. Secure the fasteners to the stated torque before"
                + " the wearer stands or walks. Comfort, gait and the maker's limits decide.",
            "Standing does not show how the wearer walks; walk between rails first. If gait, comfort"
                + " or skin disagree, they decide: keep what walks well, write why, and stand once"
                + " more.");
  }

  @ParameterizedTest
  @ValueSource(strings = {"de", "fr", "es"})
  void eachLanguageSaysAsMuch(String language) {
    assertThat(lines(Locale.forLanguageTag(language))).hasSameSizeAs(lines(Locale.ENGLISH));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "LOCKED | The knee was locked in the newest stand, so nothing is advised from it.",
        "HAND_HELD | A hand held or touched something in the newest stand, so nothing is advised"
            + " from it.",
        "REFUSED | The newest stand gave no result, so nothing is advised from it.",
        "KNEE_KEPT | Nothing is proposed that makes it more probable than 5 % that the line runs"
            + " behind the prosthetic knee's axis.",
        "EXTENSION_KEPT | Nothing is proposed that asks for more extension than the noted"
            + " contracture leaves.",
        "ONE_UNDECIDED_STAND | This rests on one stand that decides neither way. Two more would"
            + " make it surer.",
        "GEOMETRY_UNKNOWN | The landmarks do not tell what the noted changes would do, and this"
            + " wearer has not shown it yet. Mark the ankle and the knee.",
        "OWN_KNEE_KEPT | The wearer's knee is guarded too: a line behind it can let it buckle, one"
            + " far in front of it can overextend it.",
        "BACK_BELOW_CONTRACTURE | The last good setting flexes the socket less than the noted"
            + " contracture, so going back to it is not advised."
      })
  void guardsHaveTheirWords(AdviceRemark topic, String said) {
    assertThat(ENGLISH.say(Remark.of(topic))).isEqualTo(said);
  }

  @Test
  void aContradictionNamesItsEntry() {
    assertThat(ENGLISH.say(Remark.of(AdviceRemark.CONTRADICTS, Argument.count(7))))
        .startsWith("The stand of entry 7 contradicts those before it");
  }

  /** Never said, in any language. */
  @ParameterizedTest
  @CsvSource({
    "'', '(?i).*\\b(correct|optimal|optimum|safe|safely|ideal|best)\\b.*'",
    "_de, '(?i).*\\b(korrekt|richtig|optimal|sicher|sicherer|ideal|beste)\\b.*'",
    "_fr, '(?i).*\\b(correct|correcte|optimal|optimale|sûr|sûre|idéal)\\b.*'",
    "_es, '(?i).*\\b(correcto|correcta|óptimo|óptima|seguro|segura|ideal)\\b.*'"
  })
  void someWordsAreNeverSaid(String language, String never) throws IOException {
    Path words = Path.of("src/main/resources/caryatid/wording/advice" + language + ".properties");
    assertThat(Files.readAllLines(words)).hasSizeGreaterThan(60).noneMatch(l -> l.matches(never));
  }
}
