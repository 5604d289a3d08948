package caryatid.sheet;

import static caryatid.sheet.Sheets.problemsOfDescription;
import static caryatid.sheet.Sheets.withLines;
import static org.assertj.core.api.Assertions.assertThat;

import caryatid.remark.BadInput;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The form of YAML files, shown on plate descriptions. */
class WritingTest {
  private static String manyKeys(int count) {
    StringBuilder lines = new StringBuilder();
    for (int i = 0; i < count; i++) {
      lines.append("quite-unknown-").append(i).append(": 1\n");
    }
    return lines.toString();
  }

  @Test
  void aMergeKeyIsRefused() {
    assertThat(withLines("<<: {force-is: on the plate}\n"))
        .containsExactly(
            "plate.yaml line 3, column 1: the YAML merge key << is not allowed: every value must be"
                + " written where it is used. Write the keys out.");
  }

  @Test
  void aDecimalCommaWithinBracesIsSaidToBeOne() {
    assertThat(
            withLines(
                "plates: [{name: p, edges-mm: {left: -250,5, right: 250, rear: -250, front:"
                    + " 250}}]\n"))
        .containsExactly(
            "plate.yaml line 3, column 37: `left`: the comma in -250,5 ends the value, as it does"
                + " between keys. Write it with a decimal point: -250.5.");
  }

  @Test
  void aFileOfAnotherKindIsRefused() {
    assertThat(problemsOfDescription(Sheets.SHEET))
        .containsExactly(
            "plate.yaml: expected a file with the line `plate-description: 1`, but it has none."
                + " Check which file was meant, or add the line at the top.");
  }

  @Test
  void anotherVersionIsRefused() {
    assertThat(problemsOfDescription("plate-description: 2\nname: a\n"))
        .containsExactly(
            "plate.yaml line 1, column 20: `plate-description`: this program reads version 1,"
                + " found '2'. Write `plate-description: 1`.");
  }

  @Test
  void aKeyThatStandsTwiceIsRefused() {
    assertThat(withLines("force-is: on the person\nname: Other\n"))
        .containsExactly(
            "plate.yaml line 4, column 1: the key `name` appears twice in the same group, first in"
                + " line 2. Delete one of the two.");
  }

  @Test
  void anUnknownKeyIsRefusedWithWhatCanStandThere() {
    assertThat(withLines("accuracy: {cop-mm: 1, level-deg: 0, force-percent: 0, colour: red}\n"))
        .containsExactly(
            "plate.yaml line 3, column 55: unknown key `colour`. Keys allowed here: cop-mm,"
                + " level-deg, force-percent, lean-deg.");
  }

  @ParameterizedTest
  @ValueSource(strings = {"level", "Level_deg", "levl-deg"})
  void aMisspeltKeyIsRefusedWithTheOneThatWasMeant(String key) {
    assertThat(withLines("accuracy: {cop-mm: 1, force-percent: 0, " + key + ": 0}\n"))
        .containsExactly(
            "plate.yaml line 3, column 41: unknown key `" + key + "`; did you mean `level-deg`?");
  }

  @Test
  void aMissingKeyIsRefusedWhereItsGroupBegins() {
    assertThat(problemsOfDescription("plate-description: 1\naxes: {right: +x, up: +z}\n"))
        .containsExactly(
            "plate.yaml: `name` is missing. Add the line `name: ...` here.",
            "plate.yaml line 2, column 7: `anterior` is missing. Add the line `anterior: ...`"
                + " here.");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "~", "null", "''", "' '"})
  void aKeyWithoutAValueIsRefused(String nothing) {
    assertThat(withLines("accuracy: {level-deg: 0, force-percent: 0, cop-mm: " + nothing + "}\n"))
        .containsExactly(
            "plate.yaml line 3, column "
                + (nothing.isEmpty() ? 51 : 52)
                + ": `cop-mm` has no value. Write one after the colon, or leave the line out.");
  }

  @Test
  void groupsAndListsWithoutContentAreRefused() {
    assertThat(withLines("axes:\nplates:\n"))
        .containsExactly(
            "plate.yaml line 3, column 6: `axes` has no value. Write one after the colon, or leave"
                + " the line out.",
            "plate.yaml line 4, column 8: `plates` has no value. Write one after the colon, or"
                + " leave the line out.");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        ".nan",
        "NaN",
        ".inf",
        "-.inf",
        "Infinity",
        "1e3",
        "1,5",
        "0x10",
        "1_000",
        "5 mm",
        "'5'",
        "five",
        "1.",
        ".5"
      })
  void whatIsNoPlainNumberIsRefused(String number) {
    String block = "accuracy:\n  level-deg: 0\n  force-percent: 0\n  cop-mm: " + number + "\n";
    assertThat(withLines(block))
        .containsExactly(
            "plate.yaml line 6, column 11: `cop-mm`: expected a number such as 12 or -3.5, found '"
                + number.replace("'", "")
                + "'. Write digits with a decimal point, without quotes and without a unit.");
  }

  @ParameterizedTest
  @ValueSource(strings = {"-0.001", "100.001"})
  void aNumberOutOfItsRangeIsRefused(String number) {
    assertThat(withLines("accuracy: {level-deg: 0, force-percent: 0, cop-mm: " + number + "}\n"))
        .containsExactly(
            "plate.yaml line 3, column 52: `cop-mm`: expected a number from 0 to 100, found "
                + number
                + ". Correct it; the key says its unit.");
  }

  @Test
  void theEndsOfARangeAreAccepted() throws BadInput {
    String lines = "accuracy: {level-deg: 0, force-percent: 0.0, cop-mm: +100}\n";
    assertThat(Sheets.description(Sheets.DESCRIPTION + lines).accuracy().orElseThrow().copMm())
        .isEqualTo(100);
  }

  @Test
  void aValueOfAnotherShapeIsRefused() {
    assertThat(
            withLines(
                "axes: +x\nplates: {name: a}\nforce-is: [on the plate]\nmeasuring-lines: [rear]\n"))
        .containsExactly(
            "plate.yaml line 3, column 7: `axes`: expected keys with values, found something else."
                + " Write each `key: value` on its own line, indented under `axes`.",
            "plate.yaml line 4, column 9: `plates`: expected a list, found something else. Begin"
                + " each entry with a dash and a space, indented under `plates`.",
            "plate.yaml line 5, column 11: `force-is`: expected a single value, found a list or"
                + " further keys. Write one value after the colon.",
            "plate.yaml line 6, column 19: `measuring-lines`: expected keys with values, found"
                + " something else. Write each `key: value` on its own line, indented under"
                + " `measuring-lines`.");
  }

  @Test
  void aWordThatIsNoneOfTheChoicesIsRefused() {
    assertThat(withLines("force-is: On the  plate\n"))
        .containsExactly(
            "plate.yaml line 3, column 11: `force-is`: expected one of: on the person, on the"
                + " plate; found 'On the plate'. Write one of these words.");
  }

  @Test
  void aLongTextIsShownShortened() {
    assertThat(withLines("force-is: " + "x".repeat(61) + "\n"))
        .containsExactly(
            "plate.yaml line 3, column 11: `force-is`: expected one of: on the person, on the"
                + " plate; found '"
                + "x".repeat(60)
                + "...'. Write one of these words.");
  }

  @Test
  void problemsStopAtTheCap() {
    assertThat(withLines(manyKeys(BadInput.CAP + 1))).hasSize(BadInput.CAP);
    assertThat(withLines(manyKeys(BadInput.CAP - 1))).hasSize(BadInput.CAP - 1);
  }
}
