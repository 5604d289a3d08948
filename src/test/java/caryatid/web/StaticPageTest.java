package caryatid.web;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import caryatid.cli.Main;
import caryatid.recording.model.NamedBytes;
import caryatid.usecase.Records;
import caryatid.usecase.RememberedLimits;
import caryatid.usecase.RememberedPlates;
import caryatid.usecase.file.LocalFiles;
import caryatid.usecase.prove.MeasuredHands;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Clock;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Static alignment in the window, with the samples. */
class StaticPageTest extends FittingWindow {
  private static final String EARLIER = "2026-03-04T10:15+01:00";
  private static final String LATER = "2026-03-04T10:35+01:00";

  private static final String STEP = "/static-alignment";

  @BeforeEach
  void prepare() throws Exception {
    rememberPlate();
  }

  @Test
  void aRecordingIsDrawnAndNotCountedBeforeItIsConfirmed() throws Exception {
    type("part", "live");
    drop("barefoot-1.csv");
    String page = window.page(base + STEP);
    assertThat(page)
        .contains(
            "1 · barefoot-1.csv · not yet counted",
            "Over time: right foot",
            "No stand is counted yet.")
        .doesNotContain("tolerance met");
    type("action", "count-1");
    assertThat(window.page(base + STEP))
        .contains("1 · barefoot-1.csv ✓", "Result of one stand", "knee centre: load line")
        .doesNotContain("not yet counted");
  }

  /** The knee's line runs about 18 mm in front of it, which is usual, but not to this clinic. */
  @Test
  void theClinicsOwnLimitsHoldInTheWindowToo() throws Exception {
    RememberedLimits.remember(
        Records.in(folder.resolve("records"), Clock.system(ZoneId.systemDefault())),
        NamedBytes.of(
            "limits.yaml",
            "clinic-limits: 1\nlimits:\n  sagittal-own-knee-mm: {ask-above: 5}\n".getBytes(UTF_8)));
    type("part", "live");
    drop("barefoot-1.csv");
    type("action", "count-1");
    assertThat(window.page(base + STEP)).contains("It is right").doesNotContain("tolerance met");
  }

  /** Five marks with a standard deviation of root 2.5, as a test of it works out by hand. */
  @Test
  void aMarkingThatIsNotTypedIsTheMeasuredHands() throws Exception {
    Records records = Records.in(folder.resolve("records"), Clock.system(ZoneId.systemDefault()));
    MeasuredHands.rememberHand(
        records,
        NamedBytes.of(
            "hand.yaml",
            ("hand-repeatability: 1\nat: 2026-03-02T09:00+01:00\nby: AB\nlandmarks:\n"
                    + "  - {name: ankle, mm: [92, 94, 91, 95, 93]}\n")
                .getBytes(UTF_8)));
    Map<String, String> blank = new java.util.HashMap<>();
    for (int i = 1; i <= 3; i++) {
      blank.put("landmark[" + i + "].marking", "");
    }
    typeAs(blank, "part", "live");
    drop("barefoot-1.csv");
    typeAs(blank, "action", "count-1");
    String page = window.page(base + STEP);
    typeAs(blank, "action", "keep", "record-head", OpenWindow.head(page));
    String sheet = Files.readString(entry(folder.resolve("records")).resolve("sheet.yaml"));
    assertThat(sheet)
        .contains("measured: {marking-mm: 1.5811, marking-degrees-of-freedom: 4}")
        .doesNotContain("    marking-mm: ");
  }

  /** The axis begins 11 mm from the left of 90 mm and ends 1 mm from the right. */
  @Test
  void theStretchThatIsUsedLiesOverTheDrawingWithItsEdges() throws Exception {
    drop("barefoot-1.csv");
    typeAs(Map.of("from-s[1]", "3.5"), "part", "live");
    assertThat(window.page(base + STEP))
        .contains(
            "data-axis-from=\"0.1222\" data-axis-to=\"0.9889\" data-seconds=\"17.9900\"",
            "aria-label=\"Stretch that is used, set by hand: From\" aria-valuemin=\"0\""
                + " aria-valuemax=\"17.9900\" aria-valuenow=\"3.5000\""
                + " aria-valuetext=\"3.50\u00a0s\" data-edge=\"1-from-s\" data-field=\"from-s[1]\"",
            "aria-valuenow=\"17.9900\"");
  }

