package caryatid.entry.form;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.entry.EntryKind;
import caryatid.recording.model.NamedBytes;
import caryatid.remark.BadInput;
import caryatid.sheet.yaml.InputValueReader;
import caryatid.wording.Wording;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FormReaderTest {
  @Test
  void aFormIsReadFromYaml() throws BadInput {
    Answers answers =
        read(
            EntryKind.LEG_LENGTH,
            "landmarks:\n"
                + "  - {landmark: iliac crest, left-mm: 981.5, right-mm: 985}\n"
                + "pelvis-level: no\n"
                + "note: \"12\"\n");
    assertThat(answers.rows("landmarks").get(0).number("left-mm").orElseThrow().toPlainString())
        .isEqualTo("981.5");
    assertThat(answers.yesNo("pelvis-level")).contains(false);
    assertThat(answers.words("note")).contains("12");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "what: a| f.yaml line 1, column 1: attempts is missing. Add it.",
        "attempts: two| f.yaml line 1, column 11: attempts: expected a number, found \"two\". Write"
            + " digits with a decimal point, without a unit.",
        "attempts: 1.5| f.yaml line 1, column 11: attempts: expected a whole number, found 1.5.",
        "attempts: 0| f.yaml line 1, column 11: attempts: expected a number from 1 to 100, found 0."
            + " Give a number in that range.",
        "attempts: 101| f.yaml line 1, column 11: attempts: expected a number from 1 to 100, found"
            + " 101. Give a number in that range.",
        "attempts: 1e999999999| f.yaml line 1, column 11: attempts: expected a number, found"
            + " \"1e999999999\". Write digits with a decimal point, without a unit.",
        "attempts: \"3\"| f.yaml line 1, column 11: attempts: expected a number, found \"3\". Write"
            + " digits with a decimal point, without a unit.",
        "heel-height-set-mm: 1.0000000001| f.yaml line 1, column 21: heel-height-set-mm: expected"
            + " at most 9 decimals, found 1.0000000001. Round it.",
        "what: [a]| f.yaml line 1, column 7: what: expected words. Write some, or leave the key"
            + " out.",
        "heel: 3| f.yaml line 1, column 7: unknown key heel. Known here: what, attempts, succeeded,"
            + " heel-height-wanted-mm, heel-height-set-mm, note."
      })
  void whatDoesNotFitIsSaidWithItsPlace(String yaml, String sentence) {
    assertThat(says(EntryKind.OWN_SETTING, yaml)).contains(sentence.strip());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "comfort: 11| f.yaml line 1, column 10: comfort: expected a number from 0 to 10, found 11."
            + " Give a number in that range.",
        "observations: []| f.yaml line 1, column 15: observations: expected a list with at least"
            + " one row.",
        "observations: [x]| f.yaml line 1, column 16: observations[1]: expected a row of keys and"
            + " values.",
        "observations: [{deviation: vaulting, plane: side}]| f.yaml line 1, column 45:"
            + " observations[1].plane: found \"side\", expected one of: sagittal, frontal,"
            + " transverse."
      })
  void whatDoesNotFitInRowsIsSaidWithItsRow(String yaml, String sentence) {
    assertThat(says(EntryKind.WALKING, yaml)).contains(sentence.strip());
  }

  @Test
  void aNumberThatCannotBeAboveAnotherIsHeldAgainstIt() throws BadInput {
    assertThat(says(EntryKind.OWN_SETTING, "what: a\nattempts: 2\nsucceeded: 3\n"))
        .containsExactly(
            "f.yaml line 3, column 12: succeeded: expected at most 2, the value of attempts, found"
                + " 3. Check both.");
    assertThat(read(EntryKind.OWN_SETTING, "what: a\nattempts: 3\nsucceeded: 3\n").values())
        .hasSize(3);
    assertThat(
            says(
                EntryKind.COMPONENTS,
                "components: [{what: foot, name: a, heel-height-lowest-mm: 20,"
                    + " heel-height-highest-mm: 5, mobility-grade-lowest: 4,"
                    + " mobility-grade-highest: 4}]\n"))
        .containsExactly(
            "f.yaml line 1, column 59: components[1].heel-height-lowest-mm: expected at most 5, the"
                + " value of components[1].heel-height-highest-mm, found 20. Check both.");
  }

  @Test
  void everyEndOfARangeIsInside() throws BadInput {
    assertThat(read(EntryKind.WALKING, "comfort: 0\n").number("comfort")).isPresent();
    assertThat(read(EntryKind.WALKING, "comfort: 10\n").number("comfort")).isPresent();
  }

  private static Answers read(EntryKind kind, String yaml) throws BadInput {
    return FormReader.read(
        EntryForms.of(kind),
        InputValueReader.read(NamedBytes.of("f.yaml", yaml.getBytes(StandardCharsets.UTF_8))),
        NameNotation.INPUT);
  }

  private static java.util.List<String> says(EntryKind kind, String yaml) {
    try {
      read(kind, yaml);
      return java.util.List.of();
    } catch (BadInput e) {
      return e.problems().stream().map(Wording.in(Locale.ENGLISH)::say).toList();
    }
  }
}
