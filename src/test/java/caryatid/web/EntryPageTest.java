package caryatid.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Records that are started and extended from the page. */
class EntryPageTest {
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
  void aRecordIsStartedAndSideAndLevelAreInSightAtEachStep() throws Exception {
    String base = window.start("K7-right", "right");
    for (String step : new String[] {"arriving", "parts", "bench-alignment", "closing", "record"}) {
      String page = window.page(base + "/" + step);
      assertThat(page)
          .as(step)
          .contains("<strong>right</strong>", "transtibial", "kept up to entry 1", "K7-right");
    }
  }

  @Test
  void noAddressAndNoTitleHasTheWearersCode() throws Exception {
    String base = window.start("K7-right", "right");
    assertThat(base).doesNotContain("K7");
    assertThat(window.page(base + "/parts"))
        .contains("<title>Parts - Caryatid</title>")
        .doesNotContainPattern("href=\"[^\"]*K7")
        .doesNotContainPattern("action=\"[^\"]*K7");
  }

  @Test
  void aFaultStandsAtItsFieldAndWhatWasTypedStays() throws Exception {
    String base = window.start("K7-right", "right");
    HttpResponse<String> sent = send(base, "assessment", "sock-ply", "many", "skin", "no marks");
    assertThat(sent.statusCode()).isEqualTo(422);
    assertThat(sent.body())
        .contains(
            "Nothing was kept yet.",
            "id=\"sock-ply-fault\"><p>sock ply: expected a number, found &quot;many&quot;.",
            "value=\"many\"",
            "value=\"no marks\"");
  }

  /** Both sides of 15 deg and 50 mm; a reason answers. */
  @Test
  void aSettingFarFromWhatIsRecommendedIsAskedAbout() throws Exception {
    String base = window.start("K7-right", "right");
    HttpResponse<String> asked = bench(base, 1, "socket flexion", "40", "5", "");
    assertThat(asked.statusCode()).isEqualTo(422);
    assertThat(asked.body()).contains("set is 40.0°, but 5.0° is recommended");
    assertThat(bench(base, 1, "socket flexion", "20.1", "5", "").statusCode()).isEqualTo(422);
    assertThat(bench(base, 1, "socket flexion", "20", "5", "").statusCode()).isEqualTo(200);
    String forward = "socket forward of the reference line";
    assertThat(bench(base, 3, forward, "20.1", "-30", "").statusCode()).isEqualTo(422);
    assertThat(bench(base, 3, forward, "20", "-30", "").statusCode()).isEqualTo(200);
    assertThat(bench(base, 1, "socket flexion", "40", "5", "contracture").statusCode())
        .isEqualTo(200);
  }

  private HttpResponse<String> bench(
      String base, int row, String item, String set, String recommended, String why)
      throws Exception {
    String lead = "items[" + row + "].";
    return send(
        base,
        "bench-alignment",
        lead + "item",
        item,
        lead + "set",
        set,
        lead + "recommended",
        recommended,
        lead + "unit",
        row == 1 ? "deg" : "mm",
        lead + "why",
        why);
  }

  @Test
  void aMobilityGradeMayHaveItsLetter() throws Exception {
    String base = window.start("K7-right", "right");
    String highest = "components[1].mobility-grade-highest";
    assertThat(
            send(
                    base,
                    "parts",
                    "components[1].what",
                    "foot",
                    "components[1].name",
                    "demo foot",
                    highest,
                    "K3",
                    "components[1].mobility-grade-lowest",
                    "k 2")
                .body())
        .contains("Kept as entry 2", "mobility grade, lowest 2", "mobility grade, highest 3");
    assertThat(send(base, "parts", "components[1].what", "foot", highest, "M3").body())
        .contains("expected a number, found &quot;M3&quot;");
  }

  @Test
  void aDecimalCommaIsReadAsOneAndThousandsAreRefused() throws Exception {
    String base = window.start("K7-right", "right");
    assertThat(send(base, "assessment", "minutes-since-donning", "12,5").body())
        .contains("Kept as entry 2", "minutes since donning: 12.5");
    assertThat(send(base, "assessment", "minutes-since-donning", "1,234").body())
        .contains("expected a number, found &quot;1,234&quot;");
  }