  @Test
  void withoutTheScriptLoadingThePageAgainTakesWhatArrived() throws Exception {
    Path exports = Files.createDirectories(folder.resolve("exports"));
    typeAs(Map.of("watched-folder", exports.toString()), "action", "watch");
    Files.copy(K7.resolve("barefoot-2.csv"), exports.resolve("new.csv"));
    assertThat(window.page(base + STEP))
        .contains("<noscript><p>Without scripts no file can be sent from this page.")
        .doesNotContain("new.csv");
    assertThat(window.page(base + STEP)).contains("1 · new.csv · not yet counted");
  }

  @Test
  void aRecordingIsDrawnBeforeAnythingIsTyped() throws Exception {
    drop("barefoot-1.csv");
    assertThat(window.page(base + STEP)).contains("not yet counted", "Over time: right foot");
  }

  @Test
  void whatIsNoRecordingSaysWhyAndCannotBeCounted() throws Exception {
    upload("notes.csv", "nothing\n".getBytes(UTF_8));
    assertThat(window.page(base + STEP))
        .contains("1 · notes.csv · not yet counted", "class=\"fault\"")
        .doesNotContain("value=\"count-1\"");
  }

  @Test
  void aNameNeverBecomesAPath() throws Exception {
    upload("../../../evil.csv", Files.readAllBytes(K7.resolve("barefoot-1.csv")));
    assertThat(window.page(base + STEP)).contains("1 · evil.csv · not yet counted");
    assertThat(folder.resolve("evil.csv")).doesNotExist();
    try (Stream<Path> files = Files.walk(folder)) {
      assertThat(files.map(f -> f.getFileName().toString())).doesNotContain("evil.csv");
    }
  }

  @Test
  void aMistypedLandmarkIsToldAtItsField() throws Exception {
    type("landmark[2].up", "49o", "part", "live");
    drop("barefoot-1.csv");
    HttpResponse<String> counted = typeAs(Map.of("landmark[2].up", "49o"), "action", "count-1");
    assertThat(counted.statusCode()).isEqualTo(303);
    assertThat(window.page(base + STEP)).contains("id=\"landmark-2-up-fault\"", "value=\"49o\"");
  }

  @Test
  void whatIsAskedIsAnsweredWithOneKeyAndStandsInTheSheet() throws Exception {
    Map<String, String> odd = Map.of("heel", "1", "worn", "shoe");
    typeAs(odd, "part", "live");
    drop("barefoot-1.csv");
    typeAs(odd, "action", "count-1");
    String asked = window.page(base + STEP);
    assertThat(asked)
        .contains(
            "Please check: is this right?",
            "value=\"meant=heel-height-mm 1\"",
            "id=\"heel-fault\"");
    typeAs(odd, "action", "meant=heel-height-mm 1");
    assertThat(window.page(base + STEP)).doesNotContain("meant=heel-height-mm 1");
  }

  @Test
  void aDraftOutlivesTheProgramAndIsItsOwnersAlone() throws Exception {
    type("part", "live");
    drop("barefoot-1.csv");
    window.close();
    try (Stream<Path> files = Files.walk(folder.resolve("records/drafts"))) {
      for (Path file : files.toList()) {
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
            .as(file.toString())
            .endsWith("------");
      }
    }
    window = new OpenWindow(folder);
    String list = window.page("/");
    base = list.substring(list.indexOf("/r/"), list.indexOf("/arriving"));
    assertThat(window.page(base + STEP))
        .contains("value=\"492\"", "1 · barefoot-1.csv · not yet counted");
    assertThat(window.page(base + "/record")).contains("kept up to entry 1");
  }

  @Test
  void aDraftGoesWithTheRecordThatIsErased() throws Exception {
    type("part", "live");
    assertThat(folder.resolve("records/drafts/K7-right")).exists();
    cli("record", "erase", "K7-right", "--by", "AB", "--because", "asked for");
    assertThat(folder.resolve("records/drafts/K7-right")).doesNotExist();
  }

