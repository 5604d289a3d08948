package caryatid.sheet;

import static caryatid.sheet.Sheets.SHEET;
import static caryatid.sheet.Sheets.problemsOfSheet;
import static caryatid.sheet.Sheets.replaced;
import static caryatid.sheet.Sheets.replacing;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** What is refused in the landmarks of a trial sheet, and in which words. */
class BadLandmarkTest {
  private static final String KNEE = "  - name: knee centre\n";

  private static final String FORWARD = "    forward-mm: 340\n";

  private static final String ONE_FOOT = "kind: prosthetic foot on plate";

  @Test
  void aSheetWithoutALandmarkIsRefused() {
    int landmarks = SHEET.indexOf("landmarks:");
    assertThat(problemsOfSheet(SHEET.substring(0, landmarks) + "landmarks: []\n"))
        .containsExactly(
            "sheet.yaml line 10, column 12: the sheet has no landmark, so there is nothing to"
                + " measure the load line from. Add at least one under `landmarks`.");
  }

  @Test
  void aLandmarkHasAKnownNameOrIsAnother() {
    assertThat(replacing(KNEE, "  - name: knee center\n"))
        .containsExactly(
            "sheet.yaml line 11, column 11: 'knee center' is not one of the landmarks the program"
                + " knows; did you mean 'knee centre'? If it is another point, add `kind: other`.");
    assertThat(replacing(KNEE, "  - name: collar\n"))
        .containsExactly(
            "sheet.yaml line 11, column 11: 'collar' is not one of the landmarks the program knows:"
                + " knee centre, ankle axis, foot reference point, hip, socket reference point,"
                + " outer patellar border, lateral patellar border. Use one of these names, or add"
                + " `kind: other`.");
    assertThat(replacing(KNEE, KNEE + "    kind: other\n"))
        .containsExactly(
            "sheet.yaml line 12, column 11: 'knee centre' is a landmark the program knows, so it"
                + " cannot be `kind: other`. Delete `kind`, or choose another name.");
    assertThat(replacing(KNEE, "  - name: collar\n    kind: knee\n"))
        .containsExactly(
            "sheet.yaml line 12, column 11: `kind`: expected one of: other; found 'knee'. Write one"
                + " of these words.");
  }

  @Test
  void aLandmarkNeedsItsMarking() {
    assertThat(replacing("    marking-mm: 3\n", ""))
        .containsExactly(
            "sheet.yaml line 11, column 5: `marking-mm` is missing. Add the line `marking-mm: ...`"
                + " here.");
  }

  @Test
  void aMomentOfReadingIsFrom0To3600Seconds() {
    String up = "    up-mm: 492\n";
    assertThat(replacing(up, up + "    read-at-s: -0.1\n"))
        .containsExactly(
            "sheet.yaml line 14, column 16: `read-at-s`: expected a number from 0 to 3600, found"
                + " -0.1. Correct it; the key says its unit.");
    assertThat(replacing(up, up + "    read-at-s: [4, 3600.1]\n"))
        .containsExactly(
            "sheet.yaml line 14, column 20: `read-at-s`: expected a number from 0 to 3600, found"
                + " 3600.1. Correct it; the key says its unit.");
  }

  @Test
  void aLandmarkMeasuredFromAnotherIsReadAtNoMomentOfItsOwn() {
    String from = "    forward-of-landmark-mm: 3\n    landmark: hip\n    read-at-s: 4\n";
    assertThat(replacing(FORWARD, from))
        .containsExactly(
            "sheet.yaml line 14, column 16: `read-at-s` goes with a landmark that is measured from"
                + " a line, not with one that is measured from another landmark. Leave one of them"
                + " out.");
  }

  @Test
  void aLandmarkNeedsADistance() {
    assertThat(replacing(FORWARD, ""))
        .containsExactly(
            "sheet.yaml line 11, column 5: the landmark has no distance. Add `forward-mm` for the"
                + " sagittal plane, `rightward-mm` for the frontal plane, or both.");
  }

  @Test
  void aDistanceIsMeasuredInOneWay() {
    assertThat(replacing(FORWARD, FORWARD + "    forward-of-landmark-mm: 3\n    landmark: hip\n"))
        .containsExactly(
            "sheet.yaml line 13, column 29: `forward-mm` and `forward-of-landmark-mm` are both"
                + " given. Keep the one that was measured.");
    assertThat(replacing(FORWARD, FORWARD + "    rightward-from: midline\n"))
        .containsExactly(
            "sheet.yaml line 13, column 21: `rightward-from` belongs to `rightward-mm`, which is"
                + " missing here. Add the distance, or delete `rightward-from`.");
  }

  @Test
  void aDistanceFromALandmarkNamesItAndTheOtherWayRound() {
    assertThat(replacing(FORWARD, "    forward-of-landmark-mm: 3\n"))
        .containsExactly(
            "sheet.yaml line 11, column 5: a distance from another landmark is given, but not which"
                + " landmark. Add `landmark: ` with that landmark's name.");
    assertThat(replacing(FORWARD, FORWARD + "    landmark: hip\n"))
        .containsExactly(
            "sheet.yaml line 13, column 15: `landmark` says what was measured from, but no distance"
                + " from it is given. Add `forward-of-landmark-mm` or `rightward-of-landmark-mm`,"
                + " or delete `landmark`.");
  }

  @Test
  void aLandmarkIsMeasuredFromOneThatIsThere() {
    assertThat(replacing(FORWARD, "    forward-of-landmark-mm: 3\n    landmark: hip\n"))
        .containsExactly(
            "sheet.yaml line 11, column 5: the landmark 'knee centre' is measured from 'hip', which"
                + " is not in the sheet on that side. Correct the name after `landmark`, or add"
                + " that landmark.");
    assertThat(replacing(FORWARD, "    forward-of-landmark-mm: 3\n    landmark: knee center\n"))
        .containsExactly(
            "sheet.yaml line 11, column 5: the landmark 'knee centre' is measured from 'knee"
                + " center', which is not in the sheet on that side; did you mean 'knee centre'?");
  }

  @Test
  void noLandmarkIsMeasuredFromItself() {
    assertThat(replacing(FORWARD, "    forward-of-landmark-mm: 3\n    landmark: knee centre\n"))
        .containsExactly(
            "sheet.yaml line 11, column 5: the landmark 'knee centre' is measured from 'knee"
                + " centre', which in the end is measured from 'knee centre' itself. Measure one of"
                + " them from a line.");
  }

  @Test
  void sidesFitTheProsthesis() {
    assertThat(replacing(KNEE, KNEE + "    side: left\n"))
        .containsExactly(
            "sheet.yaml line 12, column 11: the side is left, but the sheet gives the other side as"
                + " the prosthetic one. Correct this `side`, or the one at the top.");
    String both =
        replaced("side: right", "side: both")
            .replace(ONE_FOOT, "kind: both feet on one plate")
            .replace("other-foot: {on: block, height-difference-mm: 0}\n", "");
    assertThat(problemsOfSheet(both))
        .containsExactly(
            "sheet.yaml line 10, column 5: with two prostheses each landmark and target needs its"
                + " side. Add `side: left` or `side: right`.",
            "sheet.yaml line 15, column 5: with two prostheses each landmark and target needs its"
                + " side. Add `side: left` or `side: right`.");
  }
}
