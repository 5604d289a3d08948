package caryatid.blackbox;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the commands say of a record that is hurt. */
class DamagedRecordTest {
  @TempDir private Path folder;
  private Clinic clinic;

  @BeforeEach
  void startRecord() {
    clinic = new Clinic(folder);
    clinic.start();
  }

  @Test
  void theReportOfADamagedRecordSaysSoAndIsWritten() throws IOException {
    clinic.record("add", "K7-right", "note", "--by", "AB", "text=steady");
    Path entry = folder.resolve("records/K7-right/v2/content/0002-note/entry.json");
    Files.writeString(entry, Files.readString(entry).replace("steady", "sturdy"));
    Path pdf = folder.resolve("K7.pdf");
    Run run = clinic.record("report", "K7-right", "--out", pdf.toString());
    assertThat(run.code()).isEqualTo(1);
    assertThat(run.err()).contains("0002-note/entry.json: is not what was added");
    assertThat(pdf).exists();
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
            "K7-right/v2/content/0002-note/entry.json: is not what was added: its bytes have changed."
                + " Bring it back from a backup.\n");
    assertThat(clinic.record("verify").err()).isEqualTo(run.err());
    assertThat(clinic.record("add", "K7-right", "note", "--by", "AB", "text=more").err())
        .isEqualTo(run.err());
    Path zip = folder.resolve("out.zip");
    assertThat(clinic.record("pack", "K7-right", zip.toString()).err()).isEqualTo(run.err());
    assertThat(zip).doesNotExist();
  }
}
