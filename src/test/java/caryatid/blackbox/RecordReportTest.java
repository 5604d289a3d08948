package caryatid.blackbox;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The report of a record, as a command writes it. */
class RecordReportTest {
  @TempDir private Path folder;
  private Clinic clinic;

  @BeforeEach
  void startRecord() {
    clinic = new Clinic(folder);
    clinic.start();
  }

  @Test
  void theReportOfARecordIsWrittenAndNotOverAnotherUnasked() throws IOException {
    Path pdf = folder.resolve("reports/K7.pdf");
    assertThat(clinic.record("report", "K7-right", "--out", pdf.toString()))
        .isEqualTo(new Run(0, "Report: " + pdf + "\n", ""));
    byte[] first = Files.readAllBytes(pdf);
    assertThat(new String(first, 0, 5, java.nio.charset.StandardCharsets.US_ASCII))
        .isEqualTo("%PDF-");
    assertThat(clinic.record("report", "K7-right", "--out", pdf.toString()))
        .isEqualTo(
            new Run(
                1,
                "",
                pdf
                    + ": already exists, and nothing is overwritten without being asked. Choose"
                    + " another name or folder, or add --replace.\n"));
    assertThat(
            clinic
                .record(
                    "report", "K7-right", "--out", pdf.toString(), "--replace", "--language", "de")
                .code())
        .isZero();
    assertThat(Files.readAllBytes(pdf)).isNotEqualTo(first);
    assertThat(clinic.record("report", "K7-right").code()).isEqualTo(2);
    assertThat(clinic.record("report", "K9", "--out", folder.resolve("no.pdf").toString()).err())
        .startsWith("K9: there is no record with that code");
    assertThat(folder.resolve("no.pdf")).doesNotExist();
  }

  @Test
  void aFolderThatIsThereTakesTheReportUnderTheRecordsName() throws IOException {
    Path out = Files.createDirectory(folder.resolve("reports"));
    Path pdf = out.resolve("K7-right-record.pdf");
    assertThat(clinic.record("report", "K7-right", "--out", out.toString()))
        .isEqualTo(new Run(0, "Report: " + pdf + "\n", ""));
    assertThat(pdf).isNotEmptyFile();
    Run again = Run.caryatid("check", pdf.toString());
    assertThat(again.code()).isEqualTo(1);
    assertThat(again.err()).contains("a record's report is not checked, its record is");
  }

  @Test
  void theReportOfAStandTakesAFolderAndNoFile() {
    String file = folder.resolve("stand.pdf").toString();
    String k7 = "sample-recordings/k7/";
    Run run =
        Run.caryatid(
            "check",
            k7 + "shoe.csv",
            "--trial",
            k7 + "shoe.yaml",
            "--plate",
            k7 + "plate.yaml",
            "--out",
            file);
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err()).startsWith("--out is a folder here; found the file name " + file);
    assertThat(folder.resolve("stand.pdf")).doesNotExist();
  }

  @Test
  void anAssessmentIsAddedByTheNameThatIsPrinted() {
    assertThat(
            clinic.record("add", "K7-right", "assessment", "--by", "AB", "contracture-deg=5").err())
        .isEmpty();
    assertThat(clinic.record("show", "K7-right").out().replace('\u00a0', ' '))
        .contains("  assessment")
        .contains("5\u00b0")
        .doesNotContain("5 \u00b0");
  }
}
