package caryatid.blackbox;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** One thing under several spellings, in several languages, is one thing. */
class SpellingsTest {
  @TempDir private Path folder;
  private Clinic clinic;

  @BeforeEach
  void start() {
    clinic = new Clinic(folder.resolve("records"));
    clinic.start();
  }

  @Test
  void anItemInThreeSpellingsIsOneItemAndTheChangeIsSeen() {
    item("de", "Schaftflexion", 5);
    item("en", "socket flexion", 6);
    item("en", "Socket flexion", 7);
    assertThat(plain(clinic.record("compare", "K7-right", "2", "4")))
        .isEqualTo(
            "From entry 2 to entry 4\nbench alignment, socket flexion, set: 5 deg -> 7 deg\n");
    assertThat(plain(clinic.record("compare", "K7-right", "2", "4", "--language", "de")))
        .isEqualTo(
            "Von Eintrag 2 zu Eintrag 4\nGrundaufbau, Schaftflexion, eingestellt: 5 deg -> 7 deg\n");
    assertThat(plain(clinic.record("show", "K7-right", "--language", "fr")))
        .contains("flexion de l'emboîture; réglé 5 deg", "flexion de l'emboîture; réglé 7 deg");
  }

  private void item(String language, String item, int degrees) {
    Run run = add(language, "bench-alignment", "items[1].item=" + item, "items[1].set=" + degrees);
    assertThat(run.code()).as(run.err()).isZero();
  }

  @Test
  void aDeviationInFourLanguagesIsOneDeviation() {
    add("de", "walking", "observations[1].deviation=Knie bleibt gestreckt");
    add("fr", "walking", "observations[1].deviation=le genou reste en extension");
    add("es", "walking", "observations[1].deviation=La rodilla queda extendida");
    add("en", "walking", "observations[1].deviation=knee stays extended", "comfort=7");
    assertThat(plain(clinic.record("compare", "K7-right", "2", "4")))
        .isEqualTo("Nothing differs between entries 2 and 4.\n");
    assertThat(plain(clinic.record("compare", "K7-right", "2", "5")))
        .isEqualTo("From entry 2 to entry 5\ndynamic alignment, comfort: nothing -> 7\n");
    assertThat(plain(clinic.record("show", "K7-right", "--language", "de")))
        .contains(
            "Knie bleibt gestreckt; Ebene sagittal; Phase frühe Standphase; meist Hinweis auf");
  }

  @Test
  void whetherAKneeWasLockedIsTheSameInEveryLanguage() {
    add("en", "stand", "knee-mode=locked");
    add("de", "stand", "knee-mode=Gesperrt");
    add("de", "stand", "knee-mode=nicht gesperrt, Stehen");
    assertThat(plain(clinic.record("compare", "K7-right", "2", "3")))
        .isEqualTo("Nothing differs between entries 2 and 3.\n");
    assertThat(plain(clinic.record("compare", "K7-right", "3", "4")))
        .isEqualTo(
            "From entry 3 to entry 4\n"
                + "static alignment, prosthetic knee: locked -> not locked, Stehen\n");
  }

  @ParameterizedTest
  @CsvSource({
    "en, Schaftflexion, '\"Schaftflexion\" is noted as: socket flexion'",
    "de, socket flexion, '„socket flexion“ ist vermerkt als: Schaftflexion'"
  })
  void whatWasUnderstoodUnderAnotherWordIsSaidBack(String language, String typed, String said) {
    assertThat(add(language, "bench-alignment", "items[1].item=" + typed, "items[1].set=5").out())
        .contains("\n" + said + "\n");
  }

  @Test
  void wordsOfOnesOwnStayAsTheyAreAndAreSaidBackByNobody() {
    Run run =
        add(
            "en",
            "bench-alignment",
            "items[1].item=Socket flexion at rest",
            "items[1].set=5",
            "items[1].unit=deg",
            "items[2].item=socket flexion",
            "items[2].set=5");
    assertThat(run.out()).doesNotContain("noted as");
    assertThat(plain(clinic.record("show", "K7-right", "--language", "de")))
        .contains("Socket flexion at rest; eingestellt 5 deg", "Schaftflexion; eingestellt 5 deg");
  }

  @Test
  void theSameHoldsOfARecordThatAnEarlierVersionWrote() throws IOException {
    Clinic old = new Clinic(Frozen.store("mixed", folder.resolve("old")));
    assertThat(plain(old.record("compare", "mixed-1", "3", "4")))
        .isEqualTo(
            "From entry 3 to entry 4\nbench alignment, socket flexion, set: 5 deg -> 6 deg\n");
    assertThat(plain(old.record("compare", "mixed-1", "4", "5")))
        .isEqualTo(
            "From entry 4 to entry 5\nbench alignment, socket flexion, set: 6 deg -> 7 deg\n");
    assertThat(plain(old.record("compare", "mixed-1", "7", "10")))
        .isEqualTo("Nothing differs between entries 7 and 10.\n");
    assertThat(plain(old.record("compare", "mixed-1", "11", "12")))
        .isEqualTo("From entry 11 to entry 12\nbench alignment, height, set: 900 mm -> 901 mm\n");
  }

  @Test
  void oneRecordHoldsEntriesOfBothVersions() throws IOException {
    Clinic old = new Clinic(Frozen.store("mixed", folder.resolve("old")));
    Run added =
        old.record(
            "add",
            "mixed-1",
            "bench-alignment",
            "--by",
            "AB",
            "--at",
            "2026-03-06T09:00+01:00",
            "items[1].item=flexion de l'emboîture",
            "items[1].set=8",
            "items[1].unit=deg");
    assertThat(added.code()).as(added.err()).isZero();
    assertThat(plain(old.record("compare", "mixed-1", "12", "13")))
        .isEqualTo(
            "From entry 12 to entry 13\nbench alignment, socket flexion, set: 7 deg -> 8 deg\n");
    assertThat(old.record("verify", "mixed-1").out())
        .startsWith("mixed-1: in good order, 13 entries. Head digest ");
  }

  private Run add(String language, String kind, String... values) {
    String[] rest = new String[values.length + 5];
    rest[0] = kind;
    rest[1] = "--by";
    rest[2] = "AB";
    rest[3] = "--language";
    rest[4] = language;
    System.arraycopy(values, 0, rest, 5, values.length);
    return clinic.record("add", "K7-right", rest);
  }

  private static String plain(Run run) {
    return run.out().replace('\u00a0', ' ');
  }
}
