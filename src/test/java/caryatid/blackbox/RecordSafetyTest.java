package caryatid.blackbox;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.demo.PdfText;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A warning about a prosthetic knee leads the record, its report and the packed record. */
class RecordSafetyTest {
  private static final Path SAMPLES = Path.of("sample-recordings/m4");

  @TempDir private Path folder;

  private Run record(String command, String... rest) {
    return new Clinic(folder.resolve("records")).record(command, "M4-left", rest);
  }

  private void start() throws IOException {
    record("start", "--by", "CD", "wearer=M4", "side=left", "level=transfemoral");
    stand("14:30", "316");
  }

  private void stand(String time, String kneeForwardMm) throws IOException {
    Path sheet = folder.resolve("sheet.yaml");
    Files.writeString(
        sheet,
        Files.readString(SAMPLES.resolve("shoe.yaml"))
            .replace("T14:30", "T" + time)
            .replace("left sagittal'", "left sagittal', 'shoe.txt as in entry 2'")
            .replace("forward-mm: 316", "forward-mm: " + kneeForwardMm));
    Run run =
        Run.caryatid(
            "check",
            SAMPLES.resolve("shoe.txt").toString(),
            "--trial",
            sheet.toString(),
            "--plate",
            SAMPLES.resolve("plates.yaml").toString(),
            "--out",
            folder.toString(),
            "--replace",
            "--record",
            "M4-left",
            "--records",
            folder.resolve("records").toString(),
            "--by",
            "CD");
    assertThat(run.err()).isEmpty();
    assertThat(run.code()).isZero();
  }

  private void accept() {
    Run run =
        record(
            "add",
            "accepted",
            "--by",
            "EF",
            "--at",
            "2026-03-05T15:00+01:00",
            "what=line behind the knee",
            "why=knee is locked in this shoe",
            "stand=2");
    assertThat(run.code()).isZero();
  }

  private String report(String language) throws IOException {
    Path pdf = folder.resolve(language + ".pdf");
    record("report", "--out", pdf.toString(), "--language", language, "--replace");
    return PdfText.running(Files.readAllBytes(pdf));
  }

  private String readMe(String language) throws IOException {
    Path zip = folder.resolve(language + ".zip");
    Run run = record("pack", zip.toString(), "--language", language);
    assertThat(run.code()).isZero();
    try (ZipFile packed = new ZipFile(zip.toFile())) {
      return new String(
          packed.getInputStream(packed.getEntry("M4-left/read-me.txt")).readAllBytes(),
          StandardCharsets.UTF_8);
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "en|The knee may bend. Seat the wearer, or hands on the rails and a helper. Correct it,"
            + " then stand again.|Accepted by EF (entry 3)|whether measuring again can decide",
        "de|Das Knie kann einknicken. Den Anwender sich setzen lassen, oder Hände"
            + " an den Gehbarren und eine Hilfsperson dazu. Den Aufbau korrigieren, dann erneut"
            + " stehen lassen.|So belassen"
            + " von EF (Eintrag 3)|ob erneutes Messen entscheiden kann",
        "fr|Le genou peut se dérober. Asseoir le porteur, ou mains sur les barres parallèles et"
            + " une personne pour l'aider. Corriger l'alignement, puis refaire l'essai"
            + " debout.|Accepté par EF (entrée 3)|dit si remesurer"
            + " peut trancher",
        "es|La rodilla puede ceder. Sentar al usuario, o manos en las barras paralelas y otra"
            + " persona para ayudarle. Corregir la alineación y después repetir el ensayo de"
            + " pie.|Aceptado por EF (entrada 3)|dice si medir"
            + " de nuevo puede decidir"
      })
  void theWarningLeadsAndStaysWhenItIsAccepted(
      String language, String warning, String accepted, String repeat) throws IOException {
    start();
    accept();
    String shown = record("show", "--language", language).out();
    assertThat(shown.lines().skip(1).findFirst().orElseThrow()).contains(warning, accepted);
    String report = report(language);
    assertThat(report).contains(warning, accepted, "−19");
    assertThat(report.indexOf(warning)).isLessThan(report.indexOf("−19"));
    assertThat(readMe(language).lines().skip(2).findFirst().orElseThrow())
        .contains(warning, accepted);
    assertThat(shown + report).doesNotContainIgnoringCase(repeat);
  }

  @Test
  void aLaterStandInTheSameShoeThatIsSafeEndsTheWarning() throws IOException {
    start();
    stand("16:30", "272");
    assertThat(record("show").out())
        .doesNotContain("The knee may bend")
        .contains("measuring again");
    assertThat(report("en")).doesNotContain("The knee may bend");
    assertThat(readMe("en"))
        .isEqualTo(
            """
            Fitting record M4-left, packed; `caryatid record unpack` unpacks it.

            There is no warning in this record.

            Not a medical device. The component maker's instructions and local rules come first; \
            the wearer's comfort, skin and gait decide.
            """);
  }

  @Test
  void aPackedRecordWithItsReportAndReadMeIsTakenInElsewhere() throws IOException {
    start();
    Path zip = folder.resolve("M4.zip");
    record("pack", zip.toString());
    Path pdf = folder.resolve("alone.pdf");
    record("report", "--out", pdf.toString());
    try (ZipFile packed = new ZipFile(zip.toFile())) {
      assertThat(packed.getInputStream(packed.getEntry("M4-left/report.pdf")).readAllBytes())
          .isEqualTo(Files.readAllBytes(pdf));
    }
    Clinic other = new Clinic(folder.resolve("other"));
    assertThat(other.record("unpack", zip.toString(), "--by", "GH").code()).isZero();
    assertThat(other.record("show", "M4-left").out()).isEqualTo(record("show").out());
    assertThat(other.record("verify", "M4-left").code()).isZero();
  }
}
