package caryatid.sheet;

import static caryatid.sheet.Sheets.SHEET;
import static caryatid.sheet.Sheets.problemsOfSheet;
import static org.assertj.core.api.Assertions.assertThat;

import caryatid.loadline.Target;
import caryatid.remark.BadInput;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What a sheet takes over from an earlier one. */
class EarlierSheetMergeTest {
  private static final Map<String, String> EARLIER = Map.of("first.yaml", SHEET);
  private static final String BARE = SHEET.substring(0, SHEET.indexOf("landmarks:"));
  private static final String BASED = BARE + "based-on: first.yaml\n";
  private static final String NEW_KNEE =
      "landmarks:\n  - {name: knee centre, forward-mm: 300, up-mm: 490, marking-mm: 2}\n";

  @Test
  void confirmedLandmarksAndTargetsAreTakenOver() throws BadInput {
    TrialSheet first = Sheets.sheet(SHEET);
    TrialSheet second = Sheets.sheet(BASED + "confirmed: [knee centre]\n", EARLIER);
    assertThat(second.landmarks()).isEqualTo(first.landmarks());
    assertThat(second.targets()).isEqualTo(first.targets());
  }

  @Test
  void nothingElseIsTakenOver() throws BadInput {
    Map<String, String> earlier =
        Map.of("first.yaml", SHEET + "minutes-walked: 5\nnotes: {comfort: good}\n");
    TrialSheet second = Sheets.sheet(BASED + "confirmed: [knee centre]\n", earlier);
    assertThat(second.minutesWalked()).isEmpty();
    assertThat(second.notes().comfort()).isEmpty();
  }

  @Test
  void aLandmarkGivenAnewReplacesTheEarlierOne() throws BadInput {
    TrialSheet second = Sheets.sheet(BASED + NEW_KNEE, EARLIER);
    assertThat(second.landmarks()).extracting(LandmarkEntry::upMm).containsExactly(490.0);
    assertThat(second.targets()).hasSize(1);
  }

  @Test
  void aTargetGivenAnewReplacesTheEarlierOneOfThatPlaneAndLandmark() throws BadInput {
    String target =
        "targets:\n  - {plane: sagittal, landmark: knee centre, recommended-mm: 20, below-mm: 5,"
            + " above-mm: 5, source: Letter}\n";
    TrialSheet second = Sheets.sheet(BASED + "confirmed: [knee centre]\n" + target, EARLIER);
    assertThat(second.targets()).extracting(Target::recommendedMm).containsExactly(20.0);
  }

  @Test
  void sheetsMayBeBasedOnEachOtherInARow() throws BadInput {
    Map<String, String> chain =
        Map.of("first.yaml", SHEET, "second.yaml", BASED + "confirmed: [knee centre]\n");
    TrialSheet third =
        Sheets.sheet(BARE + "based-on: second.yaml\nconfirmed: [knee centre]\n", chain);
    assertThat(third.landmarks()).hasSize(1);
    assertThat(third.targets()).hasSize(1);
  }

  @Test
  void aLandmarkThatIsNeitherConfirmedNorGivenAnewIsRefused() {
    assertThat(problemsOfSheet(BASED, EARLIER))
        .containsExactly(
            "sheet.yaml line 10, column 11: the landmark 'knee centre' comes from an earlier sheet,"
                + " and landmarks move when the wearer steps off. Check it, then name it in"
                + " `confirmed`, or measure it again and write it under `landmarks`. If it no"
                + " longer holds, name it in `left-out`.");
  }

  @Test
  void aLandmarkThatNoLongerHoldsIsLeftOutWithItsTargets() throws BadInput {
    String hip = NEW_KNEE.replace("knee centre", "hip");
    TrialSheet second = Sheets.sheet(BASED + "left-out: [knee centre]\n" + hip, EARLIER);
    assertThat(second.landmarks()).extracting(LandmarkEntry::name).containsExactly("hip");
    assertThat(second.targets()).isEmpty();
  }

