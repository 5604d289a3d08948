package caryatid.web;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.clinic.KnownPlate;
import caryatid.usecase.RememberedPlates;
import java.net.URLEncoder;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PlatesPageTest {
  /** Columns Time, Fz, CoPx and CoPy with their units; which way the axes point is not in it. */
  private static final Path EXPORT = Path.of("sample-recordings/k7/shoe.csv");

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
  void whatIsUnderstoodIsShownWithItsEvidenceAndWhatIsNotIsAsked() throws Exception {
    String page = window.page(upload("shoe.csv"));
    assertThat(page)
        .contains("What was understood", "columns are separated by commas (concluded:", "shoe.csv")
        .contains("Which of the export's axes point to the person's right, forward and up?")
        .contains("<option value=\"+x\">+x</option>")
        .doesNotContain("Every question is answered");
  }

  @Test
  void theAnswersMakeADescriptionThatIsUsedWhenItsColumnsAreMetAgain() throws Exception {
    String address = upload("shoe.csv");
    assertThat(answer(address, "+x", "+y", "+z").statusCode()).isEqualTo(303);
    assertThat(window.page(address))
        .contains("Exports of this plate can be read. Without lines, landmarks can only be")
        .doesNotContain("Every question is answered");
    HttpResponse<String> kept = window.send(address + "/keep", "plate-name", "Fitting room");
    assertThat(kept.body()).contains("Every export with these 4 columns is understood");
    assertThat(kept.body())
        .contains("class=\"button\" href=\"/plates\"", "class=\"button\" href=\"/\"");
    List<KnownPlate> known = RememberedPlates.all(OpenWindow.setting(folder).records());
    assertThat(known).hasSize(1);
    assertThat(known.get(0).columns()).containsExactly("Time", "Fz", "CoPx", "CoPy");
    assertThat(known.get(0).description())
        .contains("name: Fitting room", "axes: {right: +x, anterior: +y, up: +z}")
        .doesNotContain("unknown");
    assertThat(window.page("/plates")).contains("Fitting room.yaml: Time, Fz, CoPx, CoPy");
  }

  @Test
  void fromAPlateThatWasDescribedForAStandOneGoesBackToIt() throws Exception {
    String base = window.start("K7-right", "right");
    assertThat(window.page(base + "/static-alignment")).contains("No plate is known yet.");
    String address = upload("shoe.csv");
    answer(address, "+x", "+y", "+z");
    assertThat(window.send(address + "/keep", "plate-name", "Fitting room").body())
        .contains(
            "<a class=\"button strong\" href=\""
                + base
                + "/static-alignment\">To the stand of K7-right</a>");
  }

  @Test
  void sizeAndLinesAreTypedAsNumbersAndKeptWithThePlate() throws Exception {
    String address = upload("shoe.csv");
    answer(address, "+x", "+y", "+z");
    assertThat(window.page(address))
        .contains("Edges of", "value=\"rear edge\"", "value=\"midline\"");
    HttpResponse<String> kept =
        window.send(
            address + "/keep",
            "plate-name",
            "Fitting room",
            "plate[1].left",
            "200,5",
            "plate[1].left-side",
            "left",
            "plate[1].right",
            "200",
            "plate[1].right-side",
            "right",
            "plate[1].rear",
            "300",
            "plate[1].rear-side",
            "behind",
            "plate[1].front",
            "300",
            "plate[1].front-side",
            "front",
            "line[1].name",
            "rear edge",
            "line[1].mm",
            "300",
            "line[1].side",
            "behind",
            "line[1].registration",
            "1",
            "line[2].name",
            "midline",
            "line[2].mm",
            "0",
            "line[2].side",
            "left",
            "line[2].registration",
            "0,5",
            "line[3].side",
            "front",
            "line[3].registration",
            "1");
    assertThat(kept.body()).contains("Every export with these 4 columns is understood");
    assertThat(RememberedPlates.all(OpenWindow.setting(folder).records()).get(0).description())
        .contains(
            "edges-mm: {left: -200.5, right: 200, rear: -300, front: 300}",
            "  - {name: rear edge, forward-from-mm: -300, registration-mm: 1}\n"
                + "  - {name: midline, rightward-from-mm: 0, registration-mm: 0.5}\n");
  }

  @Test
  void aSizeThatCannotBeIsToldAtItsFieldAndNothingIsKept() throws Exception {
    String address = upload("shoe.csv");
    answer(address, "+x", "+y", "+z");
    HttpResponse<String> refused =
        window.send(
            address + "/keep",
            "plate-name",
            "Fitting room",
            "plate[1].left",
            "200",
            "plate[1].left-side",
            "right",
            "plate[1].right",
            "200",
            "plate[1].right-side",
            "right",
            "plate[1].rear",
            "-300",
            "plate[1].front",
            "300",
            "line[1].name",
            "tape",
            "line[1].mm",
            "10001",
            "line[1].registration",
            "1",
            "line[2].name",
            "tape",
            "line[2].mm",
            "1,250",
            "line[2].registration",
            "1",
            "line[3].name",
            "tape",
            "line[3].mm",
            "10000",
            "line[3].registration",
            "",
            "line[4].name",
            "tape",
            "line[4].mm",
            "1",
            "line[4].registration",
            "1",
            "line[5].name",
            "tape",
            "line[5].mm",
            "1",
            "line[5].registration",
            "1",
            "line[6].name",
            "",
            "line[6].mm",
            "1",
            "line[6].registration",
            "1");
    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(refused.body())
        .contains(
            "id=\"plate-1-rear-fault\"><p>Type the number without a sign",
            "id=\"line-1-mm-fault\"><p>This is too much for a plate. Type it in mm.",
            "id=\"line-2-mm-fault\"><p>This could mean 1.250 or 1250",
            "id=\"line-3-registration-fault\"><p>Please fill this in.",
            "id=\"line-5-name-fault\"><p>Another line has this name.",
            "id=\"line-6-name-fault\"><p>Please fill this in.",
            "value=\"Fitting room\"")
        .doesNotContain("line-4-name-fault");
    assertThat(RememberedPlates.all(OpenWindow.setting(folder).records())).isEmpty();
    HttpResponse<String> swapped =
        window.send(
            address + "/keep",
            "plate-name",
            "Fitting room",
            "plate[1].left",
            "200",
            "plate[1].left-side",
            "right",
            "plate[1].right",
            "200",
            "plate[1].right-side",
            "right",
            "plate[1].rear",
            "300",
            "plate[1].front",
            "300",
            "line[1].name",
            "tape");
    assertThat(swapped.body())
        .contains("id=\"plate-1-right-fault\"><p>This edge lies on the wrong side");
  }

  @Test
  void anAnswerThatCannotBeIsToldAndTheOthersAreAskedAgain() throws Exception {
    String address = upload("shoe.csv");
    HttpResponse<String> refused = answer(address, "+x", "-x", "+z");
    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(refused.body()).contains("class=\"fault\"", "plate.yaml line", "name=\"answer-1\"");
    assertThat(answer(address, "+x", "up: {", "+z").statusCode()).isEqualTo(422);
    assertThat(answer(address, "+x", "", "+z").statusCode()).isEqualTo(422);
  }

  @Test
  void anotherDescriptionForTheSameColumnsReplacesTheFirstOnlyWhenAsked() throws Exception {
    for (String up : List.of("+z", "-z")) {
      String address = upload("shoe.csv");
      answer(address, up.equals("+z") ? "+x" : "-x", "+y", up);
      HttpResponse<String> kept = window.send(address + "/keep", "plate-name", "Room " + up);
      assertThat(kept.statusCode()).isEqualTo(up.equals("+z") ? 200 : 422);
      if (kept.statusCode() == 422) {
        assertThat(
                window
                    .send(address + "/keep", "plate-name", "Room", "plate-replace", "yes")
                    .statusCode())
            .isEqualTo(200);
      }
    }
  }

  @Test
  void theDescriptionCanBeWrittenByHandAndSaved() throws Exception {
    String address = upload("shoe.csv");
    String text = Files.readString(Path.of("sample-recordings/k7/plate-pressure.yaml"));
    assertThat(window.send(address + "/text", "plate-text", text).statusCode()).isEqualTo(303);
    assertThat(window.page(address))
        .contains(
            "Every question is answered",
            "line “rear edge”: 300 mm behind the zero",
            "name=\"line[1].mm\" type=\"text\" class=\"number\" inputmode=\"decimal\""
                + " autocomplete=\"off\" value=\"300\"");
    HttpResponse<String> saved = window.ask(window.own(address + "/plate.yaml"));
    assertThat(saved.headers().firstValue("Content-Disposition"))
        .contains("attachment; filename=\"plate.yaml\"");
    assertThat(saved.body()).contains("measuring-lines:");
    assertThat(window.send(address + "/text", "plate-text", "no: [").statusCode()).isEqualTo(422);
  }

  @Test
  void whatIsNoExportIsSaidToBeNone() throws Exception {
    Path picture = Files.write(folder.resolve("picture.png"), new byte[] {(byte) 0x89, 'P', 0, 1});
    String page = window.page(send(picture, "picture.png"));
    assertThat(page).contains("picture.png").contains("class=\"facts fault\"");
  }

  @Test
  void theNameOfAFileNeverBecomesAPath() throws Exception {
    for (String name : List.of("../../../evil.csv", "C:\\evil.csv", "/etc/evil.csv")) {
      String page = window.page(upload(name));
      assertThat(page).contains(">evil.csv</p>").doesNotContain("etc/evil", "../");
    }
    try (Stream<Path> files = Files.walk(folder)) {
      assertThat(files.map(file -> file.getFileName().toString()))
          .noneMatch(n -> n.contains("evil"));
    }
  }

  @Test
  void atMostFourFilesAreKeptAndNoneAfterTheWindowEnds() throws Exception {
    String first = upload("1.csv");
    for (int i = 0; i < 4; i++) {
      upload("more.csv");
    }
    assertThat(window.ask(window.own(first)).statusCode()).isEqualTo(404);
    assertThat(files()).isEqualTo(4);
    window.close();
    assertThat(files()).isZero();
  }

  private long files() throws Exception {
    try (Stream<Path> files = Files.walk(folder.resolve("home"))) {
      return files.filter(f -> f.getFileName().toString().matches("[0-9a-f]{16}")).count();
    }
  }

  @Test
  void aKnownPlateIsSaidFirstAndTheBoxIsNamedThatReplacesIt() throws Exception {
    String address = upload("shoe.csv");
    answer(address, "+x", "+y", "+z");
    assertThat(window.page(address)).doesNotContain("known already");
    window.send(address + "/keep", "plate-name", "Fitting room");
    String again = upload("shoe-2.csv");
    assertThat(window.page(again))
        .contains("Exports with these columns are already known, as “Fitting room")
        .contains("Nothing more is needed for stands.");
    answer(again, "+x", "+y", "+z");
    assertThat(window.send(again + "/keep", "plate-name", "Other room").body())
        .contains("Tick “Replace what is known for these columns” to forget that one.</p>")
        .doesNotContain("--replace");
  }

  @Test
  void aKnownPlateIsForgotten() throws Exception {
    String address = upload("shoe.csv");
    answer(address, "+x", "+y", "+z");
    window.send(address + "/keep", "plate-name", "Fitting room");
    assertThat(window.page("/plates")).contains(">Forget</button>", "Fitting room");
    window.send("/plates/forget", "columns", "Time\tFz");
    assertThat(RememberedPlates.all(OpenWindow.setting(folder).records())).hasSize(1);
    HttpResponse<String> done = window.send("/plates/forget", "columns", "Time\tFz\tCoPx\tCoPy");
    assertThat(done.statusCode()).isEqualTo(303);
    assertThat(RememberedPlates.all(OpenWindow.setting(folder).records())).isEmpty();
    assertThat(window.page("/plates")).doesNotContain("Fitting room", ">Forget</button>");
  }

  @Test
  void edgesOfTwoPlatesAreMeasuredFromOneZeroAndDoNotOverlap() throws Exception {
    String address = send(Path.of("sample-recordings/m4/shoe.txt"), "shoe.txt");
    String text = Files.readString(Path.of("sample-recordings/m4/plates.yaml"));
    window.send(address + "/text", "plate-text", text);
    assertThat(window.page(address))
        .contains("All plates share one zero", "left of the common zero")
        .doesNotContain(">left of the zero</option>");
    HttpResponse<String> refused = keepTwo(address, "26", "left");
    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(refused.body())
        .contains(
            "id=\"plate-2-left-fault\"><p>This plate and one above overlap by more than 20 mm."
                + " Measure the edges of both from the common zero.");
    assertThat(keepTwo(address, "5", "right").statusCode()).isEqualTo(200);
  }

  /** The first plate reaches from 405 mm left to 5 mm left. */
  private HttpResponse<String> keepTwo(String address, String left, String side) throws Exception {
    return window.send(
        address + "/keep",
        "plate-name",
        "Two",
        "line[1].name",
        "rear",
        "line[1].mm",
        "300",
        "line[1].registration",
        "1",
        "plate[1].left",
        "405",
        "plate[1].right",
        "5",
        "plate[1].right-side",
        "left",
        "plate[1].rear",
        "300",
        "plate[1].front",
        "300",
        "plate[2].left",
        left,
        "plate[2].left-side",
        side,
        "plate[2].right",
        "405",
        "plate[2].rear",
        "300",
        "plate[2].front",
        "300");
  }

  private HttpResponse<String> answer(String address, String... answers) throws Exception {
    String[] fields = new String[answers.length * 2];
    for (int i = 0; i < answers.length; i++) {
      fields[2 * i] = "answer-" + (i + 1);
      fields[2 * i + 1] = answers[i];
    }
    return window.send(address, fields);
  }

  private String upload(String name) throws Exception {
    return send(EXPORT, name);
  }

  private String send(Path file, String name) throws Exception {
    String query = "?name=" + URLEncoder.encode(name, StandardCharsets.UTF_8);
    return window
        .ask(
            window
                .own("/plates/file" + query)
                .header("Origin", window.origin())
                .header("Content-Type", "application/octet-stream")
                .POST(HttpRequest.BodyPublishers.ofFile(file)))
        .headers()
        .firstValue("Location")
        .orElseThrow();
  }
}
