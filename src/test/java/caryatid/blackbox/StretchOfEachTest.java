package caryatid.blackbox;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Of several recordings of one alignment, each has the stretch that was set for it by hand. */
class StretchOfEachTest {
  private static final JsonMapper MAPPER = new JsonMapper();

  private static final String TARGETS = "targets:\n";

  @TempDir private Path path;

  private Folder folder;

  /** The second recording is the first one backwards: another one, and as quiet. */
  @BeforeEach
  void twoStands() throws IOException {
    folder = new Folder(path);
    List<String> lines = Files.readAllLines(path.resolve("stand.csv"));
    List<String> values =
        new ArrayList<>(
            lines.subList(2, lines.size()).stream()
                .map(line -> line.substring(line.indexOf(',')))
                .toList());
    Collections.reverse(values);
    List<String> back = new ArrayList<>(lines.subList(0, 2));
    for (int i = 0; i < values.size(); i++) {
      String time = lines.get(i + 2);
      back.add(time.substring(0, time.indexOf(',')) + values.get(i));
    }
    Files.write(path.resolve("stand-2.csv"), back);
  }

  private Run check(String... more) {
    List<String> all = new ArrayList<>(List.of(folder.file("stand-2.csv")));
    all.addAll(List.of(more));
    return folder.check(all.toArray(String[]::new));
  }

  private JsonNode stands(String... more) throws IOException {
    List<String> all = new ArrayList<>(List.of(more));
    all.add("--json");
    Run run = check(all.toArray(String[]::new));
    assertThat(run.code()).as(run.err()).isZero();
    return MAPPER.readTree(run.out()).get("state").get("stands");
  }

  private static double anteriorMm(JsonNode stand) {
    return stand.at("/standing/loads/0/cop-anterior-mm/value").doubleValue();
  }

  /**
   * The force-weighted mean of the exported point, row by row, with no code of the program; the
   * plate's origin is the person's.
   */
  private double meanMm(String file, double fromS, double toS) throws IOException {
    double moment = 0;
    double force = 0;
    for (String line : Files.readAllLines(path.resolve(file)).subList(2, 2002)) {
      String[] cells = line.split(",");
      double time = Double.parseDouble(cells[0]);
      if (time >= fromS && time <= toS) {
        moment += Double.parseDouble(cells[1]) * Double.parseDouble(cells[3]);
        force += Double.parseDouble(cells[1]);
      }
    }
    return moment / force;
  }

  private void sheetWithStretches(String... entries) throws IOException {
    String section = "stretches:\n  - {" + String.join("}\n  - {", entries) + "}\n";
    folder.sheet(TARGETS, section + TARGETS);
  }

  /** Rounding alone: sums of 2000 rows in another order. */
  @Test
  void eachIsMeasuredInItsOwnStretch() throws IOException {
    JsonNode stands = stands("--stretch", "stand.csv=3-12", "--stretch", "stand-2.csv=5-15.5");
    assertThat(anteriorMm(stands.get(0))).isCloseTo(meanMm("stand.csv", 3, 12), within(1e-9));
    assertThat(anteriorMm(stands.get(1))).isCloseTo(meanMm("stand-2.csv", 5, 15.5), within(1e-9));
    assertThat(meanMm("stand.csv", 3, 12))
        .as("a stretch that would not show proves nothing")
        .isNotCloseTo(meanMm("stand.csv", 5, 15.5), within(0.01));
  }

  @Test
  void settingOneLeavesTheOther() throws IOException {
    JsonNode none = stands();
    JsonNode second = stands("--stretch", folder.file("stand-2.csv") + "=-15.5");
    assertThat(second.get(0).get("standing")).isEqualTo(none.get(0).get("standing"));
    assertThat(anteriorMm(second.get(1)))
        .isCloseTo(meanMm("stand-2.csv", 0, 15.5), within(1e-9))
        .isNotEqualTo(anteriorMm(none.get(1)));
  }

  @Test
  void theSheetSetsThemByTheNamesOfTheFiles() throws IOException {
    JsonNode typed = stands("--stretch", "stand.csv=3-12", "--stretch", "stand-2.csv=5-");
    sheetWithStretches(
        "recording: stand-2.csv, from-s: 5", "recording: stand.csv, from-s: 3, to-s: 12");
    JsonNode written = stands();
    for (int i = 0; i < 2; i++) {
      assertThat(written.get(i).get("standing")).isEqualTo(typed.get(i).get("standing"));
      assertThat(written.get(i).get("standing").at("/stretch/by-hand").booleanValue()).isTrue();
    }
  }