  @Test
  void aStateThatIsKeptIsTheEntryThatTheCommandLineWrites() throws Exception {
    type("part", "live");
    for (int i = 1; i <= 3; i++) {
      drop("barefoot-" + i + ".csv");
      type("action", "count-" + i);
    }
    String page = window.page(base + STEP);
    assertThat(page).contains("Result of 3 stands");
    HttpResponse<String> kept = type("action", "keep", "record-head", OpenWindow.head(page));
    assertThat(kept.body())
        .contains(
            "Kept as entry 2",
            "<h2>What to change next, right</h2>",
            "<p>No advice: no joint has its range noted.",
            base + "/bench-alignment\">Note how far the joints go</a>",
            "<p class=\"note\">Standing does not show how the wearer walks:");
    assertThat(folder.resolve("records/drafts/K7-right")).doesNotExist();
    assertThat(window.page(base + STEP))
        .contains("What the next state will show, measured as the last one was", "three stands");

    Path windows = entry(folder.resolve("records"));
    Path other = folder.resolve("other");
    Path sheet = folder.resolve("sheet.yaml");
    Path plate = folder.resolve("plate.yaml");
    Files.copy(windows.resolve("sheet.yaml"), sheet);
    Files.copy(K7.resolve("plate.yaml"), plate);
    cli(
        "record",
        "start",
        "K7-right",
        "--records",
        other.toString(),
        "--by",
        "AB",
        "wearer=K7-right",
        "side=right",
        "level=transtibial");
    cli(
        "check",
        K7.resolve("barefoot-1.csv").toString(),
        K7.resolve("barefoot-2.csv").toString(),
        K7.resolve("barefoot-3.csv").toString(),
        "--trial",
        sheet.toString(),
        "--plate",
        plate.toString(),
        "--out",
        folder.resolve("out").toString(),
        "--record",
        "K7-right",
        "--by",
        "AB",
        "--records",
        other.toString());
    Map<String, String> expected = files(entry(other));
    assertThat(expected).containsKeys("entry.json", "result.json", "report.pdf", "sheet.yaml");
    assertThat(files(windows)).isEqualTo(expected);
    assertThat(window.page(base + "/back")).contains("Last good setting", "entry 2");
  }

  @Test
  void aRecordThatChangedMeanwhileIsShownBeforeTheStateIsKept() throws Exception {
    type("part", "live");
    drop("barefoot-1.csv");
    type("action", "count-1");
    HttpResponse<String> sent = type("action", "keep", "record-head", "0");
    assertThat(sent.statusCode()).isEqualTo(422);
    assertThat(sent.body()).contains("The record has changed");
    assertThat(window.page(base + "/record")).contains("kept up to entry 1");
  }

  @Test
  void anExportThatArrivesInTheWatchedFolderIsTakenOnceItIsDoneAndNotCounted() throws Exception {
    Path exports = Files.createDirectories(folder.resolve("exports"));
    Files.copy(K7.resolve("barefoot-1.csv"), exports.resolve("old.csv"));
    Map<String, String> watched = Map.of("watched-folder", exports.toString());
    typeAs(watched, "action", "watch");
    assertThat(window.page(base + STEP)).contains("watching " + exports);
    Files.writeString(exports.resolve("new.csv"), "Time;");
    typeAs(watched, "part", "live");
    Files.copy(
        K7.resolve("barefoot-2.csv"),
        exports.resolve("new.csv"),
        StandardCopyOption.REPLACE_EXISTING);
    assertThat(typeAs(watched, "part", "live").body()).doesNotContain("new.csv");
    assertThat(typeAs(watched, "part", "live").body())
        .contains("1 · new.csv · not yet counted")
        .doesNotContain("old.csv");
    assertThat(typeAs(watched, "part", "live").body()).doesNotContain("2 · new.csv");
  }

