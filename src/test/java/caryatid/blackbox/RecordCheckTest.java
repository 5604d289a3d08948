package caryatid.blackbox;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A check that goes into a record. */
class RecordCheckTest {
  @TempDir private Path folder;
  private Clinic clinic;

  @BeforeEach
  void startRecord() {
    clinic = new Clinic(folder);
    clinic.start();
  }

  @Test
  void aStandOfAnotherProsthesisIsRefusedAndNothingIsWritten() {
    Path out = folder.resolve("reports");
    Run run =
        Run.caryatid(
            "check",
            "sample-recordings/m4/barefoot.txt",
            "--trial",
            "sample-recordings/m4/barefoot.yaml",
            "--plate",
            "sample-recordings/m4/plates.yaml",
            "--out",
            out.toString(),
            "--by",
            "AB",
            "--record",
            "K7-right",
            "--records",
            folder.toString());
    assertThat(run)
        .isEqualTo(
            new Run(
                1,
                "",
                "K7-right: the sheet is for another prosthesis: M4, left, transfemoral; this record"
                    + " is for: K7, right, transtibial. Choose the record it belongs to, or correct"
                    + " the sheet. Nothing was written.\n"));
    assertThat(out).doesNotExist();
    assertThat(clinic.record("show", "K7-right").out()).startsWith("Record K7-right: 1 entry.");
  }

  @Test
  void aCheckForARecordThatIsNotThereIsRefusedBeforeAnyWork() {
    assertThat(checkInto("K9"))
        .isEqualTo(
            new Run(
                1,
                "",
                "K9: there is no record with that code in "
                    + folder
                    + ". Check the code, or start the record first.\n"));
    assertThat(folder.resolve("out")).doesNotExist();
  }

  @Test
  void aCheckForARecordThatWasErasedIsRefusedBeforeAnyWork() {
    clinic.record("erase", "K7-right", "--by", "AB", "--because", "asked for it");
    assertThat(checkInto("K7-right"))
        .isEqualTo(
            new Run(1, "", "K7-right: this record was erased. Start one under another code.\n"));
    assertThat(folder.resolve("out")).doesNotExist();
  }

  @Test
  void aStandIsCorrectedInOneStep() {
    assertThat(checkInto("K7-right", "--by", "AB").code()).isZero();
    Run run = checkInto("K7-right", "--by", "CD", "--corrects", "2", "--because", "wrong plate");
    assertThat(run.err()).isEmpty();
    assertThat(run.out()).contains("Added entry 3 to record K7-right: static alignment\n");
    assertThat(clinic.record("show", "K7-right").out())
        .contains(
            "AB  static alignment, corrected by entry 3\n",
            "   3  2026-12-01 08:00 +00:00  CD  static alignment\n      corrects entry 2: wrong"
                + " plate\n");
    assertThat(checkInto("K7-right", "--corrects", "2", "--because", "x"))
        .isEqualTo(
            new Run(
                1, "", "K7-right: entry 2 was already corrected by entry 3. Correct that one.\n"));
    assertThat(checkInto("K7-right", "--corrects", "1", "--because", "x").err())
        .isEqualTo(
            "K7-right: entry 1 is of the kind opening. A correction must be of the same kind.\n");
    assertThat(checkInto("K7-right", "--corrects", "3").code()).isEqualTo(2);
  }

  private Run checkInto(String code, String... more) {
    List<String> all = new ArrayList<>(arguments(code));
    all.addAll(Arrays.asList(more));
    return Run.caryatid(all.toArray(String[]::new));
  }

  private List<String> arguments(String code) {
    return List.of(
        "check",
        "sample-recordings/k7/barefoot-1.csv",
        "--trial",
        "sample-recordings/k7/barefoot.yaml",
        "--plate",
        "sample-recordings/k7/plate.yaml",
        "--out",
        folder.resolve("out").toString(),
        "--replace",
        "--record",
        code,
        "--records",
        folder.toString());
  }
}
