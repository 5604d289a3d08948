package caryatid.blackbox;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.recording.c3d.LaboratoryStand;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A C3D file goes through the commands like any other recording. */
class LaboratoryFileTest {
  @TempDir Path folder;

  @BeforeEach
  void write() throws IOException {
    Files.write(folder.resolve("stand.c3d"), LaboratoryStand.c3d());
    Files.write(folder.resolve("stand.csv"), LaboratoryStand.csv());
    write("laboratory.yaml", LaboratoryStand.DESCRIPTION);
    write("text.yaml", LaboratoryStand.DESCRIPTION_OF_TEXT);
    write("sheet.yaml", LaboratoryStand.SHEET);
  }

  private void write(String name, String text) throws IOException {
    Files.writeString(folder.resolve(name), text);
  }

  private String file(String name) {
    return folder.resolve(name).toString();
  }

  private Run check(String recording, String description, String... more) {
    return Run.caryatid(
        Stream.concat(
                Stream.of(
                    "check",
                    file(recording),
                    "--trial",
                    file("sheet.yaml"),
                    "--plate",
                    file(description)),
                Stream.of(more))
            .toArray(String[]::new));
  }

  /** What was printed but for names, lengths and digests of the recording and its description. */
  private static String alike(Run run) {
    assertThat(run.code()).as(run.err()).isZero();
    return run.out()
        .replaceAll("(?s)\"(recording|description)\" : \\{\\s+\"name\".*?\\}", "\"$1\" : differs");
  }

  @Test
  void theSameStandAsC3dAndAsCsvIsPrintedAlike() {
    String motion = alike(check("stand.c3d", "laboratory.yaml", "--json"));
    assertThat(motion).contains("\"findings\"", "differs").doesNotContain("stand.c3d");
    assertThat(motion).isEqualTo(alike(check("stand.csv", "text.yaml", "--json")));
  }

  @Test
  void aReportHoldsTheC3dFileAndTheResultIsFoundAgainInIt() {
    Run made = check("stand.c3d", "laboratory.yaml", "--out", file("out"));
    assertThat(made.code()).as(made.err()).isZero();
    Run again = Run.caryatid("check", file("out") + "/stand-report.pdf");
    assertThat(again.err()).isEmpty();
    assertThat(again.out())
        .endsWith(
            "The result inside the report, made by Caryatid 0.2.0, is reproduced from the files"
                + " inside it.\n");
  }
}
