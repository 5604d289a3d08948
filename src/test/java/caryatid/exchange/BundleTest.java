package caryatid.exchange;

import static caryatid.exchange.ToldFitting.code;
import static caryatid.exchange.ToldFitting.component;
import static caryatid.exchange.ToldFitting.resources;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import caryatid.blackbox.Run;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.HexFormat;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/**
 * The bundle that `record bundle` writes, against the files of the record that it was made from.
 */
class BundleTest {
  @TempDir private static Path folder;

  private static ToldFitting fitting;
  private static JsonNode bundle;

  @BeforeAll
  static void make() {
    fitting = ToldFitting.in(folder).corrected();
    bundle = fitting.bundled("bundle.json");
  }

  @Test
  void itHasThePatientTheReportEachFindingTheComponentsTheSessionAndTheSource() {
    assertThat(bundle.path("type").asText()).isEqualTo("transaction");
    List<String> types = new ArrayList<>();
    bundle.path("entry").forEach(e -> types.add(e.path("resource").path("resourceType").asText()));
    assertThat(types.stream().distinct())
        .containsExactly(
            "Patient", "Device", "DocumentReference", "Procedure", "Observation", "Provenance");
    assertThat(resources(bundle, "Observation").stream().map(o -> code(o) + " " + status(o)))
        .containsExactly(
            "socket-comfort final",
            "offset-mm entered-in-error",
            "offset-mm entered-in-error",
            "load-share-percent entered-in-error",
            "offset-mm final",
            "offset-mm final",
            "load-share-percent final",
            "offset-mm final",
            "load-share-percent final",
            "socket-comfort final");
  }

  private static String status(JsonNode resource) {
    return resource.path("status").asText();
  }

  /** The patient is nothing but the identifier that was given. */
  @Test
  void ofThePatientItHasTheIdentifierAlone() {
    JsonNode patient = resources(bundle, "Patient").get(0);
    assertThat(patient.toString())
        .isEqualTo(
            "{\"resourceType\":\"Patient\",\"identifier\":[{\"system\":\"urn:oid:2.25.1234\","
                + "\"value\":\"Q8-77123\"}]}");
    assertThat(fitting.everything()).doesNotContain(ToldFitting.NUMBER);
  }

  @Test
  void itBreaksNoRule() {
    assertThat(BundleFaults.of(bundle)).isEmpty();
  }

  /** Control cases: what a validator does not notice, or only warns of, is found here. */
  @TestFactory
  Stream<DynamicTest> aBundleThatIsSpoiltIsFound() {
    return Stream.of(
        spoilt("unit: offset-mm cm", b -> offset(b).withObject("/valueQuantity").put("code", "cm")),
        spoilt(
            "unit: load-share-percent percent",
            b ->
                observed(b, "load-share-percent")
                    .withObject("/valueQuantity")
                    .put("code", "percent")),
        spoilt(
            "reference to nothing: urn:uuid:0",
            b -> offset(b).withObject("/device").put("reference", "urn:uuid:0")),
        spoilt(
            "extension: http://hl7.org/fhir/StructureDefinition/iso21090-uncertanty",
            b ->
                ((ObjectNode) offset(b).path("valueQuantity").path("extension").path(0))
                    .put("url", "http://hl7.org/fhir/StructureDefinition/iso21090-uncertanty")),
        spoilt(
            "time: effectiveDateTime 2026-03-04T10:15+01:00",
            b -> offset(b).put("effectiveDateTime", "2026-03-04T10:15+01:00")),
        spoilt(
            "code: outsid",
            b ->
                ((ObjectNode) offset(b).path("method").path("coding").path(0))
                    .put("code", "outsid")),
        spoilt(
            "stored twice: Patient",
            b -> ((ObjectNode) b.path("entry").path(0).path("request")).remove("ifNoneExist")));
  }

  private static DynamicTest spoilt(String fault, Consumer<JsonNode> change) {
    return DynamicTest.dynamicTest(
        fault,
        () -> {
          JsonNode copy = bundle.deepCopy();
          change.accept(copy);
          assertThat(BundleFaults.of(copy)).containsExactly(fault);
        });
  }

