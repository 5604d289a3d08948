package caryatid.blackbox;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import caryatid.alignment.Result;
import caryatid.format.ResultJson;
import caryatid.loadline.Finding;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.zip.GZIPInputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Whole files as version 2 writes them are read for ever: results, reports, a record with an entry
 * of every kind, and the same record packed. The numbers were taken from the files with other
 * tools.
 */
class SecondVersionFilesTest {
  private static final Path V2 = Path.of("src/test/resources/caryatid/frozen/v2");
  private static final String CODE = "M4-left";

  @TempDir private Path folder;

  private static byte[] result(String name) throws IOException {
    try (InputStream in =
        new GZIPInputStream(Files.newInputStream(V2.resolve("results/" + name + ".json.gz")))) {
      return in.readAllBytes();
    }
  }

  private Clinic unzipped() throws IOException {
    for (Map.Entry<String, byte[]> file :
        Frozen.unzipped(V2.resolve("records/" + CODE + ".zip")).entrySet()) {
      Path path = folder.resolve("there").resolve(file.getKey());
      Files.createDirectories(path.getParent());
      Files.write(path, file.getValue());
    }
    return new Clinic(folder.resolve("there/records"));
  }

  private static String shown(Clinic clinic) {
    Run run = clinic.record("show", CODE);
    assertThat(run.code()).as(run.err()).isZero();
    return run.out().replace('\u00a0', ' ');
  }

  @ParameterizedTest
  @CsvSource({
    "k7-barefoot, 3, 10, 19.692613975817263,  -51.187800607090935, 0.9767888597980026",
    "m4-shoe,     1, 14, -19.760011121047732, 2.622507835854748,   0.005541748922920573"
  })
  void aResultIsReadToTheLastDigit(
      String name, int stands, int offsets, double firstMm, double secondMm, double within)
      throws Exception {
    Result result = ResultJson.read(result(name));
    assertThat(result.method()).isEqualTo(2);
    assertThat(result.program()).isEqualTo("Caryatid 0.2.0");
    assertThat(result.state().stands()).hasSize(stands);
    assertThat(result.state().offsets()).hasSize(offsets);
    List<Finding> findings = result.state().findings();
    assertThat(findings)
        .extracting(f -> f.offset().mm().value())
        .containsExactly(firstMm, secondMm);
    assertThat(findings.get(0).probabilityWithin()).isEqualTo(within);
  }

  /** A program that writes a newer form still reads these; this half of the test then goes. */
  @ParameterizedTest
  @ValueSource(strings = {"k7-barefoot", "m4-shoe"})
  void aResultIsWrittenAgainToTheSameByte(String name) throws Exception {
    byte[] json = result(name);
    String printed = new String(ResultJson.write(ResultJson.read(json)), UTF_8) + "\n";
    assertThat(printed).as("with the line's end").isEqualTo(new String(json, UTF_8));
    JsonNode there = new ObjectMapper().readTree(json);
    assertThat(there.get("version").intValue()).isEqualTo(2);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {"k7-barefoot | 19.7 mm anterior", "m4-shoe-de | 19.8 mm posterior"})
  void aReportIsComputedAgainFromTheFilesInsideIt(String name, String knee) {
    Run run = Run.caryatid("check", V2.resolve("reports/" + name + ".pdf").toString());
    assertThat(run.err()).isEmpty();
    assertThat(run.code()).isZero();
    assertThat(run.out().replace('\u00a0', ' ')).contains(knee);
  }

  @Test
  void aRecordIsShownWithWhatEveryKindOfEntrySays() throws IOException {
    Clinic clinic = unzipped();
    assertThat(clinic.record("verify").out()).contains(CODE + ": in good order, 12 entries");
    assertThat(shown(clinic))
        .contains("body mass: 75 kg", "minutes since donning: 20", "body mass, highest 70 kg")
        .contains(
            "recommended 5 deg; set 3.5 deg", "own item; set 1 mm", "left 1009 mm; right 1003 mm")
        .contains("heel height: 20 mm", "load on the prosthetic side: 41.8 %", "comfort: 6")
        .contains("why: walks well", "attempts: 3\n      succeeded: 2\n", "heel height set: 14 mm")
        .contains("text: steady", "corrects entry 5: swapped")
        .contains("entry 6: −19.8 ± 16.7 mm; recommended +15.0 (+5.0 to +30.0)");
  }

  @Test
  void readingChangesNoByteAndAnEntryIsAdded() throws IOException {
    Clinic clinic = unzipped();
    Map<String, String> before = Frozen.sums(clinic.folder().resolve("records"));
    String report = folder.resolve("record.pdf").toString();
    assertThat(clinic.record("report", CODE, "--out", report).code()).isZero();
    shown(clinic);
    assertThat(Frozen.sums(clinic.folder().resolve("records"))).isEqualTo(before);
    assertThat(clinic.record("add", CODE, "note", "--by", "CD", "text=later").out())
        .startsWith("Added entry 13 to record M4-left: note");
    assertThat(clinic.record("verify", CODE).out()).contains("in good order, 13 entries");
  }

  @Test
  void aPackedRecordIsTakenInWhole() throws IOException {
    Clinic here = new Clinic(folder.resolve("here"));
    Run run = here.record("unpack", V2.resolve("packed/" + CODE + ".zip").toString());
    assertThat(run.code()).as(run.err()).isZero();
    assertThat(here.record("verify", CODE).out()).contains(CODE + ": in good order");
    assertThat(shown(here)).isEqualTo(shown(unzipped()));
  }
}
