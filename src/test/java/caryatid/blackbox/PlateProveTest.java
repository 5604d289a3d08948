package caryatid.blackbox;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A plate is proven by a weight on marked places, and the proof stays with its description. */
class PlateProveTest {
  private static final Path PLATE = Path.of("sample-recordings/k7/plate.yaml");
  private static final Path SHEET = Path.of("sample-recordings/plate/proof.yaml");
  private static final Path EXPORT = Path.of("sample-recordings/k7/barefoot-1.csv");

  @TempDir private Path folder;

  private Run prove(Path plate, Path sheet, String... more) {
    Stream<String> arguments =
        Stream.of(
                Stream.of(
                    "plate", "prove", plate.toString(), sheet.toString(), "--records", records()),
                Stream.of(more))
            .flatMap(s -> s);
    return Run.caryatid(arguments.toArray(String[]::new));
  }

  private String records() {
    return folder.resolve("records").toString();
  }

  @Test
  void aProofIsWrittenBelowItsDescription() throws IOException {
    Path proven = folder.resolve("proven.yaml");
    Run run = prove(PLATE, SHEET, "--write", proven.toString());
    assertThat(run.err()).isEmpty();
    assertThat(run.code()).isZero();
    assertThat(run.out())
        .startsWith("Proven: plate 1, with a weight on 5 marks.")
        .endsWith("Wrote " + proven + ": the description with its proof.\n");
    assertThat(Files.readString(proven))
        .startsWith(Files.readString(PLATE) + "proof:\n  at: 2026-03-02T08:30+01:00\n  by: AB\n");
  }

  @Test
  void aProofIsKeptWithTheDescriptionThatTheClinicRemembers() {
    Run.caryatid("clinic", "plate", EXPORT.toString(), PLATE.toString(), "--records", records());
    Run run = prove(PLATE, SHEET);
    assertThat(run.out())
        .endsWith("The clinic remembers this description; the proof is kept with it.\n");
    Run again =
        Run.caryatid(
            "clinic", "plate", EXPORT.toString(), PLATE.toString(), "--records", records());
    assertThat(again.code()).as("another description now").isEqualTo(1);
  }

  @Test
  void aCheckTakesWhatWasMeasuredAndSaysSo() {
    Path proven = folder.resolve("proven.yaml");
    prove(PLATE, SHEET, "--write", proven.toString());
    String stated = check(PLATE);
    String measured = check(proven);
    assertThat(stated)
        .contains("RecordingRemark.UNPROVEN")
        .doesNotContain("\"standard-uncertainty\" : 1.7181");
    assertThat(measured)
        .contains("RecordingRemark.PROVEN", "\"standard-uncertainty\" : 1.7181")
        .contains("\"degrees-of-freedom\" : 5.8518")
        .doesNotContain("RecordingRemark.UNPROVEN");
  }

  private static String check(Path plate) {
    return Run.caryatid(
            "check",
            EXPORT.toString(),
            "--trial",
            "sample-recordings/k7/barefoot.yaml",
            "--plate",
            plate.toString(),
            "--json")
        .out();
  }

  @Test
  void aDescriptionWithReversedAxesIsNotProven() throws IOException {
    Path wrong = folder.resolve("wrong.yaml");
    Files.writeString(
        wrong,
        Files.readString(PLATE).replace("right: +x, anterior: +y", "right: -x, anterior: -y"));
    Run run = prove(wrong, SHEET);
    assertThat(run.code()).isEqualTo(1);
    assertThat(run.out()).isEmpty();
    assertThat(run.err())
        .contains(
            SHEET
                + ": “plate 1” shows the weight reversed or swapped. By the marks the description"
                + " must say: axes: {right: +x, anterior: +y, up: +z}\n");
  }

  @Test
  void aRecordingThatIsNotThereAndOneThatIsNamedTwiceAreTold() throws IOException {
    Path sheet = folder.resolve("proof.yaml");
    Files.writeString(
        sheet,
        """
        plate-proof: 1
        at: 2026-03-02T08:30+01:00
        by: AB
        place-mm: 1
        weights:
          - {recording: a.csv, right-mm: 0, anterior-mm: 0, kg: 20}
        person: {standing: b.csv, leaning-forward: b.csv, one-foot: c.csv, foot: left}
        """);
    Run run = prove(PLATE, sheet);
    assertThat(run.code()).isEqualTo(1);
    assertThat(run.err())
        .contains("`b.csv` is named twice. Name a separate recording for each weight")
        .contains(
            "`a.csv` was not found in this file's folder. Copy it there, or correct its name.");
  }
}