  @Test
  void anEntryIsOfTheTimeAtWhichItIsKeptUnlessAnotherIsTyped() throws Exception {
    String base = window.start("K7-right", "right");
    String page = window.page(base + "/assessment");
    String now = value(page, "entry-at-shown");
    assertThat(now).matches("\\d{4}-\\d\\d-\\d\\d \\d\\d:\\d\\d");
    assertThat(page).containsOnlyOnce("By this computer");
    assertThat(page).contains("aria-describedby=\"entry-at-hint\" value=\"" + now + "\"");
    String left = "2026-01-01T00:00+00:00";
    send(base, "assessment", "skin", "a", "entry-at", left, "entry-at-shown", left);
    send(base, "assessment", "skin", "b", "entry-at", "2026-03-04 10:15 +01:00");
    assertThat(window.page(base + "/record"))
        .contains("2026-03-04 10:15")
        .doesNotContain("2026-01-01");
  }

  @Test
  void aTimeThatIsNoneOrToComeIsToldAtItsFieldAndStays() throws Exception {
    String base = window.start("K7-right", "right");
    for (String time : new String[] {"4 March", "4/3/2026 10:15", "0001-01-01T00:00Z"}) {
      HttpResponse<String> sent = send(base, "assessment", "skin", "a", "entry-at", time);
      assertThat(sent.statusCode()).isEqualTo(422);
      assertThat(sent.body())
          .contains(
              "id=\"entry-at-fault\"><p>Expected a day and a time, such as 2026-03-04 10:15, found "
                  + time
                  + ".</p>",
              "value=\"" + time + "\"",
              "value=\"a\"");
    }
    assertThat(send(base, "assessment", "skin", "a", "entry-at", "2999-01-01T00:00Z").body())
        .contains("id=\"entry-at-fault\"><p>expected a time in the past, found 2999-01-01T00:00Z");
    assertThat(window.page(base + "/record")).contains("kept up to entry 1");
  }

  @Test
  void aRecordIsStartedAtTheTimeThatIsTyped() throws Exception {
    String[] fields = {
      "record-code", "K7-right", "wearer", "K7", "side", "right", "level", "transtibial"
    };
    HttpResponse<String> refused = start(fields, "yesterday");
    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(refused.body()).contains("id=\"entry-at-fault\"", "value=\"yesterday\"");
    HttpResponse<String> started = start(fields, "2026-03-04T09:00+01:00");
    String there = started.headers().firstValue("Location").orElseThrow();
    assertThat(window.page(there.replace("/parts", "/record"))).contains("2026-03-04 09:00");
  }

  @Test
  void theTimeTypedLastIsOfferedToTheNextFormOfTheVisit() throws Exception {
    String base = window.start("K7-right", "right");
    send(base, "assessment", "skin", "a", "entry-at", "4.3.2026 14:05");
    assertThat(window.page(base + "/record")).contains("2026-03-04 14:05");
    String next = window.page(base + "/dynamic-alignment");
    assertThat(next).contains("value=\"4.3.2026 14:05\"", "As typed last today.");
    send(base, "dynamic-alignment", "comfort", "8");
    assertThat(window.page(base + "/closing")).doesNotContain("value=\"4.3.2026 14:05\"");
  }

  @Test
  void aFormThatIsSentAgainAfterItWasKeptSaysSo() throws Exception {
    String base = window.start("K7-right", "right");
    String head = OpenWindow.head(window.page(base + "/assessment"));
    String[] form = {"record-head", head, "by-initials", "AB", "skin", "a"};
    assertThat(window.send(base + "/assessment", form).body()).contains("Kept as entry 2");
    HttpResponse<String> again = window.send(base + "/assessment", form);
    assertThat(again.statusCode()).isEqualTo(422);
    assertThat(again.body())
        .contains("This form was kept already, as entry 2; nothing was kept a second time.")
        .contains("href=\"" + base + "/record\"", "value=\"a\"")
        .doesNotContain("The record has changed", "Nothing was kept yet");
    assertThat(window.page(base + "/record")).contains("kept up to entry 2");
  }

  @Test
  void ofLengthAndPelvisWhatIsKnownIsEnough() throws Exception {
    String base = window.start("K7-right", "right");
    assertThat(send(base, "length-and-pelvis", "pelvis-level", "yes").body())
        .contains("Kept as entry 2", "pelvis level: yes");
    assertThat(window.page(base + "/length-and-pelvis"))
        .contains(">landmark</label>")
        .doesNotContain(">landmark *</label>");
    assertThat(send(base, "length-and-pelvis", "landmarks[1].left-mm", "900").body())
        .contains("id=\"landmarks-1-landmark-fault\"", "id=\"landmarks-1-right-mm-fault\"");
    assertThat(send(base, "length-and-pelvis").statusCode()).isEqualTo(422);
  }

