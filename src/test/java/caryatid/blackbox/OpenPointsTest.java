package caryatid.blackbox;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What nobody settled stays open in the record. */
class OpenPointsTest {
  @TempDir private Path folder;
  private Clinic clinic;
  private int minute;

  @BeforeEach
  void startRecord() {
    clinic = new Clinic(folder);
    clinic.record(
        "start",
        "K7-right",
        "--by",
        "AB",
        "--at",
        "2026-03-04T10:00+01:00",
        "wearer=K7",
        "side=right",
        "level=transtibial");
  }

  private Run add(String kind, String... said) {
    List<String> all = new ArrayList<>(List.of(kind, "--by", "AB", "--at"));
    minute++;
    all.add(String.format(java.util.Locale.ROOT, "2026-03-04T10:%02d+01:00", minute));
    all.addAll(Arrays.asList(said));
    Run run = clinic.record("add", "K7-right", all.toArray(String[]::new));
    assertThat(run.err()).isEmpty();
    return run;
  }

  private List<String> open() {
    return clinic
        .record("show", "K7-right")
        .out()
        .lines()
        .dropWhile(line -> !line.equals("What is open"))
        .skip(1)
        .map(String::strip)
        .toList();
  }

  @Test
  void aDeviationOfWalkingIsOpenUntilALaterWalkingIsWithoutIt() {
    add("walking", "observations[1].deviation=drop-off", "observations[2].deviation=limps");
    assertThat(open())
        .containsExactly(
            "Seen in walking: drop-off (entry 2). No later walking is without it, and nobody"
                + " accepted it.",
            "Seen in walking: limps (entry 2). No later walking is without it, and nobody accepted"
                + " it.");
    add("walking", "walking-aid=none", "observations[1].deviation=limps");
    assertThat(open()).hasSize(1).first().asString().contains("limps (entry 3)");
    add("accepted", "what=limps", "why=old habit", "entry=3");
    assertThat(open()).isEmpty();
  }

  @Test
  void anAcceptanceOfAnEntryThatIsNotThereIsRefused() {
    Run run =
        clinic.record("add", "K7-right", "accepted", "--by", "AB", "what=x", "why=y", "entry=7");
    assertThat(run.err())
        .isEqualTo(
            "K7-right: there is no entry 7 in this record. Show the record to see its entries.\n");
  }

  @Test
  void skinIsOpenUntilItIsNotedWithoutMarks() {
    add("walking", "skin=redness over the fibula head");
    assertThat(open())
        .containsExactly("Skin, as last noted (entry 2): redness over the fibula head");
    add("closing", "skin=No marks.");
    assertThat(open()).isEmpty();
    add("before-any-screw", "skin=blister");
    assertThat(open()).containsExactly("Skin, as last noted (entry 4): blister");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "none",
        "no marks",
        "keine Druckstellen",
        "unauffällig",
        "aucune rougeur",
        "sin marcas"
      })
  void skinWithoutMarksIsNotOpenInAnyLanguage(String said) {
    add("walking", "skin=" + said);
    assertThat(open()).isEmpty();
  }

  @Test
  void comfortThatFellIsOpenUntilItRises() {
    add("walking", "comfort=8");
    add("walking", "comfort=8");
    assertThat(open()).isEmpty();
    add("walking", "comfort=7");
    assertThat(open()).containsExactly("Comfort fell from 8 (entry 3) to 7 (entry 4).");
    add("walking", "comfort=9");
    assertThat(open()).isEmpty();
  }

  @Test
  void theSocketComfortScoreIsFollowedThroughAllEntriesThatHoldIt() {
    add("before-any-screw", "socket-comfort=6");
    add("walking", "socket-comfort=9");
    add("closing", "socket-comfort=5", "pain=3", "wearer-says=pinches behind", "minutes-stood=20");
    assertThat(open())
        .containsExactly("The socket comfort score fell from 9 (entry 3) to 5 (entry 4).");
    assertThat(clinic.record("show", "K7-right").out())
        .contains(
            "      socket comfort score, 0 to 10: 5\n"
                + "      pain, 0 to 10: 3\n"
                + "      in the wearer's words: pinches behind\n"
                + "      minutes stood: 20\n");
  }

  @Test
  void aScoreBeyondItsScaleIsRefused() {
    Run run = clinic.record("add", "K7-right", "closing", "--by", "AB", "socket-comfort=70");
    assertThat(run.err())
        .isEqualTo(
            "command line: socket-comfort: expected a number from 0 to 10, found 70. Give a"
                + " number in that range.\n");
  }

  @Test
  void theNextVisitIsOpenUntilItsDay() {
    add("closing", "next-visit=2026-03-18");
    assertThat(open()).containsExactly("Next visit: 2026-03-18 (entry 2)");
    visit("2026-03-17");
    assertThat(open()).hasSize(1);
    visit("2026-03-18");
    assertThat(open()).isEmpty();
  }

  private void visit(String day) {
    clinic.record(
        "add", "K7-right", "note", "--by", "AB", "--at", day + "T09:00+01:00", "text=came");
  }

  @Test
  void aDayThatIsNoneIsRefused() {
    Run run = clinic.record("add", "K7-right", "closing", "--by", "AB", "next-visit=18.3.26");
    assertThat(run.err())
        .isEqualTo(
            "command line: next-visit: expected a day, such as 2026-03-18, found \"18.3.26\".\n");
  }

  @Test
  void aSettingOtherThanRecommendedIsOpenUntilAReasonIsNoted() {
    add("bench-alignment", bench("3"));
    assertThat(open())
        .containsExactly(
            "ankle plantarflexion: set otherwise than recommended, and no reason is noted (entry"
                + " 2).");
    String[] reasoned = Arrays.copyOf(bench("3"), 5);
    reasoned[4] = "items[1].why=walks better";
    add("bench-alignment", reasoned);
    assertThat(open()).isEmpty();
    add("bench-alignment", bench("3"));
    assertThat(open()).isEmpty();
    add("bench-alignment", bench("4"));
    assertThat(open()).hasSize(1);
    add("accepted", "what=ankle", "why=for the boot", "entry=5");
    assertThat(open()).isEmpty();
  }

  @Test
  void aShoeIsOpenUntilSomebodyStoodInIt() {
    add("footwear", "shoes[1].shoe=Boot", "shoes[1].heel-height-mm=15");
    assertThat(open()).containsExactly("No stand is named for the shoe \"Boot\" (entry 2).");
    add("stand", "footwear=boot");
    assertThat(open()).isEmpty();
  }

  private static String[] bench(String set) {
    return new String[] {
      "items[1].item=ankle plantarflexion",
      "items[1].recommended=2",
      "items[1].set=" + set,
      "items[1].unit=deg"
    };
  }
}
