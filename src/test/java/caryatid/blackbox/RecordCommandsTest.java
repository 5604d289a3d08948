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
                "note: expected initials of who adds it, one to ten letters and digits, found \"\"."
                    + " Give them with --by.\n"));
    assertThat(clinic.record("add", "K7-right", "walking", "--by", "AB"))
        .isEqualTo(
            new Run(
                1,
                "",
                "walking: nothing is said. Give at least one of: observations, comfort, skin,"
                    + " heel-stiffness, walking-aid, note.\n"));
    assertThat(clinic.record("show", "K7-right").out()).startsWith("Record K7-right: 1 entries.");
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
        .isEqualTo("Added entry 2 to record K7-right: length\n");
  }

  @Test
  void aRecordIsShownInOtherLanguages() {
    assertThat(clinic.record("show", "K7-right", "--language", "de").out())
        .startsWith("Akte K7-right: 1 Einträge. Kopfsumme ")
        .contains("      Amputationshöhe: transtibial\n");
  }
}
