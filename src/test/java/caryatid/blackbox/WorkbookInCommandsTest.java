package caryatid.blackbox;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import caryatid.recording.c3d.LaboratoryStand;
import caryatid.recording.workbook.MadeWorkbook;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A workbook goes through the commands like any other recording. */
class WorkbookInCommandsTest {
  @TempDir Path folder;

  @BeforeEach
  void write() throws IOException {
    String csv = new String(LaboratoryStand.csv(), UTF_8);
    Files.writeString(folder.resolve("text.csv"), csv);
    Files.write(
        folder.resolve("stand.xlsx"),
        new MadeWorkbook().sheet("Stand", MadeWorkbook.rows(csv)).bytes());
    Files.writeString(folder.resolve("plate.yaml"), LaboratoryStand.DESCRIPTION_OF_TEXT);
    Files.writeString(folder.resolve("stand.yaml"), LaboratoryStand.SHEET);
  }

  private String file(String name) {
    return folder.resolve(name).toString();
  }

  private Run check(String recording, String... more) {
    String[] all = new String[6 + more.length];
    System.arraycopy(more, 0, all, 6, more.length);
    all[0] = "check";
    all[1] = file(recording);
    all[2] = "--trial";
    all[3] = file("stand.yaml");
    all[4] = "--plate";
    all[5] = file("plate.yaml");
    return Run.caryatid(all);
  }

  /** What was printed but for name, length and digest of the recording. */
  private static String alike(Run run) {
    assertThat(run.code()).as(run.err()).isZero();
    return run.out().replaceAll("(?s)\"recording\" : \\{\\s+\"name\".*?\\}", "differs");
  }

  @Test
  void theSameStandAsWorkbookAndAsCsvIsPrintedAlike() {
    String workbook = alike(check("stand.xlsx", "--json"));
    assertThat(workbook).contains("\"findings\"", "differs").doesNotContain("stand.xlsx");
    assertThat(workbook).isEqualTo(alike(check("text.csv", "--json")));
  }

  @Test
  void aReportHoldsTheWorkbookAndTheResultIsFoundAgainInIt() {
    Run made = check("stand.xlsx", "--out", file("out"));
    assertThat(made.code()).as(made.err()).isZero();
    Run again = Run.caryatid("check", file("out") + "/stand-report.pdf");
    assertThat(again.err()).isEmpty();
    assertThat(again.out()).contains("is reproduced from the files inside it.");
  }

  @Test
  void aBatchFindsTheWorkbookByItsEnding() throws IOException {
    Files.delete(folder.resolve("text.csv"));
    Run batch = Run.caryatid("batch", folder.toString(), "--out", file("out"));
    assertThat(batch.code()).as(batch.err()).isZero();
    assertThat(Files.readString(folder.resolve("out").resolve("findings.csv")))
        .contains("stand,L5,");
  }

  @Test
  void anInspectionNamesTheSheet() {
    Run seen = Run.caryatid("inspect", file("stand.xlsx"), "--plate", file("plate.yaml"));
    assertThat(seen.code()).as(seen.err()).isZero();
    assertThat(seen.out()).contains("workbook (.xlsx): sheet Stand; sheets in all: 1");
  }
}