  @Test
  void theUncertaintyOfMarkingStaysForTheNextState() throws Exception {
    Map<String, String> marked =
        Map.of("landmark[2].marking", "4", "landmark[3].marking", "2.5", "landmark[1].marking", "");
    typeAs(marked, "part", "live");
    drop("barefoot-1.csv");
    typeAs(marked, "action", "count-1");
    String page = window.page(base + STEP);
    typeAs(marked, "action", "keep", "record-head", OpenWindow.head(page));
    assertThat(folder.resolve("records/drafts/K7-right")).doesNotExist();
    String next = window.page(base + STEP);
    assertThat(value(next, "landmark[1].marking")).isEqualTo("3");
    assertThat(value(next, "landmark[2].marking")).isEqualTo("4");
    assertThat(value(next, "landmark[3].marking")).isEqualTo("2.5");
    assertThat(value(next, "landmark[2].up")).isEmpty();
  }

  private static String value(String page, String name) {
    String input = page.substring(page.indexOf("name=\"" + name + "\""));
    String value = input.substring(input.indexOf(" value=\"") + " value=\"".length());
    return value.substring(0, value.indexOf('"'));
  }

  @Test
  void whatIsWrongStandsAtItsFieldInTheWordsOfTheField() throws Exception {
    Map<String, String> wrong = Map.of("landmark[2].up", "1,268", "landmark[1].forward", "-231");
    typeAs(wrong, "part", "live");
    drop("barefoot-1.csv");
    typeAs(wrong, "action", "count-1");
    String comma =
        "This could mean 1.268 or 1268: a comma before exactly three digits may separate"
            + " thousands. Type 1.268 with a point, or 1268 without a comma.";
    assertThat(window.page(base + STEP))
        .contains(
            comma,
            "<div class=\"fault\" id=\"landmark-2-up-fault\">",
            "knee centre, up from the plate: " + comma)
        .doesNotContain("without quotes", "up-mm");
    assertThat(typeAs(wrong, "part", "live").body())
        .contains(
            "<p data-at=\"landmark[2].up\">" + comma,
            "<p data-at=\"landmark[1].forward\">Type the number without a sign; the"
                + " choice next to it gives the direction.");
  }

  @Test
  void whatIsMissingIsToldAtItsField() throws Exception {
    Map<String, String> without = Map.of("landmark[2].up", "", "worn", "");
    typeAs(without, "part", "live");
    drop("barefoot-1.csv");
    typeAs(without, "action", "count-1");
    assertThat(typeAs(without, "part", "live").body())
        .contains("<p data-at=\"landmark[2].up\">Not measured yet. Measure it and type the number.")
        .doesNotContain("Add the line");
  }

  @Test
  void onlyWhatLooksLikeANameIsConfirmedToBeNone() throws Exception {
    Map<String, String> wrong = Map.of("landmark[2].up", "49o");
    typeAs(wrong, "part", "live");
    drop("barefoot-1.csv");
    typeAs(wrong, "action", "count-1");
    assertThat(window.page(base + STEP)).doesNotContain("id=\"is-sure\"");
    Map<String, String> name = Map.of("comfort", "Mr Huber feels well");
    typeAs(name, "part", "live");
    assertThat(window.page(base + STEP))
        .contains("looks like a name", "I confirm: nothing here says who the wearer is.")
        .doesNotContain("--sure", "as-meant: [");
  }

  @Test
  void aQuestionIsAskedWithoutTheLineOfASheet() throws Exception {
    Map<String, String> odd = Map.of("heel", "1", "worn", "shoe");
    typeAs(odd, "part", "live");
    drop("barefoot-1.csv");
    typeAs(odd, "action", "count-1");
    assertThat(window.page(base + STEP))
        .contains("Heel height, heel minus forefoot: ")
        .doesNotContain("as-meant: [", "heel-height-mm`");
  }

  @Test
  void theResultBeginsWithWhatToDoNext() throws Exception {
    type("part", "live");
    drop("barefoot-1.csv");
    type("action", "count-1");
    String page = window.page(base + STEP);
    assertThat(page.substring(page.indexOf("Result of one stand")))
        .containsSubsequence(
            "class=\"verdict lead\"", "Measure again before changing.", "give or take");
  }

