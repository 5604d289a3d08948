package caryatid.web;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.net.URLEncoder;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * The sample's stand as a page sends it.
 *
 * @param base the address of the record's pages
 */
record TypedStand(OpenWindow window, String base) {
  private static final Path K7 = Path.of("sample-recordings/k7");
  static final String STEP = "/static-alignment";

  /** Sends a recording of the sample. */
  void drop(String name) throws Exception {
    upload(name, Files.readAllBytes(K7.resolve(name)));
  }

  void upload(String name, byte[] bytes) throws Exception {
    HttpResponse<String> sent =
        window.ask(
            window
                .own(base + STEP + "/recording?name=" + URLEncoder.encode(name, UTF_8))
                .header("Origin", window.origin())
                .header("Content-Type", "application/octet-stream")
                .POST(HttpRequest.BodyPublishers.ofByteArray(bytes)));
    assertThat(sent.statusCode()).isEqualTo(200);
  }

  /** The sample's sheet as it is typed, with the fields given in place of its own. */
  HttpResponse<String> typeAs(Map<String, String> other, String... fields) throws Exception {
    Map<String, String> all = new TreeMap<>(sheet());
    all.putAll(other);
    for (int i = 0; i < fields.length; i += 2) {
      all.put(fields[i], fields[i + 1]);
    }
    return window.send(
        base + STEP,
        all.entrySet().stream()
            .flatMap(field -> Stream.of(field.getKey(), field.getValue()))
            .toArray(String[]::new));
  }

  static Map<String, String> sheet() {
    Map<String, String> sheet = new TreeMap<>();
    sheet.putAll(
        Map.of(
            "by-initials", "AB",
            "body-mass", "82",
            "worn", "barefoot",
            "heel", "0",
            "stance", "prosthetic foot on plate",
            "plate", "plate 1",
            "other-foot", "block",
            "other-foot-by", "0",
            "last-change", "foot moved 4 mm to the rear"));
    landmark(sheet, 1, "ankle axis", "231", "20", "82");
    landmark(sheet, 2, "knee centre", "268", "23", "492");
    landmark(sheet, 3, "lateral patellar border", "", "69", "498");
    sheet.putAll(
        Map.of(
            "target[1].plane", "sagittal",
            "target[1].landmark", "knee centre",
            "target[1].recommended", "20",
            "target[1].sense", "anterior",
            "target[1].below", "15",
            "target[1].above", "15",
            "target[1].source", "Invented instructions for the demo foot, section 4",
            "target[1].meant-for", "foot"));
    return sheet;
  }

  private static void landmark(
      Map<String, String> sheet, int number, String name, String forward, String right, String up) {
    String row = "landmark[" + number + "].";
    sheet.put(row + "name", name);
    sheet.put(row + "forward-sense", "front");
    sheet.put(row + "forward-from", "rear edge");
    sheet.put(row + "forward", forward);
    sheet.put(row + "rightward-sense", "right");
    sheet.put(row + "rightward-from", "midline");
    sheet.put(row + "rightward", right);
    sheet.put(row + "up", up);
  }
}