  @Test
  void leavingOutIsForLandmarksOfTheEarlierSheetThatAreNotGiven() {
    assertThat(problemsOfSheet(SHEET + "left-out: [knee centre]\n"))
        .containsExactly(
            "sheet.yaml line 22, column 11: `left-out` is for landmarks from an earlier sheet, but"
                + " there is no `based-on`. Delete `left-out`, or add `based-on`.");
    assertThat(problemsOfSheet(BASED + "confirmed: [knee centre]\nleft-out: [hip]\n", EARLIER))
        .containsExactly(
            "sheet.yaml line 12, column 12: 'hip' is left out, but the sheet it is based on has no"
                + " such landmark. Correct the name, or delete it here.");
    String both =
        "sheet.yaml line %s, column 12: 'knee centre' is left out, but also confirmed or listed"
            + " under `landmarks`. Keep the correct one.";
    assertThat(
            problemsOfSheet(BASED + "confirmed: [knee centre]\nleft-out: [knee centre]\n", EARLIER))
        .containsExactly(both.formatted("12"));
    assertThat(problemsOfSheet(BASED + "left-out: [knee centre]\n" + NEW_KNEE, EARLIER))
        .containsExactly(both.formatted("11"));
  }

  @Test
  void confirmingIsForLandmarksOfTheEarlierSheet() {
    assertThat(problemsOfSheet(SHEET + "confirmed: [knee centre]\n"))
        .containsExactly(
            "sheet.yaml line 22, column 12: `confirmed` is for landmarks from an earlier sheet, but"
                + " there is no `based-on`. Delete `confirmed`, or add `based-on`.");
    assertThat(problemsOfSheet(BASED + "confirmed: [knee centre, hip]\n", EARLIER))
        .containsExactly(
            "sheet.yaml line 11, column 26: 'hip' is confirmed, but the sheet it is based on has no"
                + " such landmark. Correct the name, or delete it here.");
    assertThat(problemsOfSheet(BASED + "confirmed: [knee centre]\n" + NEW_KNEE, EARLIER))
        .containsExactly(
            "sheet.yaml line 11, column 13: 'knee centre' is both confirmed and listed"
                + " under `landmarks`. Keep the correct one.");
  }

  @Test
  void aMissingEarlierSheetIsRefused() {
    assertThat(problemsOfSheet(BASED))
        .containsExactly(
            "sheet.yaml line 10, column 11: there is no file 'first.yaml' in this"
                + " sheet's folder. Correct the name, or write targets and landmarks here and"
                + " delete `based-on`.");
  }

  @Test
  void sheetsBasedOnEachOtherInACircleAreRefused() {
    Map<String, String> circle =
        Map.of("first.yaml", BARE + "based-on: second.yaml\n", "second.yaml", BASED);
    assertThat(problemsOfSheet(BASED, circle))
        .containsExactly(
            "second.yaml line 10, column 11: 'first.yaml' is itself based on this sheet, so neither"
                + " gives the values. Delete one of the two `based-on`.");
  }

  @Test
  void problemsOfTheEarlierSheetFollowWithItsName() {
    Map<String, String> earlier = Map.of("first.yaml", SHEET.replace("hands: free", "hands: up"));
    assertThat(problemsOfSheet(BASED + "minutes-walked: -1\n", earlier))
        .containsExactly(
            "sheet.yaml line 11, column 17: `minutes-walked`: expected a number from 0 to 100000,"
                + " found -1. Correct it; the key says its unit.",
            "first.yaml line 8, column 8: `hands`: expected one of: free, touching, holding; found"
                + " 'up'. Write one of these words.");
  }

  @Test
  void theEarlierSheetIsOfTheSameWearerAndSide() {
    String other = BASED.replace("K7", "K8").replace("side: right", "side: left");
    assertThat(problemsOfSheet(other + "confirmed: [knee centre]\n", EARLIER))
        .containsExactly(
            "sheet.yaml line 10, column 11: the sheet it is based on is for another wearer, K7."
                + " Correct `based-on` or `wearer`.",
            "sheet.yaml line 10, column 11: the sheet it is based on is for another prosthetic"
                + " side, right. Correct `based-on` or `side`.");
  }
}
