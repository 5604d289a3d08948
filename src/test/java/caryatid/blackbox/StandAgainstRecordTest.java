package caryatid.blackbox;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.blackbox.Fitting.Kind;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a stand's record knows is asked about before there is a result. */
class StandAgainstRecordTest {
  @TempDir private Path folder;

  private Fitting started() {
    return Fitting.of(folder, Kind.K7).start();
  }

  /** A record with one stand, and the files of another one, later on the same day. */
  private Fitting standing() {
    Fitting fitting = started();
    assertThat(fitting.keep().err()).isEmpty();
    return fitting.recordAgain().sheet("^at: (.*)T\\d\\d:", "at: $1T17:");
  }

  private static void foot(Fitting fitting, String limit) {
    Run added =
        fitting.add(
            "components",
            "components[1].what=foot",
            "components[1].name=demo foot",
            "components[1]." + limit);
    assertThat(added.err()).isEmpty();
  }

  private static void beyond(Fitting fitting, String answer) {
    Run asked = fitting.keep();
    assertThat(asked.code()).isEqualTo(1);
    assertThat(asked.err()).contains("as-meant: ['beyond limit: " + answer + "']");
  }

  private void leadsTheReport(Fitting fitting, String answer) {
    leadsTheReport(fitting, answer, "");
  }

  private void leadsTheReport(Fitting fitting, String answer, String more) {
    fitting.line("as-meant: ['beyond limit: " + answer + "'" + more + "]");
    Run kept = fitting.keep("--forms", "html");
    assertThat(kept.err()).isEmpty();
    String page = fitting.read("out/stand-report.html");
    assertThat(page.indexOf(answer)).isPositive().isLessThan(page.indexOf("tolerance met"));
  }

  @Test
  void aBodyMassAboveALimitIsAskedAndLeadsTheStandsOwnPage() {
    Fitting fitting = started();
    foot(fitting, "body-mass-highest-kg=81.9");
    beyond(fitting, "demo foot, up to 82 kg, allowed 81.9 kg");
    leadsTheReport(fitting, "demo foot, up to 82 kg, allowed 81.9 kg");
  }

  @Test
  void aBodyMassAtALimitIsNotAsked() {
    Fitting fitting = started();
    foot(fitting, "body-mass-highest-kg=82");
    assertThat(fitting.keep().err()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"19, false", "20, true", "21, true"})
  void aHeelOutsideTheLimitsIsAsked(int heelMm, boolean allowed) {
    Fitting fitting = started();
    foot(fitting, "heel-height-lowest-mm=20");
    fitting.sheet("^footwear: .*", "footwear: {worn: shoe, heel-height-mm: " + heelMm + "}");
    if (allowed) {
      assertThat(fitting.keep().err()).isEmpty();
    } else {
      beyond(fitting, "demo foot, heel 19 mm");
    }
  }

  @Test
  void anOwnSettingBeyondTheLimitsIsSaidAtOnceStaysOpenAndLeadsTheStandsOwnPage() {
    Fitting fitting = started();
    foot(fitting, "heel-height-highest-mm=20");
    Run set = ownHeel(fitting, 30);
    String range =
        "demo foot: the wearer set it to a heel of 30.0 mm, but its maker gives it for 0.0 mm to"
            + " 20.0 mm.";
    assertThat(set.out()).contains(range);
    assertThat(fitting.record("show").out()).contains(range);
    beyond(fitting, "demo foot, set to heel 30 mm");
    leadsTheReport(fitting, "demo foot, set to heel 30 mm", ", 'heel 0 mm, ankle set for 30 mm'");
  }

  @Test
  void anOwnSettingThatIsWithinTheLimitsAgainIsNotAsked() {
    Fitting fitting = started();
    foot(fitting, "heel-height-highest-mm=20");
    ownHeel(fitting, 30);
    ownHeel(fitting, 20);
    fitting.sheet("^footwear: .*", "footwear: {worn: shoe, heel-height-mm: 20}");
    assertThat(fitting.keep().err()).isEmpty();
  }

  /** Both sides of 3 mm. */
  @ParameterizedTest
  @CsvSource({"3, false", "4, true", "12, true"})
  void anAnkleThatWasLastSetForAnotherHeelIsAsked(int heelMm, boolean asked) {
    Fitting fitting = started();
    ownHeel(fitting, heelMm);
    assertThat(fitting.keep().err().replace('\u00a0', ' '))
        .isEqualTo(
            asked
                ? "sheet.yaml: the footwear has a heel of 0.0 mm, but the ankle was last set for "
                    + heelMm
                    + ".0 mm (entry 2): has it been set since? Set it and note that in the record"
                    + " first; if the wearer is meant to stand like this, add to the sheet:"
                    + " as-meant: ['heel 0 mm, ankle set for "
                    + heelMm
                    + " mm']\n"
                : "");
  }

