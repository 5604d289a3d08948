package caryatid.sheet;

import static caryatid.sheet.Sheets.SHEET;
import static caryatid.sheet.Sheets.problemsOfSheet;
import static caryatid.sheet.Sheets.replaced;
import static caryatid.sheet.Sheets.replacing;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is refused in a trial sheet, and in which words. */
class BadSheetTest {
  private static final String KNEE = "  - name: knee centre\n";

  private static final String ONE_FOOT = "kind: prosthetic foot on plate";

  @Test
  void landmarkForLandmarksIsUnderstood() {
    assertThat(replacing("landmarks:", "landmark:"))
        .containsExactly(
            "sheet.yaml line 10, column 1: unknown key `landmark`; did you mean `landmarks`?");
  }

  @Test
  void everythingMissingIsSaidAtOnce() {
    assertThat(problemsOfSheet("trial-sheet: 1\n"))
        .containsExactly(
            "sheet.yaml: `wearer` is missing. Add the line `wearer: ...` here.",
            "sheet.yaml: `at` is missing. Add the line `at: ...` here.",
            "sheet.yaml: `side` is missing. Add the line `side: ...` here.",
            "sheet.yaml: `level` is missing. Add the line `level: ...` here.",
            "sheet.yaml: `stance` is missing. Add the line `stance: ...` here.",
            "sheet.yaml: `hands` is missing. Add the line `hands: ...` here.",
            "sheet.yaml: `footwear` is missing. Add the line `footwear: ...` here.",
            "sheet.yaml: `landmarks` is missing. Add the line `landmarks: ...` here.");
  }

  @Test
  void problemsStandInTheOrderOfTheFile() {
    String sheet =
        replaced("hands: free", "hands: up").replace("side: right", "side: middle")
            + "color: red\n";
    assertThat(problemsOfSheet(sheet))
        .containsExactly(
            "sheet.yaml line 4, column 7: `side`: expected one of: left, right, both; found"
                + " 'middle'. Write one of these words.",
            "sheet.yaml line 8, column 8: `hands`: expected one of: free, touching, holding; found"
                + " 'up'. Write one of these words.",
            "sheet.yaml line 22, column 1: unknown key `color`. Keys allowed here:"
                + " trial-sheet, based-on, wearer, at, side, level, body-mass-kg, stance,"
                + " other-foot, hands, knee, ankle-axis, components, footwear, stance-width-mm,"
                + " toe-out-deg, minutes-walked, measured, landmarks, targets, confirmed,"
                + " left-out, stretches, doubts, decision-rule, limits, as-meant, notes.");
  }

