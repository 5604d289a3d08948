package caryatid.blackbox;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.blackbox.Fitting.Kind;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What was answered for a wearer on a plate and day is not asked again. */
class ClinicAnswersTest {
  private static final String SIDE = "as-meant: ['side right']";

  @TempDir private Path folder;
  private Fitting fitting;

  /** One plate and no frontal mark: nothing proves the side. */
  @BeforeEach
  void sagittalOnly() throws IOException {
    fitting = Fitting.of(folder, Kind.K7).sagittalOnly();
    Files.createDirectory(folder.resolve("records"));
  }

  private Run check(String... more) {
    String[] all = new String[more.length + 2];
    System.arraycopy(more, 0, all, 2, more.length);
    all[0] = "--records";
    all[1] = fitting.file("records");
    return fitting.check(all);
  }

  private void answered() {
    assertThat(check().err()).contains(SIDE);
    String before = fitting.read("sheet.yaml");
    fitting.line(SIDE);
    assertThat(check().err()).isEmpty();
    fitting.write("sheet.yaml", before);
  }

  @Test
  void aSideIsAskedOnlyOnceInASession() {
    answered();
    fitting.recordAgain().sheet("^at: (.*)T\\d\\d:", "at: $1T17:");
    Run again = check();
    assertThat(again.err()).isEmpty();
    assertThat(again.out())
        .contains("As answered before in this session: side right.")
        .contains("Asked about and confirmed in the sheet: side right.");
    Run recheck = Run.caryatid("check", fitting.file("out/stand-report.pdf"));
    assertThat(recheck.code()).as(recheck.err()).isZero();
  }

  @Test
  void programsAreToldBesideTheResult() {
    answered();
    Run again = check("--json");
    assertThat(again.code()).isZero();
    assertThat(again.err()).isEqualTo("As answered before in this session: side right.\n");
    assertThat(again.out()).containsPattern("\"as-meant\" : \\[\\s+\"side right\"\\s+\\]");
  }

  @Test
  void itIsAskedAgainOnAnotherDay() {
    answered();
    fitting.sheet("^at: 2026-03-04", "at: 2026-03-05");
    assertThat(check().err()).contains(SIDE);
  }

  @Test
  void itIsAskedAgainOfAnotherWearer() {
    answered();
    fitting.sheet("^wearer: .*", "wearer: K8");
    assertThat(check().err()).contains(SIDE);
  }

  @Test
  void itIsAskedAgainOnAnotherPlate() {
    answered();
    fitting.write("plates.yaml", fitting.read("plates.yaml") + "# moved\n");
    assertThat(check().err()).contains(SIDE);
  }

  /** An offset is one stand's alone. */
  @Test
  void whatHoldsForOneStandAloneIsAskedOfEach() {
    String before = fitting.sheet("forward-mm: 231", "forward-mm: 170").read("sheet.yaml");
    fitting.line("as-meant: ['side right', 'ankle axis right sagittal']");
    assertThat(check().err()).isEmpty();
    fitting.write("sheet.yaml", before);
    assertThat(check().err())
        .contains("as-meant: ['ankle axis right sagittal']")
        .doesNotContain("side right");
  }

  @Test
  void theClinicsFileNamesNoWearer() throws IOException {
    answered();
    assertThat(Files.readString(folder.resolve("records/clinic/clinic.json")))
        .contains("\"answer\" : \"side right\"", "\"day\" : \"2026-03-04\"")
        .doesNotContain("K7");
  }

  @Test
  void aCheckAloneMakesNoFolderOfRecords() throws IOException {
    Files.delete(folder.resolve("records"));
    fitting.line(SIDE);
    assertThat(check().err()).isEmpty();
    assertThat(folder.resolve("records")).doesNotExist();
  }
}