  @Test
  void theResultSaysWhichStandsWereSetByHand() {
    assertThat(check("--stretch", "stand-2.csv=5-15.5").out().replace('\u00a0', ' '))
        .contains("Stand 2 (stand-2.csv): the part used was set by hand, from 5.00 s to 15.50 s.")
        .doesNotContain("Stand 1 (stand.csv)");
  }

  @Test
  void aReportIsReproducedWhoeverSetThem() throws IOException {
    assertThat(check("--stretch", "stand.csv=3-12", "--stretch", "stand-2.csv=5-").code()).isZero();
    reproduced(path.resolve("out/stand-report.pdf"));
    sheetWithStretches("recording: stand-2.csv, to-s: 14.25");
    assertThat(check("--stretch", "stand.csv=3-12", "--replace").code()).isZero();
    reproduced(path.resolve("out/stand-report.pdf"));
  }

  private static void reproduced(Path report) {
    Run again = Run.caryatid("check", report.toString());
    assertThat(again.err()).isEmpty();
    assertThat(again.code()).isZero();
    assertThat(again.out()).contains("is reproduced from the files inside it.");
  }

  @Test
  void aKeptStateIsReproducedAndTheRecordIsSound() throws IOException {
    Clinic clinic = new Clinic(path.resolve("records"));
    clinic.start();
    sheetWithStretches("recording: stand-2.csv, to-s: 14.25");
    Run kept =
        check(
            "--stretch",
            "stand.csv=3-12",
            "--by",
            "AB",
            "--record",
            "K7-right",
            "--records",
            path.resolve("records").toString());
    assertThat(kept.code()).as(kept.err()).isZero();
    assertThat(clinic.record("verify", "K7-right").code()).isZero();
    try (Stream<Path> files = Files.walk(path.resolve("records"))) {
      reproduced(files.filter(f -> f.toString().endsWith("report.pdf")).findFirst().orElseThrow());
    }
  }

  @Test
  void aStretchForAFileThatIsNotThereIsRefusedByName() throws IOException {
    Run run = check("--stretch", "stand-3.csv=3-12");
    assertThat(run.err())
        .startsWith(
            "--stretch: no recording called \"stand-3.csv\" is given; given: stand.csv,"
                + " stand-2.csv.");
    assertThat(run.code()).isEqualTo(2);
    sheetWithStretches("recording: stand-3.csv, from-s: 3");
    Run sheet = check();
    assertThat(folder.complaint(sheet))
        .isEqualTo(
            "sheet.yaml: a stretch is set for 'stand-3.csv', but no recording of that name is"
                + " given; given: stand.csv, stand-2.csv. Correct the name, give the recording, or"
                + " delete the stretch.");
    assertThat(sheet.code()).isEqualTo(1);
  }

  @Test
  void oneSetInTheSheetAndBesideItIsRefused() throws IOException {
    sheetWithStretches("recording: stand.csv, from-s: 3");
    assertThat(folder.complaint(check("--stretch", "stand.csv=3-")))
        .isEqualTo(
            "sheet.yaml: this sheet sets a stretch for 'stand.csv', and so does what was given"
                + " beside it. Leave one of the two out.");
  }

  @Test
  void fromAndToDoNotSayOfWhichOfSeveral() {
    Run run = check("--from", "3", "--to", "12");
    assertThat(run.err())
        .startsWith(
            "--from and --to are for one recording, but several are given. Set each by its name,"
                + " such as --stretch stand-2.csv=3.5-18.");
    assertThat(run.code()).isEqualTo(2);
  }

  @ParameterizedTest
  @CsvSource({"stand.csv", "stand.csv=", "stand.csv=-", "'stand.csv=3,5-12'", "=3-12"})
  void whatIsNoStretchIsRefused(String typed) {
    assertThat(check("--stretch", typed).err())
        .startsWith(
            "--stretch: expected RECORDING=FROM-TO in seconds, such as stand-2.csv=3.5-18, found \""
                + typed
                + "\".");
  }

  @Test
  void twoForOneRecordingAreRefused() {
    assertThat(check("--stretch", "stand.csv=3-12", "--stretch", "stand.csv=4-").err())
        .startsWith("Two stretches are set for stand.csv. Leave one of them out.");
    assertThat(check("--stretch", "stand.csv=12-3").err()).startsWith("--from must be before --to");
  }
}
