package caryatid.blackbox;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import caryatid.alignment.AlignmentState;
import caryatid.alignment.Result;
import caryatid.format.ResultJson;
import caryatid.geometry.Plane;
import caryatid.loadline.Finding;
import caryatid.loadline.Verdict;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What version 0.1.0 wrote is read for ever. The numbers were taken from the files with other
 * tools; how the files were made stands beside them.
 */
class FrozenFilesTest {
  private static final ObjectMapper MAPPER = new ObjectMapper();

  /** Usual items of a transfemoral prosthesis, set to 3, 4, 5 and so on. */
  private static final int ITEMS = 13;

  @TempDir private Path folder;

  // --- Results

  @ParameterizedTest
  @CsvSource({
    "k7-barefoot,          3, 10, 19.692613975817263,  WITHIN",
    "k7-shoe,              1,  5, -8.549782076134669,  OUTSIDE_TOO_CLOSE",
    "m4-barefoot,          1, 14, 23.564061358882174,  INSIDE_TOO_CLOSE",
    "m4-shoe,              1, 14, -19.760011121047732, OUTSIDE",
    "story-1,              1, 10, -15.09900563286574,  OUTSIDE",
    "story-2,              3, 10, -5.020204348208872,  OUTSIDE",
    "story-3,              1, 10, 30.61771518988656,   INSIDE_TOO_CLOSE",
    "story-walking-shoe,   1, 10, 18.630992010640064,  INSIDE_TOO_CLOSE",
    "story-sports-shoe,    1, 10, 21.2418338438947,    INSIDE_TOO_CLOSE",
  })
  void aResultIsReadToTheLastDigit(
      String name, int stands, int offsets, double kneeMm, Verdict verdict) throws Exception {
    Result result = ResultJson.read(Frozen.result(name));
    assertThat(result.program()).isEqualTo("Caryatid 0.1.0");
    assertThat(result.method()).isEqualTo(1);
    AlignmentState state = result.state();
    assertThat(state.stands()).hasSize(stands);
    assertThat(state.offsets()).hasSize(offsets);
    assertThat(state.findings()).hasSize(2);
    Finding knee = state.findings().get(0);
    assertThat(knee.offset().plane()).isEqualTo(Plane.SAGITTAL);
    assertThat(knee.offset().landmark()).isEqualTo("knee centre");
    assertThat(knee.offset().mm().value()).isEqualTo(kneeMm);
    assertThat(knee.verdict()).isEqualTo(verdict);
  }

  @ParameterizedTest
  @ValueSource(strings = {"k7-barefoot", "k7-shoe", "m4-barefoot", "m4-shoe", "story-2"})
  void everyFindingOfAResultHasTheNumbersOfTheFile(String name) throws Exception {
    byte[] json = Frozen.result(name);
    List<Finding> findings = ResultJson.read(json).state().findings();
    JsonNode kept = MAPPER.readTree(json).at("/states/0/findings");
    assertThat(findings).hasSize(kept.size());
    for (int i = 0; i < findings.size(); i++) {
      Finding read = findings.get(i);
      JsonNode there = kept.get(i);
      assertThat(read.probabilityWithin()).isEqualTo(there.get("probability-within").doubleValue());
      assertThat(read.offset().mm().value()).isEqualTo(there.at("/offset/mm/value").doubleValue());
      assertThat(read.offset().mm().contributions())
          .hasSize(there.at("/offset/mm/contributions").size());
      assertThat(read.target().recommendedMm())
          .isEqualTo(there.at("/target/recommended-mm").doubleValue());
      assertThat(read.target().belowMm()).isEqualTo(there.at("/target/below-mm").doubleValue());
      assertThat(read.target().aboveMm()).isEqualTo(there.at("/target/above-mm").doubleValue());
      assertThat(read.target().source()).isEqualTo(there.at("/target/source").textValue());
    }
  }

  @Test
  void resultsAndEntriesFollowTheSchemasOfTheirTime() throws IOException {
    assertThat(violations("result", Frozen.result("m4-shoe"))).isEmpty();
    int entries = 0;
    for (String store : List.of("en", "de", "fr", "es", "mixed")) {
      for (Map.Entry<String, byte[]> file :
          Frozen.unzipped(Frozen.V1.resolve("records/" + store + ".zip")).entrySet()) {
        if (file.getKey().endsWith("/entry.json")) {
          assertThat(violations("fitting-entry", file.getValue())).as(file.getKey()).isEmpty();
          entries++;
        }
      }
    }
    assertThat(entries).as("14, 14 and a stone, 13, 13, 12").isEqualTo(67);
  }