  @Test
  void aLineThatAnotherPlateLacksIsNeverTakenForOneOfItsOwn() throws Exception {
    LocalFiles files = new LocalFiles();
    Path plate = folder.resolve("plate.yaml");
    String text = Files.readString(K7.resolve("plate.yaml"));
    Files.writeString(plate, text.replace("rear edge", "tape"));
    RememberedPlates.remember(
        Records.in(folder.resolve("records"), Clock.system(ZoneId.systemDefault())),
        files.read(K7.resolve("barefoot-1.csv")),
        files.read(plate),
        true);
    type("part", "live");
    assertThat(window.page(base + STEP))
        .contains("This plate has no line “rear edge”. Choose the line you measured from.")
        .contains(">tape</option>");
  }

  @Test
  void aStandIsOfTheTimeThatIsTypedElseOfTheFirstThatIsCounted() throws Exception {
    type("part", "live");
    String page = window.page(base + STEP);
    String shown = value(page, "entry-at-shown");
    assertThat(shown).matches("\\d{4}-\\d\\d-\\d\\d \\d\\d:\\d\\d");
    Map<String, String> left = Map.of("entry-at", shown, "entry-at-shown", shown);
    typeAs(left, "part", "live");
    assertThat(draft()).doesNotContainPattern("(?m)^at=");
    drop("barefoot-1.csv");
    typeAs(left, "action", "count-1");
    assertThat(draft()).containsPattern("(?m)^at=\\d{4}-");
    String counted = draft();
    typeAs(left, "part", "live");
    assertThat(draft()).isEqualTo(counted);
    Map<String, String> typed = Map.of("entry-at", "2026-03-04 10:15 +01:00");
    typeAs(typed, "part", "live");
    assertThat(draft()).contains("at=2026-03-04T10:15+01:00\n");
    assertThat(value(window.page(base + STEP), "entry-at")).startsWith("2026-03-04 10:15");
    typeAs(left, "part", "live");
    assertThat(draft()).doesNotContain("2026-03-04T10:15").containsPattern("(?m)^at=\\d{4}-");
  }

  private String draft() throws IOException {
    return Files.readString(folder.resolve("records/drafts/K7-right/draft"));
  }

  @Test
  void aTimeThatIsNoneIsToldAtItsField() throws Exception {
    Map<String, String> wrong = Map.of("entry-at", "{4 March}");
    typeAs(wrong, "part", "live");
    drop("barefoot-1.csv");
    String said = "Expected a day and a time, such as 2026-03-04 10:15, found {4 March}.";
    assertThat(typeAs(wrong, "action", "count-1").statusCode()).isEqualTo(303);
    assertThat(window.page(base + STEP))
        .contains("id=\"entry-at-fault\"><p>" + said, "When: " + said);
  }

  @Test
  void whatWasAnsweredInASessionIsNotAskedAgain() throws Exception {
    Map<String, String> odd = Map.of("heel", "1", "worn", "shoe", "entry-at", EARLIER);
    typeAs(odd, "part", "live");
    drop("barefoot-1.csv");
    typeAs(odd, "action", "count-1");
    typeAs(odd, "action", "meant=heel-height-mm 1");
    String page = window.page(base + STEP);
    typeAs(odd, "action", "keep", "record-head", OpenWindow.head(page));
    Map<String, String> next = Map.of("heel", "1", "worn", "shoe", "entry-at", LATER);
    typeAs(next, "part", "live");
    drop("barefoot-2.csv");
    typeAs(next, "action", "count-1");
    assertThat(window.page(base + STEP))
        .contains("Answered before in this session: heel-height-mm 1", "Keep this state")
        .doesNotContain("meant=heel-height-mm 1");
  }

  @Test
  void theDirectionOfARecommendedOffsetTellsItsPlane() throws Exception {
    Map<String, String> medial =
        Map.of("target[1].sense", "medial", "target[1].plane", "", "target[1].recommended", "50");
    typeAs(medial, "part", "live");
    drop("barefoot-1.csv");
    typeAs(medial, "action", "count-1");
    assertThat(window.page(base + STEP))
        .contains("the recommended offset for 'knee centre' (frontal) is −50.0");
  }

