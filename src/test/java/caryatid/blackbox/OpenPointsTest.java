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
  private Clinic.Minutes clinic;

  @BeforeEach
  void startRecord() {
    clinic = new Clinic.Minutes(folder);
  }

  private Run add(String kind, String... said) {
    Run run = clinic.add(kind, said);
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
        .takeWhile(line -> !line.isEmpty())
        .map(String::strip)
        .toList();
  }

  /** What is open and what is set now are what a colleague looks for first. */
  @Test
  void whatIsOpenAndWhatIsSetComeBeforeTheTimeline() {
    add(
        "bench-alignment",
        "items[1].item=ankle plantarflexion",
        "items[1].set=3",
        "items[1].unit=deg");
    add("closing", "next-visit=2026-03-18");
    assertThat(clinic.record("show", "K7-right").out())
        .containsSubsequence(
            "What is open\n",
            "  Next visit: 2026-03-18 (entry 3)\n",
            "Set now\n  ankle plantarflexion: 3 deg (entry 2)\n",
            "Timeline\n",
            "   1  ");
  }

  private static final String ABOVE = "Nothing else.";
  private static final String NOTHING = "No open items.";

  private static String seen(String deviation, int entry) {
    return "Seen in walking: %s (entry %d). Since then it was neither noted as gone nor accepted."
        .formatted(deviation, entry);
  }

  /** Not to be named is not to be gone. */
  @Test
  void aDeviationOfWalkingIsOpenUntilItIsSeenToBeGone() {
    add("walking", "observations[1].deviation=drop-off", "observations[2].deviation=limps");
    assertThat(open()).containsExactly(seen("drop-off", 2), seen("limps", 2));
    add("walking", "walking-aid=none");
    assertThat(open()).containsExactly(seen("drop-off", 2), seen("limps", 2));
    add("walking", "observations[1].deviation=limps");
    assertThat(open()).containsExactly(seen("drop-off", 2), seen("limps", 4));
    add("walking", "observations[1].deviation=Drop-off", "observations[1].severity=none");
    assertThat(open()).containsExactly(seen("limps", 4));
    add("accepted", "what=limps", "why=old habit", "entry=4");
    assertThat(open()).containsExactly(NOTHING);
    add("walking", "observations[1].deviation=limps");
    assertThat(open()).containsExactly(seen("limps", 7));
  }

  @ParameterizedTest
  @ValueSource(strings = {"none", "Nothing seen", "no deviations", "keine", "rien", "nada"})
  void thatNothingIsSeenSettlesEveryDeviation(String said) {
    add("walking", "observations[1].deviation=drop-off");
    add("walking", "observations[1].deviation=" + said);
    assertThat(open()).containsExactly(NOTHING);
  }

  @Test
  void painThatRoseIsOpenUntilItIsAsLowAsItWasOrIsAccepted() {
    add("before-any-screw", "pain=2");
    add("walking", "pain=1");
    add("closing", "pain=4");
    assertThat(open()).containsExactly("Pain rose from 1 (entry 3) to 4 (entry 4).");
    add("closing", "pain=4");
    assertThat(open()).containsExactly("Pain rose from 1 (entry 3) to 4 (entry 5).");
    add("closing", "pain=1");
    assertThat(open()).containsExactly(NOTHING);
    add("closing", "pain=3");
    add("accepted", "what=pain", "why=knee of the other leg", "entry=7");
    assertThat(open()).containsExactly(NOTHING);
    add("closing", "pain=3");
    assertThat(open()).containsExactly(NOTHING);
  }

  /** Both sides of the threshold. */
  @Test
  void severePainLeadsAndTheWordsAreShown() {
    add("walking", "pain=6");
    assertThat(clinic.record("show", "K7-right").out()).doesNotContain("Take care");
    add("walking", "pain=7", "wearer-says=knee gave way twice");
    assertThat(clinic.record("show", "K7-right").out().lines().skip(1).findFirst())
        .contains(
            "Take care: Pain is 7 of 10 (entry 3). Find its cause before the wearer stands or walks"
                + " again.");
    assertThat(open())
        .containsExactly(
            "Pain rose from 6 (entry 2) to 7 (entry 3).",
            "In the wearer's words, as last noted (entry 3): knee gave way twice");
    add("closing", "pain=6", "wearer-says=feels safe");
    assertThat(open())
        .containsExactly("In the wearer's words, as last noted (entry 4): feels safe");
    add("accepted", "what=words", "why=good news", "entry=4");
    assertThat(open()).containsExactly(NOTHING);
  }

  /** Both sides of 10 mm. */
  @Test
  void legsThatDifferByMoreThanIntendedAreOpenAndAskedAboutIfThePelvisIsLevel() {
    add("length", legs("488", "477", "1"));
    assertThat(open()).containsExactly(NOTHING);
    add("length", legs("488", "476", "1"));
    assertThat(open().toString().replace('\u00a0', ' '))
        .isEqualTo(
            "[knee centre: left and right differ by 12.0 mm, and 1.0 mm is intended (entry 3).]");
    List<String> level = new ArrayList<>(List.of("length", "--by", "AB", "pelvis-level=yes"));
    level.addAll(Arrays.asList(legs("488", "448", "0")));
    Run run = clinic.record("add", "K7-right", level.toArray(String[]::new));
    assertThat(run.err().replace('\u00a0', ' '))
        .isEqualTo(
            "length: knee centre: left and right differ by 40.0 mm, but 0.0 mm is intended, and the"
                + " pelvis is noted as level: are the numbers right? Correct them; if they are"
                + " right, say why and add: note=why it is so\n");
    level.add("note=other knee height");
    assertThat(clinic.record("add", "K7-right", level.toArray(String[]::new)).err()).isEmpty();
  }

  private static String[] legs(String left, String right, String intended) {
    return new String[] {
      "landmarks[1].landmark=knee centre",
      "landmarks[1].left-mm=" + left,
      "landmarks[1].right-mm=" + right,
      "intended-shortening-mm=" + intended
    };
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
    assertThat(open()).containsExactly(NOTHING);
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
    assertThat(open()).containsExactly(NOTHING);
  }

  @Test
  void comfortThatFellIsOpenUntilItRisesAndNotOnlyUntilItIsRepeated() {
    add("walking", "comfort=8");
    add("walking", "comfort=8");
    assertThat(open()).containsExactly(NOTHING);
    add("walking", "comfort=7");
    assertThat(open()).containsExactly("Comfort fell from 8 (entry 3) to 7 (entry 4).");
    add("walking", "comfort=7");
    assertThat(open()).containsExactly("Comfort fell from 8 (entry 3) to 7 (entry 5).");
    add("walking", "comfort=9");
    assertThat(open()).containsExactly(NOTHING);
  }

  @Test
  void theSocketComfortScoreIsFollowedThroughAllEntriesThatHoldIt() {
    add("before-any-screw", "socket-comfort=6");
    add("walking", "socket-comfort=9");
    add("closing", "socket-comfort=5", "pain=3", "wearer-says=pinches behind", "minutes-stood=20");
    assertThat(open())
        .containsExactly(
            "In the wearer's words, as last noted (entry 4): pinches behind",
            "The socket comfort score fell from 9 (entry 3) to 5 (entry 4).");
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
  void theNextVisitIsOpenUntilTheWearerWasThere() {
    add("closing", "next-visit=2026-03-18");
    assertThat(open()).containsExactly("Next visit: 2026-03-18 (entry 2)");
    came("2026-03-17");
    assertThat(open()).hasSize(1);
    came("2026-03-18");
    assertThat(open()).containsExactly(NOTHING);
  }

  @Test
  void anOverdueVisitStaysOpenThoughSomethingElseIsNoted() {
    add("closing", "next-visit=2026-03-18");
    String day = "2026-03-20T09:00+01:00";
    clinic.record("add", "K7-right", "note", "--by", "AB", "--at", day, "text=did not come");
    assertThat(open()).containsExactly("Next visit: 2026-03-18 (entry 2)");
    clinic.record("add", "K7-right", "closing", "--by", "AB", "--at", day, "next-visit=2026-04-01");
    assertThat(open()).containsExactly("Next visit: 2026-04-01 (entry 4)");
  }

  @Test
  void aNextVisitInThePastIsAskedAboutUntilTheNoteNamesItsDay() {
    String question =
        "closing: next-visit: 2026-03-01 is before the day of this entry, 2026-03-04. Correct the"
            + " day or the time of the entry; if it is right, say why and add: note=2026-03-01: why"
            + " it is so\n";
    String[] closing = {
      "closing",
      "--by",
      "AB",
      "--at",
      "2026-03-04T11:00+01:00",
      "next-visit=2026-03-01",
      "note=look at the brim"
    };
    assertThat(clinic.record("add", "K7-right", closing).err()).isEqualTo(question);
    closing[6] = "note=2026-03-01: written down late";
    assertThat(clinic.record("add", "K7-right", closing).err()).isEmpty();
    assertThat(open()).containsExactly("Next visit: 2026-03-01 (entry 2)");
  }

  private void came(String day) {
    clinic.record(
        "add", "K7-right", "closing", "--by", "AB", "--at", day + "T09:00+01:00", "pain=0");
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
            "ankle plantarflexion: not set as recommended, and no reason is noted (entry 2).");
    String[] reasoned = Arrays.copyOf(bench("3"), 5);
    reasoned[4] = "items[1].why=walks better";
    add("bench-alignment", reasoned);
    assertThat(open()).containsExactly(ABOVE);
    add("bench-alignment", bench("3"));
    assertThat(open()).containsExactly(ABOVE);
    add("bench-alignment", bench("4"));
    assertThat(open()).hasSize(1);
    add("accepted", "what=ankle", "why=for the boot", "entry=5");
    assertThat(open()).containsExactly(ABOVE);
  }

  @Test
  void aShoeIsOpenUntilSomebodyStoodInIt() {
    add("footwear", "shoes[1].shoe=Boot", "shoes[1].heel-height-mm=15");
    assertThat(open()).containsExactly("No stand is named for the shoe \"Boot\" (entry 2).");
    add("stand", "footwear=boot");
    assertThat(open()).containsExactly(NOTHING);
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