  /** A level pelvis seen later does not say that the heights were wrong. */
  @Test
  void legsThatDifferStayOpenWhenOnlyThePelvisIsNoted() throws Exception {
    String base = window.start("K7-right", "right");
    String[] heights = {
      "landmarks[1].landmark",
      "iliac crest",
      "landmarks[1].left-mm",
      "1000",
      "landmarks[1].right-mm",
      "980"
    };
    send(base, "length-and-pelvis", heights);
    String before = window.page(base + "/closing");
    send(base, "length-and-pelvis", "pelvis-level", "no");
    String differs = before.split("class=\"facts\"")[1].split("</ul>")[0];
    assertThat(differs).contains("iliac crest");
    assertThat(window.page(base + "/closing")).contains(differs);
  }

  /** Common practice, no source: the knee that the wearer has is looked at below it. */
  @Test
  void belowTheKneeItsInstabilityAndASlippingSocketAreLookedFor() throws Exception {
    String page = window.page(window.start("K7-right", "right") + "/dynamic-alignment");
    assertThat(page)
        .contains("own knee is unstable", "socket slips on the leg")
        .doesNotContain("prosthetic knee gives way");
  }

  @Test
  void afterTheClosingWasKeptReportAndPackedRecordAreOffered() throws Exception {
    String base = window.start("K7-right", "right");
    assertThat(send(base, "closing", "pain", "0").body())
        .contains("Kept as entry 2", base + "/pdf?paper=a4", base + "/pack", base + "/bundle");
  }

  private HttpResponse<String> start(String[] fields, String time) throws Exception {
    String[] all = Arrays.copyOf(fields, fields.length + 4);
    all[fields.length] = "entry-at";
    all[fields.length + 1] = time;
    all[fields.length + 2] = "by-initials";
    all[fields.length + 3] = "AB";
    return window.send("/new", all);
  }

  @Test
  void aNextVisitBeforeTheEntryIsAskedAboutAndANoteAnswers() throws Exception {
    String base = window.start("K7-right", "right");
    String day = "2026-03-04T10:15+01:00";
    HttpResponse<String> asked =
        send(base, "closing", "entry-at", day, "next-visit", "2026-03-03", "pain", "0");
    assertThat(asked.statusCode()).isEqualTo(422);
    assertThat(asked.body())
        .contains(
            "id=\"next-visit-fault\"><p>next visit: 2026-03-03 is before the day of this entry,"
                + " 2026-03-04.");
    assertThat(
            send(
                    base,
                    "closing",
                    "entry-at",
                    day,
                    "next-visit",
                    "2026-03-03",
                    "note",
                    "entered late; visit of 2026-03-03")
                .body())
        .contains("Kept as entry 2");
    assertThat(send(base, "closing", "entry-at", day, "next-visit", "2026-03-04").body())
        .contains("Kept as entry 3");
  }

  @Test
  void aStepLeadsToTheNextOneThatIsOpenAndClosingToTheRecord() throws Exception {
    String base = window.start("K7-right", "right");
    assertThat(send(base, "assessment", "skin", "no marks").body())
        .contains("href=\"" + base + "/bench-alignment\">Next: Bench alignment");
    send(base, "dynamic-alignment", "comfort", "8");
    assertThat(window.page(base + "/static-alignment"))
        .contains("href=\"" + base + "/footwear\">Next: Footwear");
    assertThat(window.page(base + "/arriving")).contains("Next: Parts");
    assertThat(send(base, "closing", "skin", "no marks").body())
        .contains("href=\"" + base + "/record\">Next: The record")
        .doesNotContain("Next: Parts");
    assertThat(window.page(base + "/record")).doesNotContain("Next: ", "class=\"onward\"");
    for (String page : new String[] {"verify", "compare", "back", "answer"}) {
      assertThat(window.page(base + "/" + page))
          .as(page)
          .contains("class=\"button next\" href=\"" + base + "/record\">The record")
          .doesNotContain("Next: ");
    }
  }

  /** A plain number of mm; anything else is not taken. */
  @Test
  void theComparisonAsksHowFarTheOffsetsWereMeantToChange() throws Exception {
    String base = window.start("K7-right", "right");
    send(base, "assessment", "skin", "no marks");
    String asked = "name=\"intended\" inputmode=\"decimal\" value=\"";
    assertThat(window.page(base + "/compare")).contains("for=\"intended\"", asked + "\">");
    assertThat(window.page(base + "/compare?from=1&to=2&intended=7,5"))
        .contains("From entry 1 to entry 2", asked + "7,5\">");
    assertThat(window.page(base + "/compare?from=1&to=2&intended=far"))
        .contains("From entry 1 to entry 2", asked + "\">");
  }

