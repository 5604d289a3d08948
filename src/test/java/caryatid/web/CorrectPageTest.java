package caryatid.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import org.junit.jupiter.api.Test;

/** Entries that are corrected from the page. */
class CorrectPageTest extends FittingWindow {
  @Test
  void theFormHoldsWhatTheEntrySays() throws Exception {
    send("/assessment", "sock-ply", "2", "skin", "no marks", "minutes-since-donning", "12.5");
    String page = window.page(base + "/correct/2");
    assertThat(page)
        .contains("name=\"sock-ply\"", "value=\"2\"", "value=\"no marks\"", "value=\"12.5\"");
    assertThat(window.page(base + "/record")).contains("href=\"" + base + "/correct/2\"");
    assertThat(window.page(base + "/assessment")).contains("href=\"" + base + "/correct/2\"");
  }

  @Test
  void aCorrectionShowsWhatChangedAndTakesTheEntrysPlace() throws Exception {
    send("/assessment", "sock-ply", "2", "skin", "no marks");
    String kept =
        send("/correct/2", "correct-why", "miscounted", "sock-ply", "3", "skin", "no marks").body();
    assertThat(kept)
        .contains(
            "Entry 2 is corrected by entry 3.", "<li>sock ply: 2</li>", "<li>sock ply: 3</li>")
        .doesNotContain("<li>skin: no marks</li>");
    assertThat(window.page(base + "/record"))
        .contains("corrected by entry 3", "corrects entry 2: miscounted");
    assertThat(window.ask(window.own(base + "/correct/2")).statusCode()).isEqualTo(404);
    assertThat(window.page(base + "/correct/3")).contains("value=\"3\"");
  }

  @Test
  void rowsAndTermsComeBackAsTheyWere() throws Exception {
    send(
        "/bench-alignment",
        "items[1].item",
        "socket flexion",
        "items[1].unit",
        "deg",
        "items[1].recommended",
        "5",
        "items[1].set",
        "7",
        "items[1].why",
        "contracture");
    assertThat(window.page(base + "/correct/2"))
        .contains("value=\"socket flexion\"", "value=\"7\"", "value=\"contracture\"");
    String kept =
        send(
                "/correct/2",
                "correct-why",
                "typing slip",
                "items[1].item",
                "socket flexion",
                "items[1].unit",
                "deg",
                "items[1].recommended",
                "5",
                "items[1].set",
                "6",
                "items[1].why",
                "contracture")
            .body();
    assertThat(kept).contains("Entry 2 is corrected by entry 3.", "set 7 deg", "set 6 deg");
  }

  @Test
  void theReasonIsAskedAndFaultsStandAtTheirFields() throws Exception {
    send("/assessment", "sock-ply", "2");
    HttpResponse<String> none = send("/correct/2", "sock-ply", "3");
    assertThat(none.statusCode()).isEqualTo(422);
    assertThat(none.body()).contains("Say what was wrong with it.", "value=\"3\"");
    HttpResponse<String> bad = send("/correct/2", "sock-ply", "many", "correct-why", "slip");
    assertThat(bad.body()).contains("id=\"sock-ply-fault\"", "value=\"slip\"");
    assertThat(window.page(base + "/record")).contains("kept up to entry 2");
  }

  @Test
  void whatWasTypedIsADraftOfThatEntryAlone() throws Exception {
    send("/assessment", "sock-ply", "2");
    send("/correct/2", "sock-ply", "5", "part", "draft");
    assertThat(window.page(base + "/correct/2")).contains("value=\"5\"");
    assertThat(window.page(base + "/assessment")).doesNotContain("value=\"5\"");
    send("/correct/2", "discard", "yes");
    assertThat(window.page(base + "/correct/2")).doesNotContain("value=\"5\"");
  }

  @Test
  void theOpeningCanBeCorrectedAndWhatIsNotThereCannot() throws Exception {
    assertThat(window.page(base + "/correct/1")).contains("value=\"K7-right\"");
    for (String number : new String[] {"9", "x", ""}) {
      assertThat(window.ask(window.own(base + "/correct/" + number)).statusCode()).isEqualTo(404);
    }
  }
}
