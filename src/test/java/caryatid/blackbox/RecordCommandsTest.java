package caryatid.blackbox;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The record's commands: how they are used, and in which languages. */
class RecordCommandsTest {
  @TempDir private Path folder;
  private Clinic clinic;

  @BeforeEach
  void startRecord() {
    clinic = new Clinic(folder);
    clinic.start();
  }

  @Test
  void wrongUsageIsExitTwo() {
    assertThat(clinic.record("add", "K7-right", "gait", "--by", "AB").code()).isEqualTo(2);
    assertThat(clinic.record("add", "K7-right", "erasure", "--by", "AB").code()).isEqualTo(2);
    assertThat(
            clinic
                .record("add", "K7-right", "note", "--by", "AB", "--corrects", "1", "text=x")
                .code())
        .isEqualTo(2);
    assertThat(clinic.record("add", "K7-right", "note", "--by", "AB", "--keep", "walk.csv").code())
        .isEqualTo(2);
    assertThat(clinic.record("start").code()).isEqualTo(2);
  }

  @Test
  void whatIsMissingIsRefusedWithoutATerminal() {
    assertThat(clinic.record("add", "K7-right", "accepted", "--by", "AB", "what=toe-out"))
        .isEqualTo(new Run(1, "", "command line: why is missing. Add it.\n"));
    assertThat(clinic.record("add", "K7-right", "note", "text=steady"))
        .isEqualTo(
            new Run(
                1,
                "",
                "note: expected the initials of the person adding it, one to ten letters and"
                    + " digits, found \"\". Give them with --by.\n"));
    assertThat(clinic.record("add", "K7-right", "walking", "--by", "AB"))
        .isEqualTo(
            new Run(
                1,
                "",
                "walking: nothing is filled in. Give at least one of: observations, comfort, skin,"
                    + " heel-stiffness, walking-aid, socket-comfort, pain, wearer-says, note.\n"));
    assertThat(clinic.record("show", "K7-right").out()).startsWith("Record K7-right: 1 entry.");
  }

  @Test
  void aFormThatIsPrintedCanBeFilledInAndRead() throws IOException {
    String form = clinic.record("form", "length").out();
    assertThat(form).startsWith("landmarks:\n  - landmark:  # landmark\n    left-mm:  # left\n");
    Path file = folder.resolve("length.yaml");
    Files.writeString(
        file,
        form.replace("landmark:  #", "landmark: iliac crest  #")
            .replace("left-mm:  #", "left-mm: 980  #")
            .replace("right-mm:  #", "right-mm: 985  #")
            .replaceAll("(?m)^[a-z-]+:  #.*\n", ""));
    assertThat(
            clinic
                .record("add", "K7-right", "length", "--by", "AB", "--from", file.toString())
                .out())
        .isEqualTo("Added entry 2 to record K7-right: length and pelvis\n");
  }

  /** A colleague compares it with the one above the signature of an earlier report. */
  @Test
  void theDigestIsTheSameWhereverTheRecordIs(@TempDir Path other) {
    Path zip = other.resolve("K7-right.zip");
    clinic.record("pack", "K7-right", zip.toString());
    String digest = digest(clinic.record("verify", "K7-right").out());
    assertThat(digest).hasSize(128);
    assertThat(digest(clinic.record("show", "K7-right").out())).isEqualTo(digest);
    String there = other.resolve("records").toString();
    assertThat(Run.caryatid("record", "unpack", zip.toString(), "--records", there).out().strip())
        .isEqualTo("Unpacked record K7-right. Head digest " + digest);
  }

  private static String digest(String printed) {
    return printed.lines().findFirst().orElseThrow().replaceFirst(".*Head digest ", "");
  }

  @Test
  void anErasedRecordIsListedAsErasedWithWhenByWhomAndWhy() {
    clinic.record("start", "M4", "--by", "AB", "wearer=M4", "side=left", "level=transfemoral");
    clinic.record(
        "erase", "M4", "--by", "CD", "--because", "asked for it", "--at", "2026-11-30T10:00+01:00");
    String erased = "M4: erased 2026-11-30 10:00 +01:00 by CD: asked for it\n";
    assertThat(clinic.record("list").out()).isEqualTo("K7-right\n" + erased);
    assertThat(clinic.record("verify").out())
        .startsWith("K7-right: in good order, 1 entry. Head digest ")
        .endsWith("\n" + erased);
    clinic.record("add", "K7-right", "note", "--by", "AB", "text=x");
    assertThat(clinic.record("verify", "K7-right").out())
        .matches("K7-right: in good order, 2 entries\\. Head digest [0-9a-f]{128}\n");
    assertThat(clinic.record("list", "--language", "de").out()).contains("M4: gelöscht");
  }

  @Test
  void aRecordIsShownInOtherLanguages() {
    assertThat(clinic.record("show", "K7-right", "--language", "de").out())
        .startsWith("Akte K7-right: 1 Eintrag. Prüfsumme ")
        .contains("      Amputationshöhe: transtibial\n");
  }

  @Test
  void compareTellsWhatPeopleReadWithItsUnits() {
    clinic.record("add", "K7-right", "note", "--by", "AB", "text=x");
    clinic.record("add", "K7-right", stand("-15.123456"));
    clinic.record("add", "K7-right", bench("5"));
    clinic.record("add", "K7-right", stand("-15.123999"));
    clinic.record("add", "K7-right", bench("7"));
    assertThat(clinic.record("compare", "K7-right", "3", "5").out())
        .isEqualTo(
            "From entry 3 to entry 5\n"
                + "bench alignment, items: nothing -> socket flexion\n"
                + "bench alignment, socket flexion, set: nothing -> 5 deg\n"
                + "bench alignment, socket flexion, unit: nothing -> deg\n");
    assertThat(clinic.record("compare", "K7-right", "4", "6").out())
        .isEqualTo(
            "From entry 4 to entry 6\nbench alignment, socket flexion, set: 5 deg -> 7 deg\n");
    clinic.record("add", "K7-right", stand("6"));
    assertThat(clinic.record("compare", "K7-right", "5", "7").out())
        .contains("static alignment, sagittal, right, knee centre, offset: −15.1 mm -> 6.0 mm\n");
    assertThat(clinic.record("compare", "K7-right", "3", "2").out())
        .contains("static alignment, findings: sagittal, right, knee centre -> nothing\n")
        .doesNotContain("expanded");
  }

  private static String[] bench(String degrees) {
    return new String[] {
      "bench-alignment",
      "--by",
      "AB",
      "items[1].item=socket flexion",
      "items[1].unit=deg",
      "items[1].set=" + degrees
    };
  }

  private static String[] stand(String mm) {
    return new String[] {
      "stand",
      "--by",
      "AB",
      "findings[1].plane=sagittal",
      "findings[1].side=right",
      "findings[1].landmark=knee centre",
      "findings[1].offset-mm=" + mm,
      "findings[1].expanded-mm=18",
      "findings[1].recommended-mm=20",
      "findings[1].below-mm=15",
      "findings[1].above-mm=15",
      "findings[1].source=instructions (invented)"
    };
  }
}
