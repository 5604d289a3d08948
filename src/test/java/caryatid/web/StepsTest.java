package caryatid.web;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.usecase.Records;
import caryatid.usecase.RememberedPlates;
import caryatid.usecase.file.LocalFiles;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What is typed, kept and proposed from step to step of a fitting. */
class StepsTest extends FittingWindow {
  private static final String STATIC = "/static-alignment";

  @BeforeEach
  void prepare() throws Exception {
    rememberPlate();
  }

  private TypedStand stand() {
    return new TypedStand(window, base);
  }

  private String kept(Map<String, String> other, String recording) throws Exception {
    stand().typeAs(other, "part", "live");
    stand().drop(recording);
    stand().typeAs(other, "action", "count-1");
    String head = OpenWindow.head(window.page(base + STATIC));
    HttpResponse<String> kept = stand().typeAs(other, "action", "keep", "record-head", head);
    assertThat(kept.body()).contains("Kept as entry");
    return kept.body();
  }

  private static Map<String, String> withoutMarks() {
    Map<String, String> none = new TreeMap<>();
    TypedStand.sheet().keySet().stream()
        .filter(name -> name.matches("landmark.*\\.(forward|rightward|up)"))
        .forEach(name -> none.put(name, ""));
    return none;
  }

  @Test
  void marksThatWereNotTakenOverAreNamedWithTheirFieldAndTheLastNumbers() throws Exception {
    kept(Map.of(), "barefoot-1.csv");
    Map<String, String> none = withoutMarks();
    stand().typeAs(none, "part", "live");
    stand().drop("barefoot-2.csv");
    stand().typeAs(none, "action", "count-1");
    assertThat(window.page(base + STATIC))
        .contains(
            "<span>ankle axis, In front or behind: Not measured since the last state. Measure it,"
                + " or press Enter in the field to use 231 · 20 · 82.</span>",
            "id=\"landmark-1-forward-fault\"",
            "Grey numbers are from the last state (231 · 20 · 82) and do not count yet.")
        .doesNotContain("Please fill this in.");
  }

  @Test
  void ofTheFirstStateItSaysThatNothingIsMeasuredYet() throws Exception {
    Map<String, String> none = withoutMarks();
    stand().typeAs(none, "part", "live");
    stand().drop("barefoot-1.csv");
    stand().typeAs(none, "action", "count-1");
    assertThat(window.page(base + STATIC))
        .contains(
            "<span>ankle axis, In front or behind: Not measured yet. Measure it and type the"
                + " number.</span>");
  }

  @Test
  void aDraftIsMarkedInTheMenuAndKeptBeforeOneGoesOn() throws Exception {
    String before = window.page(base + "/assessment");
    assertThat(before)
        .contains("<button form=\"entry\" class=\"strong\">Keep</button>", "class=\"button next\"")
        .doesNotContain("· draft");
    send("/assessment", "skin", "no marks", "part", "draft");
    String after = window.page(base + "/assessment");
    assertThat(after)
        .contains("class=\"button next soft\"")
        .containsPattern("What you typed before and did not keep: <button name=\"discard\"");
    assertThat(window.page(base + "/parts"))
        .containsPattern("assessment\">Assessment<span class=\"drafted-mark\">· draft</span>")
        .contains("class=\"button next\"");
  }

  @Test
  void aStepIsDoneByItsMainEntryAloneAndTheOtherFormStays() throws Exception {
    send("/closing", "entry-kind", "closing", "skin", "no marks", "part", "draft");
    HttpResponse<String> kept =
        send("/closing", "entry-kind", "accepted", "what", "the offset", "why", "comfortable");
    assertThat(kept.body())
        .contains("Kept as entry", "value=\"no marks\"", "What you typed before and did not keep:")
        .doesNotContainPattern("closing\" aria-current=\"page\">Closing<span aria-hidden");
    assertThat(send("/closing", "entry-kind", "closing", "skin", "no marks").body())
        .containsPattern("closing\" aria-current=\"page\">Closing<span aria-hidden");
  }

  @Test
  void aFaultInOneFormLeavesTheOtherOneOnThePage() throws Exception {
    send("/closing", "entry-kind", "closing", "skin", "no marks", "part", "draft");
    HttpResponse<String> refused = send("/closing", "entry-kind", "accepted", "what", "");
    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(refused.body()).contains("value=\"no marks\"", "id=\"entry\"");
  }

  @Test
  void afterAChangeOneStandsAgainBeforeOneWalks() throws Exception {
    kept(Map.of(), "barefoot-1.csv");
    HttpResponse<String> changed =
        send(
            "/bench-alignment",
            "items[1].item",
            "socket flexion",
            "items[1].set",
            "6",
            "items[1].unit",
            "deg");
    assertThat(changed.body()).contains("Kept as entry");
    String next = "class=\"button next\" href=\"" + base + STATIC + "\">Next: Stand again";
    assertThat(send("/length-and-pelvis", "notes", "level").body()).contains(next);
    assertThat(window.page(base + "/dynamic-alignment")).contains(next);
    assertThat(window.page(base + "/closing"))
        .contains(
            next,
            "What is open",
            "The alignment was changed (entry 3) after the last stand (entry 2).");
  }