  private static List<?> violations(String schema, byte[] json) throws IOException {
    Schema one =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(Files.readString(Frozen.V1.resolve("schemas/" + schema + ".schema.json")));
    return one.validate(new String(json, UTF_8), InputFormat.JSON);
  }

  // --- Reports

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "k7-three-stands | 19.7 mm anterior",
        "m4-de           | 19.8 mm posterior",
        "k7-based-on     | 30.6 mm anterior"
      })
  void aReportIsComputedAgainFromTheFilesInsideIt(String name, String knee) {
    Run run = Run.caryatid("check", Frozen.V1.resolve("reports/" + name + ".pdf").toString());
    assertThat(run.err()).isEmpty();
    assertThat(run.code()).isZero();
    assertThat(run.out().replace('\u00a0', ' ')).contains(knee).contains("older method");
  }

  // --- Records

  @ParameterizedTest
  @CsvSource({"en, 14, 2", "de, 14, 2", "fr, 13, 1", "es, 13, 1"})
  void aRecordIsShownInWhateverLanguageItWasWritten(String language, int entries, int stands)
      throws IOException {
    Clinic clinic = new Clinic(Frozen.store(language, folder));
    String code = "M4-" + language;
    Run run = clinic.record("show", code);
    assertThat(run.err()).isEmpty();
    assertThat(run.code()).isZero();
    String shown = run.out().replace('\u00a0', ' ');
    assertThat(shown)
        .startsWith(
            "Record " + code + ": " + entries + " entries. Head digest " + digest(clinic, code));
    IntStream.range(0, ITEMS)
        .forEach(i -> assertThat(shown).containsPattern("; set " + (i + 3) + " (deg|mm|N m)"));
    assertThat(shown)
        .contains("own item; set 1 mm")
        .contains("own deviation; plane frontal; phase swing")
        .contains("prosthetic knee: locked, standing")
        .contains("recommended 5 deg; set 3 deg")
        .contains("attempts: 3\n      succeeded: 2\n")
        .contains("length and pelvis, corrected by entry " + entries)
        .contains("kept: other-kept.txt (other)");
    assertThat(shown.lines().filter(line -> line.contains("; phase ")))
        .as("18 usual deviations and one more")
        .hasSize(19);
    assertThat(shown.lines().filter(line -> line.contains("−19.8 ± 17.9 mm"))).hasSize(stands);
    assertThat(shown.contains("prosthetic knee: not locked, standing")).isEqualTo(stands == 2);
  }

  /** That the knee was locked stands in the kept result alone, not in the stand's entry. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "en | Take care: The knee may bend. Seat the wearer, or hands on the rails and a helper. Correct it, then stand again. The load line runs 19.8 mm behind | Remark: The prosthetic knee was locked: ",
        "de | Vorsicht: Das Knie kann einknicken. Den Anwender sich setzen lassen, oder Hände an den Gehbarren und eine Hilfsperson dazu. Den Aufbau korrigieren, dann erneut stehen lassen. | Hinweis: Das Prothesenknie war gesperrt: ",
        "fr | Attention : Le genou peut se dérober. Asseoir le porteur, ou mains sur les barres parallèles et une personne pour l'aider. Corriger l'alignement, puis refaire l'essai debout. | Remarque : Le genou prothétique était verrouillé : ",
        "es | Precaución: La rodilla puede ceder. Sentar al usuario, o manos en las barras paralelas y otra persona para ayudarle. Corregir la alineación y después repetir el ensayo de pie. | Observación: La rodilla protésica estaba bloqueada: ",
      })
  void whatAKeptResultWarnsOfComesFirst(String language, String bends, String locked)
      throws IOException {
    Clinic clinic = new Clinic(Frozen.store(language, folder));
    Run run = clinic.record("show", "M4-" + language, "--language", language);
    assertThat(run.code()).as(run.err()).isZero();
    List<String> lines = run.out().lines().map(l -> l.replaceAll("[\u00a0\u202f]", " ")).toList();
    assertThat(lines.get(1)).startsWith(bends);
    assertThat(lines.get(2)).startsWith(locked);
  }

  /** The sum of the inventory's bytes, counted here. */
  private static String digest(Clinic clinic, String code) throws IOException {
    return Frozen.sum(
        "SHA-512",
        Files.readAllBytes(clinic.folder().resolve("records/" + code + "/inventory.json")));
  }

  @Test
  void aRecordThatMixesLanguagesIsShownWithEverythingThatWasSet() throws IOException {
    Clinic clinic = new Clinic(Frozen.store("mixed", folder));
    Run run = clinic.record("show", "mixed-1");
    assertThat(run.code()).as(run.err()).isZero();
    String shown = run.out().replace('\u00a0', ' ');
    assertThat(shown).contains("12 entries", "set 5 deg", "set 6 deg", "set 7 deg");
    assertThat(shown).contains("set 900 mm", "set 901 mm");
    assertThat(shown).contains("entry 3: −3.3 ± 6.5 mm", "entry 6: +16.5 ± 6.5 mm");
    assertThat(clinic.record("compare", "mixed-1", "3", "6").out().replace('\u00a0', ' '))
        .contains("offset: −3.3 mm -> 16.5 mm");
  }

  @Test
  void anErasedRecordIsStillToldOf() throws IOException {
    Clinic clinic = new Clinic(Frozen.store("de", folder));
    assertThat(clinic.record("list").out())
        .isEqualTo("M4-de\ngone: erased 2026-03-06 08:00 +01:00 by CD: requested\n");
  }

  @ParameterizedTest
  @ValueSource(strings = {"en", "de", "fr", "es", "mixed"})
  void readingChangesNoByteOfAStore(String name) throws IOException {
    Clinic clinic = new Clinic(Frozen.store(name, folder));
    Map<String, String> before = Frozen.sums(clinic.folder().resolve("records"));
    String code = name.equals("mixed") ? "mixed-1" : "M4-" + name;
    assertThat(clinic.record("verify").out()).contains(code + ": in good order");
    assertThat(clinic.record("show", code).code()).isZero();
    Run report = clinic.record("report", code, "--out", folder.resolve("record.pdf").toString());
    assertThat(report.code()).as(report.err()).isZero();
    assertThat(Frozen.sums(clinic.folder().resolve("records"))).isEqualTo(before);
  }

  @Test
  void anEntryIsAddedAfterEntriesOfTheEarlierVersion() throws IOException {
    Clinic clinic = new Clinic(Frozen.store("fr", folder));
    Run run = clinic.record("add", "M4-fr", "note", "--by", "CD", "text=later");
    assertThat(run.out()).startsWith("Added entry 14 to record M4-fr: note");
    assertThat(clinic.record("verify", "M4-fr").out()).contains("in good order, 14 entries");
  }

  // --- Packed records

  @ParameterizedTest
  @CsvSource({"M4-es, es", "mixed-1, mixed"})
  void aPackedRecordIsTakenInWhole(String code, String store) throws IOException {
    Clinic here = new Clinic(folder.resolve("here"));
    Path zip = Frozen.V1.resolve("packed/" + code + ".zip");
    Run run = here.record("unpack", zip.toString());
    assertThat(run.code()).as(run.err()).isZero();
    assertThat(here.record("verify", code).out()).contains(code + ": in good order");
    Clinic there = new Clinic(Frozen.store(store, folder.resolve("there")));
    assertThat(here.record("show", code)).isEqualTo(there.record("show", code));
  }

  /** BagIt 1.0 (RFC 8493, 2.1.3): a line of the manifest is a sum and a file's path. */
  @ParameterizedTest
  @ValueSource(strings = {"M4-es", "mixed-1"})
  void aPackedRecordIsWhatItsManifestSays(String code) throws IOException {
    Map<String, byte[]> files = Frozen.unzipped(Frozen.V1.resolve("packed/" + code + ".zip"));
    String manifest = code + "/manifest-sha256.txt";
    assertThat(files).containsKey(manifest);
    List<String> lines = new String(files.get(manifest), UTF_8).lines().toList();
    assertThat(lines).hasSizeGreaterThan(20);
    for (String line : lines) {
      String[] parts = line.split(" +", 2);
      assertThat(Frozen.sum("SHA-256", files.get(code + "/" + parts[1]))).isEqualTo(parts[0]);
    }
  }
}