  @Test
  void anAnswerSaysWhatItAnswers() throws Exception {
    String base = window.start("K7-right", "right");
    send(base, "assessment", "skin", "no marks");
    String page = window.page(base + "/bench-alignment");
    int row = torqueRow(page);
    String item = "items[" + row + "].";
    HttpResponse<String> kept =
        send(
            base,
            "bench-alignment",
            item + "item",
            value(page, item + "item"),
            item + "unit",
            value(page, item + "unit"),
            item + "fastener",
            "foot bolt",
            item + "recommended",
            "15",
            item + "set",
            "0");
    assertThat(kept.body()).contains("href=\"" + base + "/answer?line=1\"");
    String line = between(kept.body(), "<span>! ", "</span>");
    assertThat(window.page(base + "/answer?line=1")).contains("value=\"" + line + "\"");
    assertThat(window.page(base + "/answer?line=9")).doesNotContain(line + "\"");
  }

  private static int torqueRow(String page) {
    Matcher unit = Pattern.compile("items\\[(\\d+)]\\.unit\" value=\"N m\"").matcher(page);
    assertThat(unit.find()).as(page).isTrue();
    return Integer.parseInt(unit.group(1));
  }

  private static String between(String page, String before, String after) {
    int from = page.indexOf(before) + before.length();
    return page.substring(from, page.indexOf(after, from));
  }

  @Test
  void anUsualDeviationIsOneLineAndTheBenchSaysHowTheOtherWayIsWritten() throws Exception {
    String base = window.start("K7-right", "right");
    assertThat(window.page(base + "/dynamic-alignment"))
        .contains("<fieldset class=\"row one\">")
        .doesNotContain("has a minus sign");
    assertThat(window.page(base + "/bench-alignment"))
        .contains("30 mm behind the reference line is -30 mm forward of it.");
  }

  @Test
  void rowsThatMayStayEmptyAskForNothing() throws Exception {
    String base = window.start("K7-right", "right");
    String page = window.page(base + "/parts");
    assertThat(page).contains("<legend>components 1</legend>", "for=\"components-1-what\">what *<");
    assertThat(page).contains("<legend>components 2</legend>", "for=\"components-2-what\">what<");
  }

  @Test
  void theRecordEndsWithTheBeginningOfItsDigest() throws Exception {
    String base = window.start("K7-right", "right");
    String page = window.page(base + "/record");
    assertThat(page)
        .containsPattern("<summary>Head digest [0-9a-f]{16} …</summary>")
        .containsPattern("<p class=\"digest\">[0-9a-f]{128}</p>");
    assertThat(page.indexOf("Head digest")).isGreaterThan(page.indexOf("transtibial</p>"));
  }

  @Test
  void oneRowAnItemAndOnlyThoseTypedIntoAreKept() throws Exception {
    String base = window.start("K7-right", "right");
    String page = window.page(base + "/bench-alignment");
    assertThat(page)
        .contains("name=\"items[1].set\"")
        .doesNotContain("name=\"items[1].unit\" type=\"text\"");
    HttpResponse<String> kept =
        send(
            base,
            "bench-alignment",
            "items[1].item",
            value(page, "items[1].item"),
            "items[1].unit",
            value(page, "items[1].unit"),
            "items[2].item",
            value(page, "items[2].item"),
            "items[2].unit",
            value(page, "items[2].unit"),
            "items[2].recommended",
            "5",
            "items[2].set",
            "7",
            "items[2].why",
            "contracture");
    assertThat(kept.body()).contains("Kept as entry 2").contains("recommended 5").contains("set 7");
    assertThat(kept.body()).doesNotContain(value(page, "items[1].item") + ";");
  }

  @Test
  void aMissingPartOfARowIsToldAtItsField() throws Exception {
    String base = window.start("K7-right", "right");
    String page = window.page(base + "/bench-alignment");
    assertThat(
            send(
                    base,
                    "bench-alignment",
                    "items[3].item",
                    value(page, "items[3].item"),
                    "items[3].unit",
                    value(page, "items[3].unit"),
                    "items[3].recommended",
                    "5")
                .body())
        .contains("id=\"items-3-set-fault\"><p>set is missing. Add it.");
  }

  @Test
  void aRecordThatChangedMeanwhileIsShownBeforeAnythingIsKept() throws Exception {
    String base = window.start("K7-right", "right");
    String page = window.page(base + "/assessment");
    send(base, "closing", "skin", "no marks");
    HttpResponse<String> sent =
        window.send(
            base + "/assessment",
            "record-head",
            OpenWindow.head(page),
            "sock-ply",
            "3",
            "by-initials",
            "AB");
    assertThat(sent.statusCode()).isEqualTo(422);
    assertThat(sent.body()).contains("The record has changed", "value=\"3\"");
    assertThat(window.page(base + "/record")).contains("kept up to entry 2");
  }