  @Test
  void whatWasKeptIsALinkInTheRecordAndTheLastReportOneOnStaticAlignment() throws Exception {
    assertThat(window.page(base + STATIC)).doesNotContain("/report/");
    assertThat(window.page(base + "/record")).doesNotContain("Kept files");
    kept(Map.of(), "barefoot-1.csv");
    assertThat(window.page(base + STATIC))
        .contains(
            "href=\"" + base + "/report/2\">Report of the state that was kept last (entry 2, PDF)");
    assertThat(window.page(base + "/record"))
        .contains(
            "Kept files",
            "href=\"" + base + "/report/2\">",
            "href=\"" + base + "/file/2?name=sheet.yaml\">sheet.yaml");
    HttpResponse<String> sheet = window.ask(window.own(base + "/file/2?name=sheet.yaml"));
    assertThat(sheet.body()).startsWith("trial-sheet: 1");
    assertThat(sheet.headers().firstValue("Content-Disposition").orElse(""))
        .contains("attachment", "sheet.yaml");
    assertThat(window.ask(window.own(base + "/file/2?name=..%2Fentry.json")).statusCode())
        .isEqualTo(404);
  }

  @Test
  void aSecondRecordingOfTheSameNameIsNumbered() throws Exception {
    stand().typeAs(Map.of(), "part", "live");
    stand().drop("barefoot-1.csv");
    stand().drop("barefoot-1.csv");
    stand().typeAs(Map.of(), "action", "count-1");
    stand().typeAs(Map.of(), "action", "count-2");
    assertThat(window.page(base + STATIC))
        .contains(
            "2 · barefoot-1-2.csv",
            "barefoot-1-2.csv: holds the same bytes as barefoot-1.csv; a stand counts once.");
  }

  @Test
  void ofTwoPlatesTheLeftOneIsUnderTheLeftFoot() throws Exception {
    LocalFiles files = new LocalFiles();
    Path m4 = Path.of("sample-recordings/m4");
    RememberedPlates.remember(
        Records.in(folder.resolve("records"), Clock.system(ZoneId.systemDefault())),
        files.read(m4.resolve("shoe.txt")),
        files.read(m4.resolve("plates.yaml")),
        false);
    window.send(base + STATIC, "known-plate", "plates.yaml", "part", "live");
    assertThat(window.page(base + STATIC))
        .containsPattern("value=\"one plate per foot\" selected")
        .containsPattern("name=\"plate-left\"><option value=\"plate 1\" selected")
        .containsPattern(
            "name=\"plate-right\"><option value=\"plate 1\">plate 1</option>\\s*<option"
                + " value=\"plate 2\" selected");
  }

  @Test
  void aReasonSpeaksOfFieldsAndNotOfTheSheet() throws Exception {
    Map<String, String> far = Map.of("landmark[2].forward-sense", "behind");
    stand().typeAs(far, "part", "live");
    stand().drop("barefoot-1.csv");
    stand().typeAs(far, "action", "count-1");
    assertThat(window.page(base + STATIC))
        .contains("the choice before it (in front of or behind, right or left of)")
        .doesNotContain("sheet.yaml", "landmark's sign", "its sign");
  }

  @Test
  void aboveTheKneeTheTrochanterIsAskedForAndTheAxisIsCalledSoInListAndDrawing() throws Exception {
    HttpResponse<String> started =
        window.send(
            "/new",
            "record-code",
            "T1-left",
            "wearer",
            "T1",
            "side",
            "left",
            "level",
            "transfemoral",
            "by-initials",
            "AB");
    String other =
        started.headers().firstValue("Location").orElseThrow().replace("/parts", "") + STATIC;
    assertThat(window.page(other))
        .containsPattern(
            "name=\"landmark\\[2].name\"[^>]*><option value=\"knee centre\">prosthetic")
        .containsPattern("name=\"landmark\\[3].name\"[^>]*><option value=\"hip\">greater troch")
        .containsPattern("name=\"landmark\\[4].name\"[^>]*><option value=\"foot reference");
    window.send(
        other,
        "landmark[1].name",
        "ankle axis",
        "landmark[1].forward",
        "1",
        "landmark[1].up",
        "80",
        "landmark[2].name",
        "knee centre",
        "part",
        "live");
    assertThat(window.page(other)).containsPattern("<text [^>]*class=\"asked\">prosthetic");
  }

  @Test
  void rowsOfTheBenchThatMayStayEmptyHaveNoStarAndOneSidedRecordsAskForNoSide() throws Exception {
    String page = window.page(base + "/bench-alignment");
    assertThat(page)
        .contains("Empty rows are left out.", "<div class=\"one-sided\">")
        .doesNotContain(">set *</label>");
    assertThat(window.page(window.start("B1-both", "both") + "/bench-alignment"))
        .doesNotContain("one-sided");
  }

  /** A page that still shows the state before asks by itself; its marks are no new ones. */
  @Test
  void aPageThatIsOutOfDateTypesNothing() throws Exception {
    String head = OpenWindow.head(window.page(base + STATIC));
    window.send(
        base + "/arriving",
        "record-head",
        OpenWindow.head(window.page(base + "/arriving")),
        "by-initials",
        "AB",
        "text",
        "called before");
    String asked =
        window
            .send(
                base + STATIC,
                "record-head",
                head,
                "landmark[1].up",
                "82",
                "worn",
                "shoe",
                "part",
                "live")
            .body();
    assertThat(asked).contains("The record has changed since this page was made", "id=\"drop\"");
    assertThat(window.page(base + STATIC)).doesNotContain("value=\"82\"");
  }
}
