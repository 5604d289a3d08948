package caryatid.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import org.junit.jupiter.api.Test;

/** Going back in the browser, or loading a page again, sends no form a second time. */
class DonePagesTest extends FittingWindow {
  private static final String ASSESSMENT = "/assessment";

  private HttpResponse<String> sent(String... fields) throws Exception {
    String head = OpenWindow.head(window.page(base + ASSESSMENT));
    String[] all = new String[fields.length + 4];
    System.arraycopy(fields, 0, all, 0, fields.length);
    System.arraycopy(
        new String[] {"record-head", head, "by-initials", "AB"}, 0, all, fields.length, 4);
    return window.sendOnly(base + ASSESSMENT, all);
  }

  private static String next(HttpResponse<String> sent) {
    assertThat(sent.statusCode()).isEqualTo(303);
    return sent.headers().firstValue("Location").orElseThrow();
  }

  @Test
  void whatWasKeptIsShownAtAnAddressThatCanBeLoadedAgain() throws Exception {
    String done = next(sent("skin", "clear"));
    assertThat(done).matches(base + ASSESSMENT + "\\?done=[0-9a-f]{16}");
    assertThat(window.page(done)).contains("Kept as entry 2", "skin: clear");
    assertThat(window.page(done)).contains("Kept as entry 2", "skin: clear");
    assertThat(window.page(base + "/record")).contains("kept up to entry 2");
  }

  @Test
  void whatWasRefusedIsShownThereToo() throws Exception {
    String done = next(sent("minutes-since-donning", "many"));
    HttpResponse<String> shown = window.ask(window.own(done));
    assertThat(shown.statusCode()).isEqualTo(422);
    assertThat(shown.body()).contains("expected a number, found &quot;many&quot;");
  }

  @Test
  void anAddressThatIsTooOldShowsThePageAsItIsNow() throws Exception {
    String first = next(sent("skin", "clear"));
    for (int i = 0; i < 12; i++) {
      sent("minutes-since-donning", "many");
    }
    assertThat(window.page(first)).doesNotContain("Kept as entry 2").contains("kept up to entry 2");
  }

  @Test
  void nothingOfARecordThatIsErasedStays() throws Exception {
    String done = next(sent("skin", "clear"));
    HttpResponse<String> erased =
        window.send(
            base + "/erase",
            "by-initials",
            "AB",
            "erase-code",
            "K7-right",
            "erase-why",
            "asked for");
    assertThat(erased.statusCode()).isEqualTo(303);
    assertThat(window.page(done)).doesNotContain("skin: clear");
  }

  @Test
  void theScriptsOwnRequestsAreAnsweredAsTheyAre() throws Exception {
    assertThat(sent("part", "live", "skin", "clear").statusCode()).isEqualTo(200);
  }
}