  @Test
  void whatLooksLikeANameIsRefusedUntilSomebodyIsSure() throws Exception {
    String base = window.start("K7-right", "right");
    HttpResponse<String> refused = send(base, "arriving", "text", "Call +49 170 1234567 please");
    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(refused.body()).contains("name=\"is-sure\"");
    assertThat(send(base, "closing", "socket-comfort", "many").body())
        .contains("id=\"faults\"")
        .doesNotContain("is-sure");
    assertThat(
            send(base, "arriving", "text", "Call +49 170 1234567 please", "is-sure", "yes").body())
        .contains("Kept as entry 2");
  }

  @Test
  void whatPeopleWriteIsNeverMarkup() throws Exception {
    String base = window.start("K7-right", "right");
    assertThat(send(base, "arriving", "text", "<script>alert(1)</script>").body())
        .contains("&lt;script&gt;")
        .doesNotContain("<script>alert");
  }

  @Test
  void whatIsTypedOutlivesTheProgramAndGoesWhenItIsKept() throws Exception {
    String base = window.start("K7-right", "right");
    assertThat(send(base, "assessment", "skin", "no marks", "part", "draft").body())
        .isEqualTo("draft saved");
    window.close();
    window = new OpenWindow(folder);
    String list = window.page("/");
    base = list.substring(list.indexOf("/r/"), list.indexOf("/arriving"));
    assertThat(window.page(base + "/assessment"))
        .contains("What you typed before and did not keep:", "value=\"no marks\"");
    assertThat(window.page(base + "/closing")).doesNotContain("no marks");
    assertThat(window.page(base + "/record")).contains("kept up to entry 1");
    assertThat(send(base, "assessment", "skin", "no marks").body()).contains("Kept as entry 2");
    assertThat(window.page(base + "/assessment")).doesNotContain("What you typed before");
  }

  @Test
  void aDraftThatArrivesAfterItsFormWasKeptIsNotOfferedAgain() throws Exception {
    String base = window.start("K7-right", "right");
    String head = OpenWindow.head(window.page(base + "/assessment"));
    send(base, "assessment", "skin", "no marks");
    window.send(base + "/assessment", "record-head", head, "skin", "no marks", "part", "draft");
    assertThat(window.page(base + "/assessment")).doesNotContain("What you typed before");
  }

  /** Somebody else added to the record while this was typed. */
  @Test
  void aDraftIsSavedThoughTheRecordHasChanged() throws Exception {
    String base = window.start("K7-right", "right");
    String head = OpenWindow.head(window.page(base + "/assessment"));
    send(base, "arriving", "text", "called before");
    window.send(base + "/assessment", "record-head", head, "skin", "no marks", "part", "draft");
    assertThat(window.page(base + "/assessment"))
        .contains("What you typed before and did not keep:", "value=\"no marks\"");
  }

  @Test
  void aDraftIsDiscardedOnRequest() throws Exception {
    String base = window.start("K7-right", "right");
    send(base, "assessment", "skin", "no marks", "part", "draft");
    send(base, "assessment", "discard", "yes");
    assertThat(window.page(base + "/assessment")).doesNotContain("no marks");
  }

  @Test
  void theLanguageIsTheReadersAndCanBeChosen() throws Exception {
    assertThat(window.ask(window.own("/").header("Accept-Language", "de-DE,de;q=0.9")).body())
        .contains("<html lang=\"de\">", "Akte anlegen");
    HttpResponse<String> chosen = window.send("/language", "language", "de");
    assertThat(chosen.headers().firstValue("Set-Cookie").orElseThrow()).startsWith("language=de;");
  }

  private HttpResponse<String> send(String base, String step, String... fields) throws Exception {
    String[] all = new String[fields.length + 4];
    System.arraycopy(fields, 0, all, 0, fields.length);
    all[fields.length] = "record-head";
    all[fields.length + 1] = OpenWindow.head(window.page(base + "/" + step));
    all[fields.length + 2] = "by-initials";
    all[fields.length + 3] = "AB";
    return window.send(base + "/" + step, all);
  }

  private static String value(String page, String name) {
    String lead = "name=\"" + name + "\" value=\"";
    int at = page.indexOf(lead) + lead.length();
    return page.substring(at, page.indexOf('"', at));
  }
}
