package caryatid.blackbox;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A report is computed again from the files inside it, and says what differs. */
class ReportAgainTest {
  @TempDir private Path path;

  private Path report(String... more) throws IOException {
    Run run = new Folder(path).check(more);
    assertThat(run.code()).as(run.err()).isZero();
    return path.resolve("out/stand-report.pdf");
  }

  @Test
  void aReportReproducesItsResultToTheLastDigit() throws IOException {
    Run again = Run.caryatid("check", report().toString());
    assertThat(again.err()).isEmpty();
    assertThat(again.out())
        .endsWith(
            "The result inside the report, made by Caryatid 0.2.0, is reproduced from the files"
                + " inside it."
                + System.lineSeparator());
  }

  @Test
  void aStretchSetByHandIsKept() throws IOException {
    Run again = Run.caryatid("check", report("--from", "3", "--to", "18").toString());
    assertThat(again.err()).isEmpty();
    assertThat(again.out()).contains("\u00a0s to 18.00\u00a0s");
  }

  @Test
  void aFileThatIsNoReportIsRefused() throws IOException {
    Path other = path.resolve("other.pdf");
    Files.write(other, "%PDF-1.7 nothing".getBytes(StandardCharsets.US_ASCII));
    Run again = Run.caryatid("check", other.toString());
    assertThat(again.code()).isEqualTo(1);
    assertThat(again.err()).startsWith(other + ": ");
  }

  @Test
  void everyFormIsWrittenUnderASpeakingName() throws IOException {
    report("--forms", "pdf,html,csv,json,svg,png");
    try (Stream<Path> files = Files.list(path.resolve("out"))) {
      assertThat(files.map(file -> file.getFileName().toString()))
          .containsExactlyInAnyOrder(
              "stand-report.pdf",
              "stand-report.html",
              "stand-report.csv",
              "stand-report.json",
              "stand-report-right-sagittal.svg",
              "stand-report-right-frontal.svg",
              "stand-report-right-sagittal.png",
              "stand-report-right-frontal.png");
    }
  }
}
