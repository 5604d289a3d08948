package caryatid.web;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.usecase.RememberedPlates;
import caryatid.usecase.file.LocalFiles;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
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

  /** In full, longer than the clock counts and than a request may take to arrive; more than 3 s. */
  private static final long ASLEEP_MS = 1000L * Integer.getInteger("asleep.s", 22);

  private static final String CLOCK = "[data-clock]";

  @TempDir static Path folder;
  private static Path exports;
  private static WindowProgram window;
  private static Chromium browser;

  /** One program and one browser for all, each test with a wearer of its own. */
  @BeforeAll
  static void aPlateIsKnown() throws Exception {
    LocalFiles files = new LocalFiles();
    RememberedPlates.remember(
        OpenWindow.setting(folder).records(),
        files.read(K7.resolve("barefoot-1.csv")),
        files.read(K7.resolve("plate.yaml")),
        false);
    exports = Files.createDirectories(folder.resolve("exports"));
    browser = new Chromium("en-GB", 1366, 768);
    window = new WindowProgram(folder);
    browser.open(window.startFile());
  }

  @AfterAll
  static void end() {
    browser.close();
    window.close();
  }

  /** A stand whose marks are typed and whose folder is watched. */
  private static Hand watching(String code) throws Exception {
    String page = window.start(code) + TypedStand.STEP;
    Map<String, String> fields = new TreeMap<>(TypedStand.sheet());
    fields.putAll(Map.of("watched-folder", exports.toString(), "action", "watch"));
    assertThat(window.send(page, fields).statusCode()).isEqualTo(303);
    browser.driver().get(window.origin() + page);
    browser.run("document.querySelectorAll('details').forEach(d => d.open = true)");
    return new Keyboard(browser);
  }

  @Test
  void afterASleepNothingIsLostAndTheClockSaysThatItWasInterrupted() throws Exception {
    Hand hand = watching("K7-right");
    browser.run("document.querySelector('.clock button').click()");
    hand.await(CLOCK);
    hand.type("comfort", "good");
    assertThat(browsers()).hasSizeGreaterThan(2);
    List<ProcessHandle> asleep = Stream.concat(browsers(), Stream.of(window.process())).toList();
    signal("-STOP", asleep);
    try {
      Files.copy(K7.resolve("barefoot-1.csv"), exports.resolve("stand.csv"));
      Hand.pause(ASLEEP_MS);
    } finally {
      signal("-CONT", asleep);
    }
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

  /** The window alone does not answer, as on a machine that is busy with something else. */
  @Test
  void whatIsTypedWhileTheWindowIsStoppedIsSavedLater() throws Exception {
    Hand hand = watching("K8-right");
    signal("-STOP", List.of(window.process()));
    try {
      // The first is on its way when the second is typed.
      hand.type("comfort", "better ").await("#working:not([hidden])");
      hand.type("comfort", "than before");
      Hand.pause(ASLEEP_MS);
    } finally {
      signal("-CONT", List.of(window.process()));
    }
    hand.await("#working[hidden]").await("#kept[data-draft]").await("#live:not([aria-busy])");
    Hand.pause(1000);
    browser.driver().navigate().refresh();
    assertThat(hand.attribute(Hand.named("comfort"), "value")).isEqualTo("better than before");
  }

  /** A clock that is set while it counts proves no 20 s, forward or back. */
  @Test
  void aClockThatIsSetMeanwhileReachesNothing() throws Exception {
    Hand hand = watching("K9-right");
    for (int hours : new int[] {9, -9}) {
      browser.run("document.querySelector('.clock button').click()");
      Hand.pause(1500);
      assertThat(hand.words(".clock output")).isIn("0:01", "0:02");
      browser.run("const now = Date.now; Date.now = () => now() + " + hours + " * 3600000;");
      Hand.pause(500);
      assertThat(hand.words(".clock output")).isEqualTo("interrupted; start again");
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
