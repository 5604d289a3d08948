package caryatid.blackbox;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the commands say of a record that is damaged. */
class DamagedRecordTest {
  @TempDir private Path folder;
  private Clinic clinic;

  @BeforeEach
  void startRecord() {
    clinic = new Clinic(folder);
    clinic.start();
  }

  @Test
  void theReportOfARecordWithAnyHurtFileNamesItIsWrittenAndEndsWithOne() throws IOException {
    Path kept = Files.writeString(folder.resolve("scan.txt"), "some kept file");
    clinic.record("add", "K7-right", "note", "--by", "AB", "text=a", "--keep", "other=" + kept);
    Path file = folder.resolve("records/K7-right/v2/content/0002-note/other-scan.txt");
    Files.writeString(file, "another kept file");
    Path pdf = folder.resolve("K7.pdf");
    Run run = clinic.record("report", "K7-right", "--out", pdf.toString());
    assertThat(run)
        .isEqualTo(
            new Run(
                1,
                "Report: " + pdf + "\n",
                "K7-right/v2/content/0002-note/other-scan.txt: is not what was added: its bytes"
                    + " have changed. Restore it from a backup.\n"));
    assertThat(pdf).exists();
  }

  @Test
  void aHurtEntryIsSaidWhereAnOlderOneIsShownAsNow() throws IOException {
    clinic.record("add", "K7-right", "note", "--by", "AB", "text=steady");
    clinic.record("add", "K7-right", "walking", "--by", "AB", "comfort=4");
    clinic.record("add", "K7-right", "walking", "--by", "AB", "comfort=9");
    Path entry = folder.resolve("records/K7-right/v4/content/0004-walking/entry.json");
    Files.writeString(entry, Files.readString(entry).replace("9", "8"));
    String said =
        "Take care: Entry 4 (dynamic alignment) is damaged and cannot be read. What is shown as"
            + " current may be older than it, or what it corrects.\n";
    assertThat(clinic.record("show", "K7-right").out().lines().skip(1).findFirst())
        .contains(said.strip());
    Run compared = clinic.record("compare", "K7-right", "2", "3");
    assertThat(compared.code()).isEqualTo(1);
    assertThat(compared.out()).startsWith(said + "From entry 2 to entry 3\n");
    assertThat(compared.err()).startsWith("K7-right/v4/content/0004-walking/entry.json: is not");
  }

  @Test
  void entriesAfterTheNewestInventoryThatIsWholeAreSaidToBeLost() throws IOException {
    clinic.record("add", "K7-right", "note", "--by", "AB", "text=steady");
    for (String inventory : new String[] {"inventory.json", "v2/inventory.json"}) {
      Path file = folder.resolve("records/K7-right").resolve(inventory);
      Files.writeString(file, Files.readString(file).replaceFirst("v2", "v3"));
    }
    Run run = clinic.record("show", "K7-right");
    assertThat(run.code()).isEqualTo(1);
    assertThat(run.out())
        .contains(
            "Take care: Entry 2 cannot be read. What is shown as current may be older than it");
  }

  @Test
  void showLooksAtTheFilesOfTheLatestStand() throws IOException {
    Path recording = Files.writeString(folder.resolve("walk.csv"), "Time,Fz\n0,1\n");
    String[] stand = {"stand", "--by", "AB", "skin=x", "--keep", "recording=" + recording};
    clinic.record("add", "K7-right", stand);
    assertThat(clinic.record("show", "K7-right").code()).isZero();
    Files.writeString(
        folder.resolve("records/K7-right/v2/content/0002-stand/recording-walk.csv"), "else");
    Run run = clinic.record("show", "K7-right");
    assertThat(run.code()).isEqualTo(1);
    assertThat(run.err()).startsWith("K7-right/v2/content/0002-stand/recording-walk.csv: is not");
  }

  @Test
  void aDamagedRecordShowsWhatIsWholeAndSaysWhatIsNot() throws IOException {
    clinic.record("add", "K7-right", "note", "--by", "AB", "text=steady");
    clinic.record("add", "K7-right", "note", "--by", "AB", "text=later");
    Path entry = folder.resolve("records/K7-right/v2/content/0002-note/entry.json");
    Files.writeString(entry, Files.readString(entry).replace("steady", "sturdy"));
    Run run = clinic.record("show", "K7-right");
    assertThat(run.code()).isEqualTo(1);
    assertThat(run.out()).contains("later").doesNotContain("sturdy");
    assertThat(run.err())
        .isEqualTo(
            "K7-right/v2/content/0002-note/entry.json: is not what was added: its bytes have"
                + " changed. Restore it from a backup.\n");
    assertThat(clinic.record("verify").err()).isEqualTo(run.err());
    assertThat(clinic.record("add", "K7-right", "note", "--by", "AB", "text=more").err())
        .isEqualTo(run.err());
    Path zip = folder.resolve("out.zip");
    assertThat(clinic.record("pack", "K7-right", zip.toString()).err()).isEqualTo(run.err());
    assertThat(zip).doesNotExist();
  }
}