  @Test
  void aShoeThatHasAnotherHeelInTheRecordIsAsked() {
    Fitting fitting = started();
    Run shoe = fitting.add("footwear", "shoes[1].shoe=low shoe", "shoes[1].heel-height-mm=12");
    assertThat(shoe.err()).isEmpty();
    fitting.sheet("^footwear: .*", "footwear: {worn: Low shoe, heel-height-mm: 21}");
    assertThat(fitting.keep().err().replace('\u00a0', ' '))
        .isEqualTo(
            "sheet.yaml: the sheet gives Low shoe a heel of 21.0 mm, but entry 2 says 12.0 mm:"
                + " which is right? Correct it, or the entry; if it is right, add to the sheet:"
                + " as-meant: ['heel 21 mm, entry 2']\n");
  }

  private static Run ownHeel(Fitting fitting, int heelMm) {
    Run run =
        fitting.add(
            "own-setting",
            "what=ankle",
            "attempts=1",
            "succeeded=1",
            "heel-height-set-mm=" + heelMm);
    assertThat(run.err()).isEmpty();
    return run;
  }

  @Test
  void heightsThatStayedAlthoughTheHeelIsAnotherAreAsked() {
    Fitting fitting =
        standing().sheet("^footwear: .*", "footwear: {worn: boot, heel-height-mm: 40}");
    Run asked = fitting.keep();
    assertThat(asked.code()).isEqualTo(1);
    assertThat(asked.err())
        .contains(
            "sheet.yaml: the landmark 'ankle axis' is at 82.0 mm as in entry 2, although the heel"
                + " was 0.0 mm then and is 40.0 mm now: was it measured again? Correct it; if it"
                + " is right, add to the sheet: as-meant: ['ankle axis height']\n");
    fitting.sheet("up-mm: 82", "up-mm: 112").sheet("up-mm: 492", "up-mm: 522");
    assertThat(fitting.keep().err()).doesNotContain("ankle axis height", "knee centre height");
  }

  /**
   * A mark that was moved moves the offset as much. Recorded between the stands: nothing, 4 mm, 20
   * mm; the largest jump that each explains is 30 mm and one and a half times that.
   */
  @ParameterizedTest
  @CsvSource({
    "none, 211, false",
    "none, 186, true",
    "foot moved 4 mm to the rear, 186, true",
    "foot moved 20 mm to the rear, 186, false",
    "foot exchanged, 186, false"
  })
  void anOffsetThatJumpsByMoreThanTheChangeExplainsIsAsked(
      String changed, int forwardMm, boolean asked) {
    Fitting fitting = standing().sheet("forward-mm: 231", "forward-mm: " + forwardMm);
    if (!changed.equals("foot moved 4 mm to the rear")) {
      fitting.sheet("last-change: .*", "last-change: " + changed);
    }
    String err = fitting.keep().err();
    if (asked) {
      assertThat(err)
          .startsWith("sheet.yaml: the offset at 'ankle axis' (sagittal) was ")
          .contains(", more than the changes in between explain: ")
          .endsWith("add to the sheet: as-meant: ['jump of ankle axis']\n");
    } else {
      assertThat(err).isEmpty();
    }
  }

  /** Both sides of each limit; 0 says that a fastener is not secured. */
  @ParameterizedTest
  @CsvSource({
    "0, added",
    "0.49, refused",
    "0.5, asked",
    "2.9, asked",
    "3, added",
    "30, added",
    "30.1, asked",
    "100, asked",
    "100.1, refused"
  })
  void aTorqueThatCanHardlyBeIsAskedAndOneThatCannotIsRefused(String set, String outcome) {
    Run run = torque(started(), set);
    switch (outcome) {
      case "added" -> assertThat(run.err()).isEmpty();
      case "asked" ->
          assertThat(run.err())
              .isEqualTo(
                  "bench-alignment: items[1].set is "
                      + (set.contains(".") ? set : set + ".0")
                      + " N m, outside 3.0 N m to 30.0 N m: are number and unit right? Correct it;"
                      + " if it is right, say why and add: items[1].why=why it is so\n");
      default ->
          assertThat(run.err())
              .matches(
                  "bench-alignment: items\\[1\\].set: expected 0.50? N m to 100.00? N m, found"
                      + " .*\n");
    }
    assertThat(run.code()).isEqualTo(outcome.equals("added") ? 0 : 1);
  }

  @Test
  void aReasonAnswersATorqueThatIsAsked() {
    assertThat(torque(started(), "2", "items[1].why=plastic screw").err()).isEmpty();
  }

  private static Run torque(Fitting fitting, String set, String... more) {
    String[] all = {
      "items[1].item=fasteners secured to torque",
      "items[1].fastener=tube clamp",
      "items[1].set=" + set,
      "items[1].unit=Nm",
      more.length > 0 ? more[0] : "note=demo"
    };
    return fitting.add("bench-alignment", all);
  }
}