  @Test
  void aStretchNamesItsRecordingOnceAndHasTimesInOrder() {
    String stretches =
        """
        stretches:
          - {recording: a.csv, from-s: 3}
          - {recording: a.csv, to-s: 9}
          - {recording: b.csv}
          - {recording: c.csv, from-s: 9, to-s: 9}
          - {from-s: 3}
        """;
    assertThat(problemsOfSheet(SHEET + stretches))
        .containsExactly(
            "sheet.yaml line 24, column 5: a stretch for 'a.csv' is already given above. Delete one"
                + " of the two.",
            "sheet.yaml line 25, column 5: neither `from-s` nor `to-s` is given. Write one or both,"
                + " or delete the entry.",
            "sheet.yaml line 26, column 41: `to-s` is not after `from-s`. Correct one of the two.",
            "sheet.yaml line 27, column 5: `recording` is missing. Add the line `recording: ...`"
                + " here.");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"2026-03-04T10:15", "2026-03-04", "04.03.2026 10:15", "2026-02-30T10:15Z"})
  void aTimeNeedsItsOffset(String time) {
    assertThat(replacing("2026-03-04T10:15+01:00", time))
        .containsExactly(
            "sheet.yaml line 3, column 5: `at`: expected date, time and offset from UTC such as"
                + " 2026-03-04T10:15+01:00, found '"
                + time
                + "'. Write it in that form.");
  }

  @Test
  void aMassFarFromAPersonsIsRefused() {
    assertThat(problemsOfSheet(SHEET + "body-mass-kg: 820\n"))
        .containsExactly(
            "sheet.yaml line 22, column 15: `body-mass-kg`: expected a number from 2 to 500, found"
                + " 820. Correct it; the key says its unit.");
  }

  @Test
  void withTwoProsthesesTheProstheticFootIsNotOneFoot() {
    String both =
        replaced("side: right", "side: both")
            .replace(KNEE, KNEE + "    side: left\n")
            .replace("- plane: sagittal\n", "- plane: sagittal\n    side: left\n");
    assertThat(problemsOfSheet(both))
        .containsExactly(
            "sheet.yaml line 6, column 16: with two prostheses, 'prosthetic foot on plate' does not"
                + " say which foot. Use 'one plate per foot' or 'both feet on one plate'.");
  }

  @Test
  void aStanceNeedsItsKind() {
    assertThat(replacing(ONE_FOOT, "plate: a"))
        .containsExactly(
            "sheet.yaml line 6, column 9: `kind` is missing. Add the line `kind: ...` here.");
  }

  @Test
  void twoFeetDoNotStandOnOnePlateEach() {
    assertThat(
            replacing(
                ONE_FOOT + "}\nother-foot: {on: block, height-difference-mm: 0}",
                "kind: one plate per foot, left: a, right: a}"))
        .containsExactly(
            "sheet.yaml line 6, column 52: both feet are given the plate 'a'. Name a plate for"
                + " each foot, or use the stance 'both feet on one plate'.");
  }

  @Test
  void theOtherFootIsRequiredBesideThePlateAndRefusedOnIt() {
    assertThat(replacing("other-foot: {on: block, height-difference-mm: 0}\n", ""))
        .containsExactly(
            "sheet.yaml: `other-foot` is missing. Add the line `other-foot: ...` here.");
    assertThat(replacing(ONE_FOOT, "kind: both feet on one plate"))
        .containsExactly(
            "sheet.yaml line 7, column 13: `other-foot` is only for the stance 'prosthetic foot on"
                + " plate'; here both feet are on a plate. Delete it.");
  }

  @Test
  void whatToLookAtBelongsToTheTargetsPlane() {
    assertThat(problemsOfSheet(SHEET + "    too-far-lateral: the foot's place\n"))
        .containsExactly(
            "sheet.yaml line 22, column 22: `too-far-lateral` does not belong to the plane of this"
                + " target. Sagittal targets have `too-far-anterior` and `too-far-posterior`,"
                + " frontal ones `too-far-medial` and `too-far-lateral`.");
  }

  @Test
  void aPolycentricKneesAxisHasToBeNamed() {
    String sheet = SHEET.replace("transtibial", "transfemoral");
    String knee = "knee: {locked: no, polycentric: yes}\n";
    assertThat(problemsOfSheet(sheet + knee))
        .containsExactly(
            "sheet.yaml line 11, column 3: the knee has several axes and the sheet does not say"
                + " which one was marked. Add `is: ` at the knee centre with the axis that the"
                + " cited document names.");
    String named = sheet.replace("    marking-mm: 3\n", "    marking-mm: 3\n    is: upper axis\n");
    assertThat(problemsOfSheet(named + knee)).isEmpty();
    assertThat(problemsOfSheet(sheet + "knee: {locked: no, polycentric: no}\n")).isEmpty();
  }

  @Test
  void theKneeIsRequiredWhereThereIsOneAndRefusedElsewhere() {
    assertThat(replacing("transtibial", "knee disarticulation"))
        .containsExactly("sheet.yaml: `knee` is missing. Add the line `knee: ...` here.");
    assertThat(problemsOfSheet(SHEET + "knee: {locked: no}\n"))
        .containsExactly(
            "sheet.yaml line 22, column 7: `knee` is for levels with a prosthetic knee; this one is"
                + " transtibial. Delete it, or correct `level`.");
  }

  @Test
  void nothingStandsTwice() {
    int landmark = SHEET.indexOf(KNEE);
    int targets = SHEET.indexOf("targets:");
    int target = SHEET.indexOf("  - plane");
    String twice =
        SHEET.substring(0, targets)
            + SHEET.substring(landmark, targets)
            + SHEET.substring(targets)
            + SHEET.substring(target);
    assertThat(problemsOfSheet(twice))
        .containsExactly(
            "sheet.yaml line 15, column 5: the landmark 'knee centre' is given twice on the same"
                + " side. Delete one, or give it another name with `kind: other`.",
            "sheet.yaml line 26, column 5: a target for 'knee centre' in the same plane and on the"
                + " same side is already given above. Delete one of the two.");
  }

  @Test
  void aTargetNeedsItsSource() {
    assertThat(replacing("    source: Instructions, section 5\n", ""))
        .containsExactly(
            "sheet.yaml line 16, column 5: the target has no source. Add `source: ` with the"
                + " document and section the recommendation comes from.");
    assertThat(replacing("source: Instructions, section 5", "source:"))
        .containsExactly(
            "sheet.yaml line 21, column 12: `source` has no value. Write one after the colon, or"
                + " leave the line out.");
  }

  @Test
  void aTargetNeedsATolerance() {
    assertThat(replacing("below-mm: 10\n    above-mm: 10", "below-mm: 0\n    above-mm: 0"))
        .containsExactly(
            "sheet.yaml line 20, column 15: `below-mm` and `above-mm` are both 0; no measurement"
                + " can meet that. Write the tolerance the source gives.");
    assertThat(replacing("below-mm: 10", "below-mm: -1"))
        .containsExactly(
            "sheet.yaml line 19, column 15: `below-mm`: expected a number from 0 to 1000, found -1."
                + " Correct it; the key says its unit.");
  }

  @Test
  void aTargetIsForALandmarkThatWasMeasuredInItsPlane() {
    assertThat(replacing("    landmark: knee centre", "    landmark: hip"))
        .containsExactly(
            "sheet.yaml line 16, column 5: the target is for the landmark 'hip', right, which is"
                + " not in the sheet. Add it under `landmarks`, or correct the name.");
    assertThat(replacing("    landmark: knee centre", "    landmark: knee-centre"))
        .containsExactly(
            "sheet.yaml line 16, column 5: the target is for the landmark 'knee-centre', right,"
                + " which is not in the sheet; did you mean 'knee centre'?");
    assertThat(replacing("plane: sagittal", "plane: frontal"))
        .containsExactly(
            "sheet.yaml line 16, column 5: the target is frontal, but the landmark 'knee centre'"
                + " was not measured in that plane. Add `forward-mm` (sagittal) or `rightward-mm`"
                + " (frontal) to the landmark.");
  }
}
