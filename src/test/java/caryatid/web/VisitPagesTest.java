package caryatid.web;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.demo.DemoPhotograph;
import java.net.http.HttpRequest.BodyPublishers;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** How a visit begins and ends in the window, and its answers to what is unsafe. */
class VisitPagesTest extends FittingWindow {
  private static final String EARLIER = "2026-03-04T10:15+01:00";
  private static final Pattern ID = Pattern.compile(" id=\"([^\"]+)\"");

  @Test
  void noIdStandsTwiceOnAPage() throws Exception {
    send("/footwear", "shoes[1].shoe", "walking shoe", "shoes[1].heel-height-mm", "15");
    for (String step :
        List.of("arriving", "parts", "assessment", "bench-alignment", "footwear", "closing")) {
      Matcher ids = ID.matcher(window.page(base + "/" + step));
      assertThat(ids.results().map(found -> found.group(1))).as(step).doesNotHaveDuplicates();
    }
    assertThat(send("/closing", "entry-kind", "accepted", "what", "a").body())
        .contains("id=\"accepted-why-fault\"", "for=\"accepted-what\"");
  }

  @Test
  void theLastVisitIsToldInAFewLinesWithItsPhotographs() throws Exception {
    window.ask(
        window
            .own(base + "/dynamic-alignment/photograph?name=foot.jpg")
            .header("Origin", window.origin())
            .header("Content-Type", "application/octet-stream")
            .POST(
                BodyPublishers.ofByteArray(
                    DemoPhotograph.turned(DemoPhotograph.corners(20, 12), 1))));
    String torque = "items[1].";
    send("/dynamic-alignment", "entry-at", EARLIER, "comfort", "8", "skin", "red at the brim");
    send(
        "/bench-alignment",
        "entry-at",
        EARLIER,
        torque + "item",
        "socket flexion",
        torque + "unit",
        "deg",
        torque + "set",
        "5");
    String page = window.page(base + "/arriving");
    assertThat(page)
        .contains(
            "<h2>Last visit, 2026-03-04</h2>",
            "<li>comfort: 8</li>",
            "<li>skin: red at the brim</li>",
            "<li>set: socket flexion 5 deg</li>",
            "alt=\"Photograph photograph-foot.jpg\"",
            "<h2>What has changed since then?</h2>");
    String picture = base + "/picture/2?name=photograph-foot.jpg";
    assertThat(page).contains("src=\"" + picture + "\"");
    assertThat(window.ask(window.own(picture)).headers().firstValue("Content-Type"))
        .contains("image/jpeg");
    for (String other : List.of("/picture/1?name=a", "/picture/x?name=a", "/picture/2?name=b")) {
      assertThat(window.ask(window.own(base + other)).statusCode()).isEqualTo(404);
    }
  }

  @Test
  void onAFirstDayThereIsNoLastVisit() throws Exception {
    send("/assessment", "skin", "no marks");
    assertThat(window.page(base + "/arriving")).doesNotContain("Last visit,");
  }

  @Test
  void reportAndPackedRecordAreAtHandOnLeaving() throws Exception {
    assertThat(window.page(base + "/closing"))
        .contains(base + "/pdf?paper=a4", base + "/pdf?paper=letter", base + "/pack");
    assertThat(window.page(base + "/record")).contains("New since the previous visit");
  }

  @Test
  void anAnswersDraftIsItsOwn() throws Exception {
    String torque = "items[1].";
    send(
        "/bench-alignment",
        torque + "item",
        "fasteners secured to torque",
        torque + "fastener",
        "tube clamp",
        torque + "unit",
        "N m",
        torque + "recommended",
        "10",
        torque + "set",
        "5");
    String answer = window.page(base + "/answer?line=1");
    Matcher name = Pattern.compile("name=\"draft-name\" value=\"([^\"]+)\"").matcher(answer);
    assertThat(name.find()).isTrue();
    String[] typed = {"entry-kind", "accepted", "draft-name", name.group(1), "why", "tested so"};
    send(
        "/closing",
        Stream.concat(Stream.of(typed), Stream.of("part", "draft")).toArray(String[]::new));
    assertThat(window.page(base + "/answer?line=1")).contains("value=\"tested so\"");
    assertThat(window.page(base + "/closing")).doesNotContain("tested so");
    String[] what = {"what", "tube clamp"};
    assertThat(
            send(
                    "/closing",
                    Stream.concat(Stream.of(typed), Stream.of(what)).toArray(String[]::new))
                .body())
        .contains("Kept as entry 3");
    assertThat(window.page(base + "/answer?line=1")).doesNotContain("tested so\"");
  }
}