  private static ObjectNode offset(JsonNode of) {
    return observed(of, "offset-mm");
  }

  private static ObjectNode observed(JsonNode of, String code) {
    return (ObjectNode)
        resources(of, "Observation").stream().filter(o -> code(o).equals(code)).findFirst().get();
  }

  /** All but the typed one. */
  @Test
  void itsNumbersAreThoseOfTheKeptResultsToTheLastDigit() {
    assertThat(BundleNumbers.compared(fitting, bundle)).isEqualTo(4);
  }

  /** A half-width of 9.8 mm is 1.959964 standard deviations of a normal distribution. */
  @Test
  void aTypedStandHasItsTypedNumbersAndSaysThatItWasTyped() {
    JsonNode typed =
        resources(bundle, "Observation").stream()
            .filter(o -> o.path("method").toString().contains("typed"))
            .findFirst()
            .orElseThrow();
    JsonNode quantity = typed.path("valueQuantity");
    assertThat(quantity.path("value").decimalValue()).isEqualByComparingTo("12.5");
    assertThat(quantity.path("extension").path(0).path("valueDecimal").asDouble())
        .isCloseTo(9.8 / 1.959963984540054, within(1e-9));
    assertThat(quantity.path("extension").path(1).path("valueCode").asText()).isEqualTo("N");
    assertThat(component(typed, "probability-within")).isEmpty();
    assertThat(typed.has("device")).isFalse();
  }

  @Test
  void scoreShareAndLimitsAreThoseOfTheEntries() {
    List<String> shares = new ArrayList<>();
    for (Path entry : fitting.kept("entry.json")) {
      JsonNode share = ToldFitting.json(entry).path("content").path("load-share-percent");
      if (!share.isMissingNode()) {
        shares.add(share.asText());
      }
    }
    assertThat(
            resources(bundle, "Observation").stream()
                .filter(o -> code(o).equals("load-share-percent"))
                .map(o -> o.path("valueQuantity").path("value").asText()))
        .isEqualTo(shares)
        .hasSize(3)
        .endsWith("48.5");
    assertThat(observed(bundle, "socket-comfort").path("valueInteger").asInt()).isEqualTo(7);
    JsonNode foot = resources(bundle, "Device").get(0);
    assertThat(foot.path("serialNumber").asText()).isEqualTo("D-0001");
    assertThat(foot.path("deviceName").path(0).path("name").asText()).isEqualTo("demo foot");
    assertThat(foot.path("note").path(0).path("text").asText())
        .isEqualTo("Invented instructions, section 2");
    List<String> limits = new ArrayList<>();
    foot.path("property")
        .forEach(
            p ->
                limits.add(
                    p.path("type").path("coding").path(0).path("code").asText()
                        + " "
                        + p.path("valueQuantity").path(0).path("value").asText()
                        + p.path("valueCode")
                            .path(0)
                            .path("coding")
                            .path(0)
                            .path("code")
                            .asText()));
    assertThat(limits)
        .containsExactly(
            "ankle-axis no",
            "body-mass-highest-kg 100.5",
            "mobility-grade-lowest 2",
            "mobility-grade-highest 4",
            "heel-height-lowest-mm 0",
            "heel-height-highest-mm 20");
  }

  /** Each text that somebody wrote, each name and serial number stands in the record. */
  @Test
  void nothingThatPeopleWroteIsInItUnlessItIsInTheRecord() {
    String record = fitting.everything();
    List<String> texts = new ArrayList<>();
    bundle.findValues("valueString").forEach(v -> texts.add(v.asText()));
    bundle.findValues("serialNumber").forEach(v -> texts.add(v.asText()));
    bundle.findValues("note").forEach(v -> texts.add(v.path(0).path("text").asText()));
    bundle.findValues("deviceName").forEach(v -> texts.add(v.path(0).path("name").asText()));
    bundle.findValues("performer").forEach(v -> texts.add(v.path(0).path("display").asText()));
    assertThat(texts).hasSizeGreaterThan(12);
    assertThat(texts).allSatisfy(text -> assertThat(record).contains(text));
  }

