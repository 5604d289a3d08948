package caryatid.blackbox;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import java.util.zip.GZIPOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;

/** What the inspect command shows, asks and refuses. */
class InspectCommandTest extends Inspecting {
  private static final Path SAMPLES = Path.of("sample-recordings/k7");

  private static final String COLUMNS_OF_ONE =
      "plate 1: force-z: Fz, cop-x: CoPx, cop-y: CoPy (concluded: from their names)";

  @Test
  void withoutADescriptionItShowsWhatIsThereAndAsksForTheRest() {
    Run run = Run.caryatid("inspect", file("stand.csv"));
    assertThat(run.code()).isZero();
    assertThat(run.err()).isEmpty();
    assertThat(lines(run))
        .containsExactly(
            "text encoding UTF-8 (concluded: its bytes are well formed as such)",
            "columns are separated by commas (concluded: so the rows have 4 cells each)",
            "decimal mark: point (concluded: as in 0.0)",
            "column names in line 1 (concluded: text above the numbers)",
            "rows: 30, from line 2 on (concluded: the first line of numbers)",
            COLUMNS_OF_ONE,
            "times in column Time (s), in s (stated in the file)",
            "10.0 Hz for 2.90 s (concluded: from the first and the last time)",
            "",
            "plate 1: loaded in rows 11 to 30 (1.00 s to 2.90 s)",
            "vertical force over time, up to 800.0:",
            "            ####################",
            "            ####################",
            "            ####################",
            "            ####################",
            "            ####################",
            "  ------------------------------",
            "",
            "Remarks",
            "- Note: plate 1: 95.0 % of the samples repeat the one before; the export was written"
                + " faster than the plate was sampled.",
            "",
            "What must be known before the file can be used",
            "- the unit of the centre of pressure is stated nowhere (plate 1). Its middle"
                + " lies this far from the export's zero:",
            "  0.02 mm if it is in mm,",
            "  0.20 mm if in cm,",
            "  20.00 mm if in m,",
            "  0.51 mm if in inch.",
            "  Add to the plate description under the plate: units: {cop: unknown}, with mm,"
                + " cm, m or inch for unknown.",
            "- the unit of force is stated nowhere (plate 1): in N it is the weight of 81.6"
                + " kg, in kg of 800.0 kg. Add to the plate description under the plate: units:"
                + " {force: unknown}, with N or kg for unknown.",
            "- nothing states which of the export's axes point to the person's right, forward and"
                + " up. Add to the plate description: axes: {right: unknown, anterior: unknown, up:"
                + " unknown}, with +x, -x, +y, -y, +z or -z for each unknown. To find out, step on"
                + " the empty plate and lean forward, then to the right: the numbers of the centre"
                + " of pressure show which axis that is, and whether it rises or falls.",
            "",
            "The file cannot be used yet. To write a description that can be completed, add:"
                + " --write plate.yaml");
  }

  @Test
  void underADescriptionNothingIsAsked() {
    Run run = Run.caryatid("inspect", file("stand.csv"), "--plate", file("plate.yaml"));
    assertThat(run.code()).isEqualTo(1);
    assertThat(lines(run))
        .contains(
            "plate 1: force in N (from the plate description)",
            "axes: {right: +x, anterior: +y, up: +z} (from the plate description)",
            "mean force while loaded: the weight of 81.6 kg",
            "vertical force over time, up to 800 N:",
            "- Note: plate 1: samples with less than 20 N on the plate, left out: 10.")
        .endsWith(TOO_SHORT, "", "The file cannot be used.")
        .noneMatch(line -> line.contains("nowhere"));
  }

  @Test
  void aGzippedExportIsUnpacked() throws IOException {
    try (OutputStream out = new GZIPOutputStream(Files.newOutputStream(folder.resolve("s.gz")))) {
      Files.copy(folder.resolve("stand.csv"), out);
    }
    Run run = Run.caryatid("inspect", file("s.gz"), "--plate", file("plate.yaml"));
    assertThat(run.code()).isEqualTo(1);
    assertThat(lines(run))
        .startsWith("gz-compressed (concluded: its first two bytes say so)")
        .endsWith(TOO_SHORT, "", "The file cannot be used.");
  }

  @Test
  @DisabledOnOs(OS.WINDOWS)
  void aPipeIsRefused() throws IOException, InterruptedException {
    Process made = new ProcessBuilder("mkfifo", file("pipe")).start();
    assertThat(made.waitFor(10, TimeUnit.SECONDS)).isTrue();
    refused(
        Run.caryatid("inspect", file("pipe")),
        "pipe: expected an ordinary file, found a pipe or a device. Save the recording to a file"
            + " first.");
  }

  @Test
  void aFileThatIsNotThereIsRefused() {
    refused(
        Run.caryatid("inspect", file("no.csv")),
        "no.csv: expected a file, found nothing of that name. Check the name and the folder.");
  }

  /** What is understood is shown although the file cannot be used. */
  @Test
  void aDamagedFileIsShownWithAllThatIsWrong() throws IOException {
    String text = Files.readString(folder.resolve("stand.csv"));
    Files.writeString(
        folder.resolve("stand.csv"),
        text.replace("1.5,800", "1.5,abc").replace("2.0,800,0.01", "2.0,800"));
    Run run = Run.caryatid("inspect", file("stand.csv"), "--plate", file("plate.yaml"));
    assertThat(run.code()).isEqualTo(1);
    assertThat(lines(run))
        .contains(COLUMNS_OF_ONE)
        .containsSequence(
            "What is wrong with the file",
            "- line 17, column Fz: expected a number, found 'abc'. Empty the cell or export again.",
            "- line 22: expected 4 cells, found 3. Delete the row or export again.",
            "",
            "The file cannot be used.");
  }

  @Test
  void withoutARecordingItSaysHowItIsUsed() {
    Run run = Run.caryatid("inspect");
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err()).startsWith("Missing required parameter: 'RECORDING'");
  }

  /** The sample recordings of one plate are understood as their descriptions say. */
  @Test
  void aSampleIsUnderstoodWithoutAQuestion() {
    Run run =
        Run.caryatid(
            "inspect",
            SAMPLES.resolve("shoe.csv").toString(),
            "--plate",
            SAMPLES.resolve("plate-pressure.yaml").toString());
    assertThat(run.code()).isZero();
    assertThat(lines(run)).endsWith("The file can be used with this description.");
  }
}
