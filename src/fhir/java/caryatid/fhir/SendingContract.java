package caryatid.fhir;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.fhir.Relay.Moment;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/** What holds for a record that is sent to a record system by others. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
abstract class SendingContract {
  private static final ObjectMapper MAPPER = new ObjectMapper();
  private static final List<String> TYPES =
      List.of("Patient", "DocumentReference", "Device", "Procedure", "Observation", "Provenance");
  private static final Map<String, Integer> NONE = Map.of();
  private static final Pattern NUMBER = Pattern.compile("\\d+");

  private Path folder;
  private SystemProcess system;
  private Relay relay;

  /**
   * The system, not started yet.
   *
   * @param folder where it may store
   */
  abstract SystemProcess system(Path folder) throws IOException, InterruptedException;

  /** Whether a killed system still has what it had stored. */
  abstract boolean remembers();

  /** How many new resources it says it had: of those that are put at an id of their own. */
  abstract int putSaysThere();

  @BeforeAll
  void start(@TempDir Path own) throws IOException, InterruptedException {
    folder = own.toAbsolutePath();
    system = system(folder);
    system.start();
    relay = new Relay(system);
    Made.story(folder, () -> {});
    Made.samples(folder);
  }

  @AfterAll
  void stop() {
    if (relay != null) {
      relay.close();
      system.kill();
    }
  }

  /** Sends a record, of which each has a patient of its own. */
  private Made.Said send(String code, String language) {
    return Made.said(
        "record",
        "send",
        code,
        file(code, language).toString(),
        "--records",
        folder.resolve("records").toString(),
        "--by",
        "AB",
        "--to",
        relay.address(),
        "--patient-identifier",
        Made.PATIENT + code,
        "--language",
        language,
        "--new-patient");
  }

  private Path file(String code, String language) {
    return folder.resolve(code + "-" + language + ".json");
  }

  private String sent(int created, int there, int entry) {
    return "Sent to %s: %d resources stored there now, %d it had before. All were read back and compared. Entry %d notes it.%n"
        .formatted(relay.address(), created, there, entry);
  }

  /** The counts are of the story: one report, four devices, two sessions, 22 observations. */
  @Test
  void theStoryIsSentFoundByItsIdentifierAndNotStoredTwice() throws Exception {
    Path report = folder.resolve("report.pdf");
    Made.caryatid(
        "record",
        "report",
        "K7-right",
        "--out",
        report.toString(),
        "--records",
        folder.resolve("records").toString());
    Map<String, Integer> before = counts();
    assertThat(send("K7-right", "en").done())
        .isEqualTo(sent(31 - putSaysThere(), putSaysThere(), 24));
    JsonNode stored = found("DocumentReference", document("K7-right", "en"));
    byte[] pdf = Base64.getDecoder().decode(stored.at("/content/0/attachment/data").asText());
    assertThat(pdf).isEqualTo(Files.readAllBytes(report));
    assertThat(send("K7-right", "en").done())
        .isEqualTo(
            "Sent to %s before: it still has all 31 resources. They were read back and compared; nothing new was stored.%n"
                .formatted(relay.address()));
    assertThat(counts()).isEqualTo(sum(before, 1, 1, 4, 2, 22, 1));
  }

  /**
   * The system is killed three times: while it stores the bundle, before its answer arrives, and
   * while it is read. It is started again, and the same command goes on. Each sending is in another
   * language, in which the report and its source are new. A system that remembers had stored them
   * when it was killed, and the record notes already that its address has the rest.
   */
  @Test
  void aSendingGoesOnAfterTheSystemWasKilled() throws Exception {
    Map<String, Integer> before = counts();
    int put = putSaysThere();
    List<Integer> all = List.of(8 - put, put, 3);
    assertThat(killed("en", Moment.WHILE_IT_STORES)).isIn(all, List.of(0, 8, 3));
    assertThat(killed("de", Moment.BEFORE_ITS_ANSWER))
        .isEqualTo(remembers() ? List.of(8) : List.of(8 - put, put, 4));
    assertThat(killed("fr", Moment.WHILE_IT_IS_READ))
        .isEqualTo(remembers() ? List.of(8) : List.of(8 - put, put, 5));
    assertThat(counts())
        .isEqualTo(remembers() ? sum(before, 1, 3, 1, 1, 3, 3) : sum(NONE, 1, 1, 1, 1, 3, 1));
  }

  /** The numbers that are said of a sending which goes on after the system was killed. */
  private List<Integer> killed(String language, Moment moment) {
    relay.killAt(moment);
    Made.Said broken = send("M4-1", language);
    assertThat(relay.hasKilled()).as("killed").isTrue();
    assertThat(broken.code()).isEqualTo(1);
    assertThat(broken.out()).isEmpty();
    assertThat(broken.err()).contains(file("M4-1", language).toString());
    system.start();
    String done = send("M4-1", language).done().replace(relay.address(), "");
    return NUMBER.matcher(done).results().map(found -> Integer.valueOf(found.group())).toList();
  }

  /** By what a record's report is found. */
  private String document(String code, String language) throws IOException {
    for (JsonNode entry : MAPPER.readTree(file(code, language).toFile()).path("entry")) {
      if (entry.at("/resource/resourceType").asText().equals("DocumentReference")) {
        JsonNode identifier = entry.at("/resource/identifier/0");
        return identifier.path("system").asText() + "|" + identifier.path("value").asText();
      }
    }
    throw new IllegalStateException("no report in the bundle");
  }

  private JsonNode found(String type, String identifier) throws Exception {
    String value = URLEncoder.encode(identifier, StandardCharsets.UTF_8);
    JsonNode entries = asked(type + "?identifier=" + value).path("entry");
    assertThat(entries).hasSize(1);
    return entries.path(0).path("resource");
  }

  /** How many resources of each type the system has. */
  private Map<String, Integer> counts() throws Exception {
    Map<String, Integer> all = new LinkedHashMap<>();
    for (String type : TYPES) {
      all.put(type, asked(type + "?_count=100").path("entry").size());
    }
    return all;
  }

  private static Map<String, Integer> sum(Map<String, Integer> before, int... more) {
    Map<String, Integer> all = new LinkedHashMap<>();
    for (int i = 0; i < more.length; i++) {
      all.put(TYPES.get(i), before.getOrDefault(TYPES.get(i), 0) + more[i]);
    }
    return all;
  }

  private JsonNode asked(String path) throws Exception {
    HttpRequest request =
        HttpRequest.newBuilder(URI.create(relay.address() + "/" + path))
            .header("Cache-Control", "no-cache")
            .build();
    return MAPPER.readTree(
        HttpClient.newHttpClient().send(request, HttpResponse.BodyHandlers.ofString()).body());
  }
}