  @Test
  void theResultStaysInSightAfterItsStateIsKept() throws Exception {
    Map<String, String> noted = Map.of("conclusion", "good", "next-step", "walk", "role", "CPO");
    typeAs(noted, "part", "live");
    drop("barefoot-1.csv");
    typeAs(noted, "action", "count-1");
    String head = OpenWindow.head(window.page(base + STEP));
    assertThat(typeAs(noted, "action", "keep", "record-head", head).body())
        .containsSubsequence("Kept as entry 2", "Measure again before changing.", "<svg");
    assertThat(Files.readString(entry(folder.resolve("records")).resolve("sheet.yaml")))
        .contains("conclusion: 'good'", "next-step: 'walk'", "role: 'CPO'");
  }

  @Test
  void theStretchIsSetByHandAndStandsInTheResult() throws Exception {
    Map<String, String> byHand = Map.of("from-s[1]", "3,5", "to-s[1]", "18");
    drop("barefoot-1.csv");
    typeAs(byHand, "action", "count-1");
    String page = window.page(base + STEP);
    assertThat(page.replace('\u00a0', ' '))
        .contains(
            "set by hand: 3,5 – 18 s",
            "The part used was set by hand, from 3.50 s to 17.99 s.",
            "Keep this state");
    typeAs(byHand, "action", "keep", "record-head", OpenWindow.head(page));
    assertThat(Files.readString(entry(folder.resolve("records")).resolve("result.json")))
        .containsPattern("\"by-hand\" ?: ?true");
  }

  @Test
  void aStretchThatCannotBeIsToldAtItsField() throws Exception {
    Map<String, String> wrong = Map.of("from-s[1]", "early");
    drop("barefoot-1.csv");
    typeAs(wrong, "action", "count-1");
    assertThat(window.page(base + STEP))
        .contains(
            "id=\"from-s-1--fault\"><p>Type seconds for barefoot-1.csv as a number, such as 2.5 or"
                + " 2,5.");
    assertThat(typeAs(Map.of("from-s[1]", "9", "to-s[1]", "9"), "part", "live").body())
        .contains(
            "id=\"from-s-1--fault\"><p>The stretch set by hand for barefoot-1.csv ends before it"
                + " begins.",
            "<details data-stand=\"1\" open>");
  }

  @Test
  void whereNoStandWasGoodThereIsNoWayBack() throws Exception {
    assertThat(window.page(base + "/back")).contains("no stand of this record met every tolerance");
  }

  private static Path entry(Path records) throws IOException {
    try (Stream<Path> all = Files.walk(records)) {
      return all.filter(f -> f.getFileName().toString().equals("0002-stand"))
          .findFirst()
          .orElseThrow();
    }
  }

  private static Map<String, String> files(Path entry) throws IOException {
    Map<String, String> files = new TreeMap<>();
    try (Stream<Path> all = Files.list(entry)) {
      for (Path file : all.toList()) {
        files.put(file.getFileName().toString(), new String(Files.readAllBytes(file), ISO_8859_1));
      }
    }
    return files;
  }

  private void cli(String... arguments) {
    List<String> all = new ArrayList<>(List.of(arguments));
    if (!all.contains("--records")) {
      all.addAll(List.of("--records", folder.resolve("records").toString()));
    }
    StringWriter said = new StringWriter();
    PrintWriter out = new PrintWriter(said);
    assertThat(Main.run(out, out, all.toArray(String[]::new))).as(said.toString()).isZero();
  }

  private void drop(String name) throws Exception {
    upload(name, Files.readAllBytes(K7.resolve(name)));
  }

  private void upload(String name, byte[] bytes) throws Exception {
    new TypedStand(window, base).upload(name, bytes);
  }

  private HttpResponse<String> type(String... fields) throws Exception {
    return typeAs(Map.of(), fields);
  }

  private HttpResponse<String> typeAs(Map<String, String> other, String... fields)
      throws Exception {
    return new TypedStand(window, base).typeAs(other, fields);
  }
}
