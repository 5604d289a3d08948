package caryatid.web;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.clinic.KnownPlate;
import caryatid.recording.model.NamedBytes;
import caryatid.usecase.Records;
import caryatid.usecase.RememberedPlates;
import caryatid.usecase.prove.MeasuredHands;
import caryatid.wording.Wording;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The pages that lead through a proof of a plate, repeated marks and placements of the feet. */
class MeasuringPagesTest {
  private static final Path K7 = Path.of("sample-recordings/k7");
  private static final Path SAMPLES = Path.of("sample-recordings/plate");

  @TempDir Path folder;
  private OpenWindow window;
  private Records records;

  @BeforeEach
  void open() throws Exception {
    window = new OpenWindow(folder);
    records = OpenWindow.setting(folder).records();
    RememberedPlates.remember(
        records, bytes(K7.resolve("barefoot-1.csv")), bytes(K7.resolve("plate.yaml")), false);
  }

  @AfterEach
  void close() throws Exception {
    window.close();
  }

  private static NamedBytes bytes(Path file) throws Exception {
    return NamedBytes.of(file.getFileName().toString(), Files.readAllBytes(file));
  }

  private HttpResponse<String> begin(String kg, String reversed) throws Exception {
    return window.send(
        "/plates/prove/0",
        "by",
        "AB",
        "kg",
        kg,
        "place",
        "1",
        "right-1",
        reversed + "150",
        "anterior-1",
        "-200",
        "right-2",
        reversed.isEmpty() ? "-150" : "150",
        "anterior-2",
        "-200",
        "right-3",
        reversed.isEmpty() ? "-150" : "150",
        "anterior-3",
        "200",
        "right-4",
        reversed + "150",
        "anterior-4",
        "200",
        "right-5",
        "0",
        "anterior-5",
        "0",
        "body",
        "75",
        "foot",
        "left");
  }

  private HttpResponse<String> file(String name) throws Exception {
    return window.ask(
        window
            .own("/plates/prove/file?name=" + name)
            .header("Origin", window.origin())
            .header("Content-Type", "application/octet-stream")
            .POST(HttpRequest.BodyPublishers.ofFile(SAMPLES.resolve(name))));
  }

  private String all() throws Exception {
    for (int i = 1; i <= 5; i++) {
      assertThat(file("weight-" + i + ".csv").statusCode()).isEqualTo(303);
    }
    for (String name : List.of("standing.csv", "forward.csv", "left-foot.csv")) {
      assertThat(file(name).statusCode()).isEqualTo(303);
    }
    return window.page("/plates/prove/step");
  }

  @Test
  void aPlateIsProvenOneRecordingAfterTheOther() throws Exception {
    assertThat(window.page("/plates")).contains("Not proven yet.", "/plates/prove/0");
    assertThat(window.page("/plates/prove/0")).contains("Mark five places on the plate");
    assertThat(begin("60", "-").headers().firstValue("Location")).hasValue("/plates/prove/step");
    assertThat(window.page("/plates/prove/step"))
        .contains("Put the weight on the mark −150.0", "1 of 8")
        .doesNotContain("Make the last recording again");
    assertThat(file("weight-1.csv").statusCode()).isEqualTo(303);
    assertThat(window.page("/plates/prove/step"))
        .contains(
            "2 of 8", "The plate shows the last load −149.8", "Make the last recording again");
    window.send("/plates/prove/back", "x", "y");
    assertThat(window.page("/plates/prove/step")).contains("1 of 8");
    assertThat(all())
        .contains("The plate is proven, and its proof is kept with its description.")
        .contains("Proven: plate 1, with a weight on 5 marks.");
    List<KnownPlate> known = RememberedPlates.all(records);
    assertThat(known).hasSize(1);
    assertThat(known.get(0).isProven()).isTrue();
    assertThat(window.page("/plates")).contains("Proven by a weight.");
  }

  @Test
  void marksOnTheOtherSideAreFound() throws Exception {
    begin("60", "");
    assertThat(all())
        .contains("shows the weight reversed or swapped", "The plate is not proven")
        .doesNotContain("Proven: plate 1");
    assertThat(RememberedPlates.all(records).get(0).isProven()).isFalse();
  }

  @Test
  void whatIsTypedWronglyIsToldAndStays() throws Exception {
    HttpResponse<String> refused = begin("2", "-");
    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(refused.body())
        .contains("expected a number from 3 to 300, found 2.", "value=\"-150\"");
  }

  @Test
  void aFileThatIsNoRecordingLeavesTheStepOpen() throws Exception {
    begin("60", "-");
    HttpResponse<String> refused = file("proof.yaml");
    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(refused.body()).contains("class=\"fault\"", "1 of 8");
  }

  @Test
  void aRecordingThatComesTwiceIsNotTakenForTheNextOne() throws Exception {
    begin("60", "-");
    file("weight-1.csv");
    HttpResponse<String> refused = file("weight-1.csv");
    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(refused.body())
        .contains(
            "`weight 2` holds the same recording as `weight 1`. Record each weight and each posture"
                + " separately.",
            "2 of 8");
  }

  @Test
  void theLastRecordingMayComeTwice() throws Exception {
    begin("60", "-");
    all();
    assertThat(file("left-foot.csv").statusCode()).isEqualTo(303);
    assertThat(window.page("/plates/prove/step")).contains("The plate is proven");
  }

  @Test
  void aLandmarkIsMarkedFiveTimesWithoutTheNumbersBefore() throws Exception {
    assertThat(window.page("/plates/hand")).contains("Choose a landmark");
    String first =
        window.send("/plates/hand", "by", "AB", "landmark", "knee centre forward").body();
    assertThat(first).contains("Find and mark knee centre forward, measure it", "1 of 5");
    String done = "";
    String page = "";
    for (String mm : List.of("92", "94", "91", "95", "93")) {
      page =
          window
              .send(
                  "/plates/hand",
                  "by",
                  "AB",
                  "landmark",
                  "knee centre forward",
                  "step",
                  "x",
                  "done",
                  done,
                  "mm",
                  mm)
              .body();
      done = done.isEmpty() ? mm : done + ";" + mm;
    }
    // Root of 10 / 4, as a test of the variance works out by hand.
    assertThat(page).contains("Measured; it counts", "1.6\u00a0mm with 4 degrees of freedom");
    assertThat(MeasuredHands.lines(MeasuredHands.all(records), Wording.in(Locale.ENGLISH)))
        .hasSize(1);
  }

  @Test
  void aNumberThatIsNoneIsAskedAgain() throws Exception {
    HttpResponse<String> asked =
        window.send(
            "/plates/turn", "by", "AB", "between", "160", "step", "0", "left", "x", "right", "2");
    assertThat(asked.statusCode()).isEqualTo(422);
    assertThat(asked.body()).contains("Type a number in mm.", "1 of 5");
    assertThat(window.send("/plates/turn", "by", "AB").body())
        .contains("Type initials and the distance from heel to heel in mm.");
  }

  @Test
  void theFeetArePlacedFiveTimes() throws Exception {
    String page = "";
    String done = "";
    for (String right : List.of("25", "15", "25", "15", "20")) {
      page =
          window
              .send(
                  "/plates/turn",
                  "by",
                  "AB",
                  "between",
                  "100",
                  "step",
                  "x",
                  "done",
                  done,
                  "left",
                  "20",
                  "right",
                  right)
              .body();
      done = done.isEmpty() ? "20 " + right : done + ";20 " + right;
    }
    assertThat(page).contains("2.6° with 5 degrees of freedom");
  }
}
