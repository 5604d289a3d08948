package caryatid.web;

import static java.nio.charset.StandardCharsets.US_ASCII;
import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RecordFilesTest {
  @TempDir Path folder;
  private OpenWindow window;

  @BeforeEach
  void open() throws Exception {
    window = new OpenWindow(folder);
  }

  @AfterEach
  void close() throws Exception {
    window.close();
  }

  @Test
  void whatAKilledWindowWasSentGoesWhenTheNextOneStarts() throws Exception {
    Path left = Files.createDirectories(folder.resolve("other/home/files-999999999-7"));
    Files.writeString(left.resolve("0b5e2f9a6f6e4a57"), "sent");
    try (OpenWindow next = new OpenWindow(folder.resolve("other"))) {
      assertThat(next.origin()).isNotBlank();
      assertThat(left).doesNotExist();
    }
  }

  @Test
  void aRecordIsErasedWithItsCodeTypedOnceMoreAndItsReason() throws Exception {
    String base = window.start("K7-right", "right");
    HttpResponse<String> other = erase(base, "K8-right", "asked for");
    assertThat(other.statusCode()).isEqualTo(422);
    assertThat(other.body())
        .contains(
            "This is not the code of this record. Nothing was erased.", "value=\"asked for\"");
    assertThat(erase(base, "K7-right", "").statusCode()).isEqualTo(422);
    assertThat(window.page(base + "/record")).contains("kept up to entry 1");
    assertThat(erase(base, "K7-right", "asked for").statusCode()).isEqualTo(303);
    assertThat(window.page("/")).contains("asked for").doesNotContain("/arriving");
    assertThat(window.send(base + "/static-alignment", "part", "live").statusCode()).isEqualTo(404);
    assertThat(folder.resolve("records/drafts/K7-right")).doesNotExist();
  }

  private HttpResponse<String> erase(String base, String code, String why) throws Exception {
    return window.send(base + "/erase", "erase-code", code, "erase-why", why, "by-initials", "AB");
  }

  @Test
  void aPackedRecordIsTakenInElsewhereAndIsTheSame() throws Exception {
    String base = window.start("K7-right", "right");
    Path zip = Files.write(folder.resolve("packed"), bytes(base + "/pack", "K7-right.zip"));
    try (OpenWindow other = new OpenWindow(folder.resolve("elsewhere"))) {
      HttpResponse<String> taken = takeIn(other, zip);
      assertThat(taken.statusCode()).as(taken.body()).isEqualTo(303);
      String there = taken.headers().firstValue("Location").orElseThrow();
      assertThat(other.page(there)).contains("K7-right", "kept up to entry 1");
      assertThat(takeIn(other, zip).statusCode()).isEqualTo(422);
      assertThat(other.page("/verify")).contains("K7-right: in good order");
    }
  }

  @Test
  void theLastResultOfATakenInRecordIsShownWhereNoPlateIsKnown() throws Exception {
    Path zip = Path.of("src/test/resources/caryatid/frozen/v2/packed/M4-left.zip");
    String there = takeIn(window, zip).headers().firstValue("Location").orElseThrow();
    String base = there.substring(0, there.lastIndexOf('/'));
    assertThat(window.page(base + "/static-alignment"))
        .contains("No plate is known yet.", "href=\"" + base + "/report/");
  }

  @Test
  void whatIsNoPackedRecordIsRefusedAndNothingIsLeft() throws Exception {
    Path none = Files.writeString(folder.resolve("none"), "no zip");
    HttpResponse<String> refused = takeIn(window, none);
    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(refused.body()).contains("class=\"fault\"");
    assertThat(window.page("/")).contains("There are no records yet.");
  }

  @Test
  void theReportIsMadeOnBothPapers() throws Exception {
    String base = window.start("K7-right", "right");
    assertThat(new String(bytes(base + "/pdf?paper=a4", "K7-right.pdf"), 0, 5, US_ASCII))
        .isEqualTo("%PDF-");
    assertThat(new String(bytes(base + "/pdf?paper=letter", "K7-right.pdf"), 0, 5, US_ASCII))
        .isEqualTo("%PDF-");
    try (Stream<Path> left = Files.walk(folder.resolve("home"))) {
      assertThat(left.filter(f -> f.getFileName().toString().matches("[0-9a-f]{16}"))).isEmpty();
    }
  }

  /** The file is the one that the command line writes, whose contents have their own tests. */
  @Test
  void theFileForTheClinicsSystemAsksWhoTheWearerIsThere() throws Exception {
    String base = window.start("K7-right", "right");
    assertThat(window.page(base + "/bundle"))
        .contains("nothing is sent", "name=\"patient-system\"", "name=\"patient-number\"");
    String[] none = {"patient-system", "clinic", "patient-number", "12345"};
    HttpResponse<String> refused = window.send(base + "/bundle", none);
    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(refused.body()).contains("Nothing was written.", "value=\"12345\"");
    String[] patient = {"patient-system", "urn:oid:1.2.3.4", "patient-number", "12345"};
    HttpResponse<String> file = window.send(base + "/bundle", patient);
    assertThat(file.headers().firstValue("Content-Disposition"))
        .contains("attachment; filename=\"K7-right.json\"");
    assertThat(file.body())
        .startsWith("{")
        .contains("\"type\" : \"transaction\"", "\"urn:oid:1.2.3.4\"", "\"12345\"");
    assertThat(window.page(base + "/record")).doesNotContain("12345");
  }

  @Test
  void aShoeNamesItsStandByItsDayAndFootwear() throws Exception {
    Path zip = Path.of("src/test/resources/caryatid/frozen/v2/packed/M4-left.zip");
    String there = takeIn(window, zip).headers().firstValue("Location").orElseThrow();
    String base = there.substring(0, there.lastIndexOf('/'));
    assertThat(window.page(base + "/footwear"))
        .containsPattern(
            "<select id=\"shoes-1-stand\"[^>]*>(<option[^>]*></option>\\s*)?<option"
                + " value=\"\\d+\"[^>]*>\\d{4}-\\d\\d-\\d\\d \\d\\d:\\d\\d[^<]*, static"
                + " alignment, ");
  }

  @Test
  void aDamagedRecordIsNamedAndTheOthersAreInGoodOrder() throws Exception {
    window.start("K7-right", "right");
    window.start("M4-left", "left");
    try (Stream<Path> files = Files.walk(folder.resolve("records"))) {
      Path entry =
          files
              .filter(f -> f.toString().contains("M4-left") && f.toString().endsWith(".json"))
              .filter(f -> f.toString().contains("content"))
              .findFirst()
              .orElseThrow();
      Files.writeString(entry, Files.readString(entry).replace("left", "lift"));
    }
    assertThat(window.page("/verify")).contains("K7-right: in good order", "class=\"fault\"");
  }

  @Test
  void twoStatesAreCompared() throws Exception {
    String base = window.start("K7-right", "right");
    window.send(
        base + "/closing",
        "record-head",
        OpenWindow.head(window.page(base + "/closing")),
        "skin",
        "no marks",
        "by-initials",
        "AB");
    assertThat(window.page(base + "/compare?from=1&to=2"))
        .contains("no marks")
        .containsPattern("<option value=\"1\" selected>1: [a-z ]+, \\d{4}-\\d\\d-\\d\\d</option>");
    assertThat(window.ask(window.own(base + "/compare?from=1&to=9")).statusCode()).isEqualTo(422);
    assertThat(window.page(base + "/record")).contains("Report (PDF, A4)", "Pack (zip)");
  }

  private byte[] bytes(String path, String name) throws Exception {
    HttpResponse<byte[]> reply =
        HttpClient.newHttpClient()
            .send(window.own(path).build(), HttpResponse.BodyHandlers.ofByteArray());
    assertThat(reply.headers().firstValue("Content-Disposition"))
        .contains("attachment; filename=\"" + name + "\"");
    return reply.body();
  }

  private static HttpResponse<String> takeIn(OpenWindow window, Path zip) throws Exception {
    return window.ask(
        window
            .own("/take-in?name=packed.zip&by-initials=AB")
            .header("Origin", window.origin())
            .header("Content-Type", "application/octet-stream")
            .POST(HttpRequest.BodyPublishers.ofFile(zip)));
  }

  @Test
  void withoutScriptAPackedRecordIsTakenInByItsPath() throws Exception {
    String base = window.start("K7-right", "right");
    Path zip = Files.write(folder.resolve("packed"), bytes(base + "/pack", "K7-right.zip"));
    try (OpenWindow other = new OpenWindow(folder.resolve("elsewhere"))) {
      assertThat(
              other.send("/take-in", "file-path", zip.toString(), "by-initials", "AB").statusCode())
          .isEqualTo(303);
      assertThat(other.page("/")).contains("K7-right");
      assertThat(other.send("/take-in", "file-path", zip + "x", "by-initials", "AB").body())
          .contains("expected a file, found nothing of that name.");
    }
  }

  /** What is made to be saved lies on the disk only until it was sent. */
  @Test
  void aFileThatWasSavedLeavesNothingBehind() throws Exception {
    String base = window.start("K7-right", "right");
    bytes(base + "/pack", "K7-right.zip");
    bytes(base + "/pdf?paper=a4", "K7-right.pdf");
    for (int i = 0; i < 100 && !left().isEmpty(); i++) {
      Thread.sleep(20);
    }
    assertThat(left()).isEmpty();
  }

  private List<Path> left() throws Exception {
    try (Stream<Path> all = Files.walk(folder.resolve("home"))) {
      return all.filter(Files::isRegularFile)
          .filter(file -> file.getParent().getFileName().toString().startsWith("files-"))
          .toList();
    }
  }
}