  @Test
  void theReportInItIsByteForByteThatOfRecordReport() {
    Run.caryatid(
        "record",
        "report",
        ToldFitting.CODE,
        "--out",
        fitting.file("report.pdf"),
        "--records",
        fitting.records());
    JsonNode attachment =
        resources(bundle, "DocumentReference").get(0).path("content").path(0).path("attachment");
    byte[] pdf = Base64.getDecoder().decode(attachment.path("data").asText());
    assertThat(pdf).isEqualTo(fitting.bytes("report.pdf"));
    assertThat(attachment.path("size").asInt()).isEqualTo(pdf.length);
  }

  /** RFC 6920: the sums, read from the record's own inventory, in base64url. */
  @Test
  void theSourceIsTheHeadDigestAndTheSumOfEachRecording() throws IOException {
    List<String> names = new ArrayList<>();
    resources(bundle, "Provenance")
        .get(0)
        .path("entity")
        .forEach(e -> names.add(e.path("what").path("identifier").path("value").asText()));
    Path object = folder.resolve("records/records/K7-right");
    List<String> sums = new ArrayList<>();
    sums.add(Files.readString(object.resolve("inventory.json.sha512")).substring(0, 128));
    JsonNode manifest = ToldFitting.json(object.resolve("inventory.json")).path("manifest");
    for (String recording : List.of("barefoot-1.csv", "barefoot-2.csv", "shoe.csv")) {
      manifest
          .properties()
          .forEach(
              f -> {
                if (f.getValue().toString().contains("recording-" + recording)) {
                  sums.add(f.getKey());
                }
              });
    }
    assertThat(names).isEqualTo(sums.stream().map(BundleTest::name).toList()).hasSize(4);
  }

  private static String name(String hex) {
    byte[] sum = HexFormat.of().parseHex(hex);
    String base64 = Base64.getEncoder().encodeToString(sum);
    return "ni:///sha-512;" + base64.replace('+', '-').replace('/', '_').replace("=", "");
  }

  @Test
  void theSameRecordGivesTheSameBytes() {
    fitting.bundled("again.json");
    assertThat(fitting.bytes("again.json")).isEqualTo(fitting.bytes("bundle.json"));
  }

  @TestFactory
  Stream<DynamicTest> inAnotherLanguageWordsAloneDiffer() {
    return Stream.of("de", "fr", "es")
        .map(
            language ->
                DynamicTest.dynamicTest(
                    language,
                    () -> {
                      JsonNode other = fitting.bundled(language + ".json", "--language", language);
                      assertThat(BundleFaults.of(other)).isEmpty();
                      assertThat(identifiers(other)).isEqualTo(identifiers(bundle));
                      assertThat(other.findValuesAsText("value").stream().sorted())
                          .filteredOn(v -> !v.contains("report-"))
                          .isEqualTo(
                              bundle.findValuesAsText("value").stream()
                                  .filter(v -> !v.contains("report-"))
                                  .sorted()
                                  .toList());
                    }));
  }

  /** Of all but the report, of which there is one in each language. */
  private static List<String> identifiers(JsonNode of) {
    return Stream.of("Patient", "Device", "Procedure", "Observation")
        .flatMap(type -> resources(of, type).stream())
        .map(resource -> resource.path("identifier").toString())
        .toList();
  }

  @Test
  void eachCodeThatTheProgramKnowsIsPublished() {
    assertThat(BundleFaults.publishedCodes()).containsAll(usedCodes(bundle)).hasSize(35);
  }

  private static List<String> usedCodes(JsonNode node) {
    List<String> used = new ArrayList<>();
    node.findValues("coding")
        .forEach(
            codings ->
                codings.forEach(
                    coding -> {
                      if (coding.path("system").asText().contains("caryatid")) {
                        used.add(coding.path("code").asText());
                      }
                    }));
    return used;
  }
}
