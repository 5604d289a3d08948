package caryatid.web;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.usecase.RememberedPlates;
import caryatid.usecase.file.LocalFiles;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The machine sleeps while a stand is typed, a folder watched and the clock of 20 s counts: the
 * window's program and the browser are stopped, and go on later.
 */
@Tag("proof")
class SleepProofTest {
  private static final Path K7 = Path.of("sample-recordings/k7");

  /** Longer than the clock counts, and than a request may take to arrive. */
  private static final long ASLEEP_MS = 22_000;

  private static final String CLOCK = "[data-clock]";

  @TempDir Path folder;
  private Path exports;

  @BeforeEach
  void aPlateIsKnown() throws Exception {
    LocalFiles files = new LocalFiles();
    RememberedPlates.remember(
        OpenWindow.setting(folder).records(),
        files.read(K7.resolve("barefoot-1.csv")),
        files.read(K7.resolve("plate.yaml")),
        false);
    exports = Files.createDirectories(folder.resolve("exports"));
  }

  private Hand watching(WindowProgram window, Chromium browser) throws Exception {
    browser.open(window.startFile());
    browser.driver().get(window.origin() + window.start("K7-right") + "/static-alignment");
    Hand hand = new Keyboard(browser);
    hand.type("last-change", "none").press("details.fold:has([value=watch]) summary");
    hand.type("watched-folder", exports.toString()).follow("button[value=watch]");
    hand.type("worn", "barefoot").type("heel", "0");
    hand.numbers("landmark[1].forward", "231", "20", "82", "268", "23", "492");
    hand.numbers("landmark[3].rightward", "69", "498");
    return hand;
  }

  @Test
  void afterASleepNothingIsLostAndTheClockSaysThatItWasInterrupted() throws Exception {
    try (WindowProgram window = new WindowProgram(folder);
        Chromium browser = new Chromium("en-GB", 1366, 768)) {
      Hand hand = watching(window, browser);
      browser.run("document.querySelector('.clock button').click()");
      hand.await(CLOCK);
      hand.type("comfort", "good");
      assertThat(browsers()).hasSizeGreaterThan(2);
      List<ProcessHandle> asleep = Stream.concat(browsers(), Stream.of(window.process())).toList();
      signal("-STOP", asleep);
      Files.copy(K7.resolve("barefoot-1.csv"), exports.resolve("stand.csv"));
      Hand.pause(ASLEEP_MS);
      signal("-CONT", asleep);
      hand.await("button[value=count-1]");
      assertThat(hand.words(".clock output")).isEqualTo("interrupted; start again");
      hand.press("button[value=count-1]").await("button[value=uncount-1]");
      assertThat(hand.attribute(Hand.named("comfort"), "value")).isEqualTo("good");
      hand.await("button[value=keep], .result .open");
      assertThat(hand.words(".result")).doesNotContain("No result yet");
      browser.driver().navigate().refresh();
      assertThat(hand.attribute(Hand.named("comfort"), "value")).isEqualTo("good");
      assertThat(hand.attribute(Hand.named("landmark[3].up"), "value")).isEqualTo("498");
      hand.follow("button[value=keep]").await(".kept-now");
      assertThat(browser.complaints()).isEmpty();
    }
  }

  /** The window alone does not answer, as on a machine that is busy with something else. */
  @Test
  void whatIsTypedWhileTheWindowIsStoppedIsSavedLater() throws Exception {
    try (WindowProgram window = new WindowProgram(folder);
        Chromium browser = new Chromium("en-GB", 1366, 768)) {
      Hand hand = watching(window, browser);
      signal("-STOP", List.of(window.process()));
      hand.type("comfort", "better than before");
      hand.await("#working:not([hidden])");
      Hand.pause(ASLEEP_MS);
      signal("-CONT", List.of(window.process()));
      hand.await("#working[hidden]").await("#kept[data-draft]");
      // What could not be sent is sent again after 3 s.
      Hand.pause(6000);
      browser.driver().navigate().refresh();
      assertThat(hand.attribute(Hand.named("comfort"), "value")).isEqualTo("better than before");
    }
  }

  /** A clock that is set while it counts proves no 20 s, forward or back. */
  @Test
  void aClockThatIsSetMeanwhileReachesNothing() throws Exception {
    try (WindowProgram window = new WindowProgram(folder);
        Chromium browser = new Chromium("de-DE", 1366, 768)) {
      Hand hand = watching(window, browser);
      for (int hours : new int[] {9, -9}) {
        browser.run("document.querySelector('.clock button').click()");
        Hand.pause(2500);
        assertThat(hand.words(".clock output")).isIn("0:01", "0:02", "0:03");
        browser.run("const now = Date.now; Date.now = () => now() + " + hours + " * 3600000;");
        Hand.pause(500);
        assertThat(hand.words(".clock output")).isEqualTo("unterbrochen; neu beginnen");
      }
    }
  }

  /** Those that this program's drivers started, without the drivers. */
  private static Stream<ProcessHandle> browsers() {
    return ProcessHandle.current()
        .descendants()
        .filter(one -> one.info().command().orElse("").endsWith("/chromium"));
  }

  private static void signal(String which, List<ProcessHandle> processes) throws Exception {
    String ids =
        processes.stream().map(p -> Long.toString(p.pid())).reduce("", (a, b) -> a + " " + b);
    assertThat(new ProcessBuilder(("kill " + which + ids).split(" ")).start().waitFor()).isZero();
  }
}
