package caryatid.fhir;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Base64;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The story is sent to a record system by others, which the test starts: a router with a repository
 * in memory, fetched with npm. Skipped where there is no npm.
 */
class ServerTest {
  private static final ObjectMapper MAPPER = new ObjectMapper();
  private static final Path SOURCE = Path.of("src/fhir/node");
  private static final Path INSTALLED = Path.of("target/fhir/node");

  @TempDir private static Path folder;
  private static Process server;
  private static String address;

  @BeforeAll
  static void startServer() throws IOException, InterruptedException {
    boolean npm =
        Stream.of(System.getenv("PATH").split(File.pathSeparator))
            .anyMatch(place -> Files.isExecutable(Path.of(place, "npm")));
    assumeThat(npm).as("npm, which fetches the server").isTrue();
    Files.createDirectories(INSTALLED);
    for (String file : List.of("package.json", "server.cjs")) {
      Files.copy(
          SOURCE.resolve(file), INSTALLED.resolve(file), StandardCopyOption.REPLACE_EXISTING);
    }
    assertThat(run("npm", "install", "--no-audit", "--no-fund").waitFor(120, TimeUnit.SECONDS))
        .isTrue();
    server = run("node", "server.cjs");
    BufferedReader said = server.inputReader(StandardCharsets.UTF_8);
    address = "http://127.0.0.1:" + said.readLine() + "/fhir";
    Made.story(folder);
  }

  private static Process run(String... command) throws IOException {
    return new ProcessBuilder(command)
        .directory(INSTALLED.toFile())
        .redirectError(ProcessBuilder.Redirect.DISCARD)
        .start();
  }

  @AfterAll
  static void stopServer() {
    if (server != null) {
      server.destroy();
    }
  }

  private static String send(String... more) {
    String[] command = {
      "record",
      "send",
      "K7-right",
      folder.resolve("sent.json").toString(),
      "--records",
      folder.resolve("records").toString(),
      "--by",
      "AB",
      "--to",
      address,
      "--patient-identifier",
      Made.PATIENT
    };
    return Made.caryatid(
        Stream.concat(Stream.of(command), Stream.of(more)).toArray(String[]::new));
  }

  /** The counts are of the story: one report, four devices, two sessions, 22 observations. */
  @Test
  void theStoryIsSentFoundByItsIdentifierAndNotStoredTwice() throws Exception {
    assertThat(send("--new-patient")).contains("All were read back and compared. Entry 24");
    JsonNode stored = found("DocumentReference", document());
    byte[] pdf =
        Base64.getDecoder().decode(stored.at("/content/0/attachment/data").asText());
    assertThat(pdf).isEqualTo(sentPdf());
    assertThat(send())
        .isEqualTo(
            "Sent to "
                + address
                + " before: it still has all 31 resources. They were read back and compared; nothing"
                + " new was stored.\n");
    assertThat(count("Patient")).isEqualTo(1);
    assertThat(count("DocumentReference")).isEqualTo(1);
    assertThat(count("Device")).isEqualTo(4);
    assertThat(count("Procedure")).isEqualTo(2);
    assertThat(count("Observation")).isEqualTo(22);
    assertThat(count("Provenance")).isEqualTo(1);
  }

  /** The same record's report, as StoryTest holds it. */
  private static byte[] sentPdf() throws IOException {
    return Files.readAllBytes(Path.of("reports/K7-right-record.pdf"));
  }

  private static String document() throws IOException {
    for (JsonNode entry : MAPPER.readTree(folder.resolve("sent.json").toFile()).path("entry")) {
      if (entry.at("/resource/resourceType").asText().equals("DocumentReference")) {
        JsonNode identifier = entry.at("/resource/identifier/0");
        return identifier.path("system").asText() + "|" + identifier.path("value").asText();
      }
    }
    throw new IllegalStateException("no report in the bundle");
  }

  private static JsonNode found(String type, String identifier) throws Exception {
    String value = URLEncoder.encode(identifier, StandardCharsets.UTF_8);
    JsonNode entries = asked(type + "?identifier=" + value).path("entry");
    assertThat(entries).hasSize(1);
    return entries.path(0).path("resource");
  }

  private static int count(String type) throws Exception {
    return asked(type + "?_count=100").path("entry").size();
  }

  private static JsonNode asked(String path) throws Exception {
    HttpRequest request = HttpRequest.newBuilder(URI.create(address + "/" + path)).build();
    return MAPPER.readTree(
        HttpClient.newHttpClient().send(request, HttpResponse.BodyHandlers.ofString()).body());
  }
}
