package caryatid.web;

import static java.net.URLEncoder.encode;
import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import caryatid.demo.DemoPhotograph;
import java.net.http.HttpClient;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Photographs that go with an entry from the page. */
class PhotographPageTest extends FittingWindow {
  private static final String STEP = "/dynamic-alignment";

  private HttpResponse<String> drop(String step, String name, byte[] bytes) throws Exception {
    return window.ask(
        window
            .own(base + step + "/photograph?name=" + encode(name, UTF_8))
            .header("Origin", window.origin())
            .header("Content-Type", "application/octet-stream")
            .POST(BodyPublishers.ofByteArray(bytes)));
  }

  private HttpResponse<String> keep(String... more) throws Exception {
    String head = OpenWindow.head(window.page(base + STEP));
    String[] fields =
        Stream.concat(
                Stream.of("record-head", head, "by-initials", "AB", "comfort", "8"),
                Stream.of(more))
            .toArray(String[]::new);
    return window.send(base + STEP, fields);
  }

  private List<Path> files(String in) throws Exception {
    try (Stream<Path> all = Files.walk(folder.resolve("records").resolve(in))) {
      return all.filter(Files::isRegularFile).toList();
    }
  }

  @Test
  void aPhotographIsShownAtOnceAndKeptWithoutWhatTheCameraWrote() throws Exception {
    byte[] taken = DemoPhotograph.turned(DemoPhotograph.corners(200, 120), 6);
    assertThat(new String(taken, ISO_8859_1)).contains(DemoPhotograph.SERIAL);
    String picture = base + STEP + "/photograph/1";
    assertThat(drop(STEP, "foot.jpg", taken).body())
        .contains(
            "<img src=\"" + picture + "\" alt=\"Photograph foot.jpg\"",
            "name=\"photograph-remove\" value=\"1\"");
    HttpResponse<byte[]> shown =
        HttpClient.newHttpClient().send(window.own(picture).build(), BodyHandlers.ofByteArray());
    assertThat(shown.headers().firstValue("Content-Type")).contains("image/jpeg");
    assertThat(new String(shown.body(), ISO_8859_1)).doesNotContain("Exif", DemoPhotograph.SERIAL);
    assertThat(keep().body()).contains("Kept as entry 2");
    List<Path> kept =
        files("").stream().filter(file -> file.toString().endsWith("photograph-foot.jpg")).toList();
    assertThat(kept).hasSize(1);
    assertThat(Files.readAllBytes(kept.get(0))).isEqualTo(shown.body());
    for (Path file : files("")) {
      assertThat(Files.readString(file, ISO_8859_1)).doesNotContain(DemoPhotograph.SERIAL);
    }
    assertThat(window.page(base + STEP)).doesNotContain("Photograph foot.jpg");
  }

  @Test
  void onePhotographWaitsAfterTheProgramWasClosedAndMarksItsStep() throws Exception {
    drop(STEP, "foot.jpg", DemoPhotograph.turned(DemoPhotograph.corners(20, 12), 1));
    window.close();
    window = new OpenWindow(folder);
    String list = window.page("/");
    base = list.substring(list.indexOf("/r/"), list.indexOf("/arriving"));
    assertThat(window.page(base + STEP)).contains("alt=\"Photograph foot.jpg\"", "drafted-mark");
    assertThat(window.page(base + "/arriving")).doesNotContain("Photograph foot.jpg");
  }

  @Test
  void oneIsTakenAwayAgainAndWhatWasTypedStays() throws Exception {
    byte[] taken = DemoPhotograph.turned(DemoPhotograph.corners(20, 12), 1);
    drop(STEP, "foot.jpg", taken);
    drop(STEP, "foot.jpg", taken);
    assertThat(window.page(base + STEP)).contains("Photograph foot.jpg\"", "foot-2.jpg\"");
    assertThat(keep("photograph-remove", "1").statusCode()).isEqualTo(303);
    assertThat(window.page(base + STEP))
        .contains("Photograph foot-2.jpg\"", "value=\"8\"", "kept up to entry 1")
        .doesNotContain("Photograph foot.jpg\"");
    assertThat(keep("discard", "yes").statusCode()).isEqualTo(303);
    assertThat(window.page(base + STEP)).doesNotContain("foot-2.jpg");
    assertThat(files("drafts")).isEmpty();
  }

  @Test
  void whatIsNoPictureIsRefusedWithWords() throws Exception {
    assertThat(drop(STEP, "notes.pdf", "%PDF-1.4".getBytes(UTF_8)).body())
        .contains(
            "<p>notes.pdf: expected a photograph as JPEG or PNG, found something else. Save it as"
                + " JPEG or PNG.</p>")
        .doesNotContain("<img");
    assertThat(drop("/parts", "foot.jpg", new byte[] {1}).statusCode()).isEqualTo(404);
  }

  @Test
  void withoutScriptAPhotographIsTakenByItsPath() throws Exception {
    Path file = folder.resolve("foot.jpg");
    Files.write(file, DemoPhotograph.turned(DemoPhotograph.corners(20, 12), 1));
    assertThat(keep("photograph-path", "\"" + file + "\"").statusCode()).isEqualTo(303);
    assertThat(window.page(base + STEP)).contains("alt=\"Photograph foot.jpg\"");
    assertThat(keep("photograph-path", folder + "/none.jpg").body())
        .contains(
            "none.jpg: expected a file, found nothing of that name. Check the name and the folder.");
  }

  @Test
  void anErasedRecordLeavesNoPhotograph() throws Exception {
    drop(STEP, "foot.jpg", DemoPhotograph.turned(DemoPhotograph.corners(20, 12), 1));
    window.send(
        base + "/erase", "erase-code", "K7-right", "erase-why", "asked for", "by-initials", "AB");
    assertThat(files("").stream().map(Path::toString))
        .noneMatch(name -> name.contains("photograph"));
  }
}
