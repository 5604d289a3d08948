package caryatid.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import caryatid.usecase.RememberedPlates;
import caryatid.usecase.file.LocalFiles;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.interactions.PointerInput;
import org.openqa.selenium.interactions.Sequence;

/** The stretch that is used, moved on the drawing; and a file whose sending is cancelled. */
@Tag("proof")
class StretchBrowserTest {
  private static final Path K7 = Path.of("sample-recordings/k7");

  /** The sample's recording is 17.99 s long. */
  private static final double LONG_S = 17.99;

  @TempDir Path folder;

  @BeforeEach
  void aPlateIsKnown() throws Exception {
    LocalFiles files = new LocalFiles();
    RememberedPlates.remember(
        OpenWindow.setting(folder).records(),
        files.read(K7.resolve("barefoot-1.csv")),
        files.read(K7.resolve("plate.yaml")),
        false);
  }

  private Hand opened(OpenWindow window, Chromium browser) throws Exception {
    browser.open(window.window());
    browser.driver().get(window.origin() + window.start("K7-right", "right") + "/static-alignment");
    return new Keyboard(browser);
  }

  @Test
  void theEdgesFollowThePointerAndTheArrows() throws Exception {
    try (OpenWindow window = new OpenWindow(folder);
        Chromium browser = new Chromium("de-DE", 1366, 768)) {
      Hand hand = opened(window, browser);
      hand.drop("recordings", List.of(K7.resolve("barefoot-1.csv")));
      hand.await(".used:not([hidden]) .edge.to");
      assertThat(at(browser, "to-s[1]")).isCloseTo(LONG_S, within(0.01));
      double toS = drag(browser, "to-s[1]", -60);
      assertThat(typed(browser, "to-s[1]"))
          .isEqualTo("%.1f".formatted(toS).replace('.', ','))
          .matches("1\\d,\\d");
      assertThat(typed(browser, "from-s[1]")).isEqualTo("0,0");
      awaitAt(browser, "to-s[1]", Double.parseDouble(typed(browser, "to-s[1]").replace(',', '.')));
      new org.openqa.selenium.interactions.Actions(browser.driver())
          .sendKeys(Keys.ARROW_LEFT)
          .perform();
      double less = Double.parseDouble(typed(browser, "to-s[1]").replace(',', '.'));
      assertThat(less).isCloseTo(toS - 0.5, within(0.06));
      awaitAt(browser, "to-s[1]", less);
      assertThat(browser.driver().executeScript("return document.activeElement.dataset.edge"))
          .isEqualTo("1-to-s");
      assertThat(browser.barriers()).isEmpty();
      assertThat(browser.complaints()).isEmpty();
    }
  }

  /** The second stand's times are typed; the first one's drawing and fields stay. */
  @Test
  void aTimeIsTypedAtItsOwnStandAndTheFieldKeepsTheKeyboard() throws Exception {
    try (OpenWindow window = new OpenWindow(folder);
        Chromium browser = new Chromium("en-GB", 1366, 768)) {
      Hand hand = opened(window, browser);
      hand.drop("recordings", List.of(K7.resolve("barefoot-1.csv"), K7.resolve("barefoot-2.csv")));
      hand.await("[name='from-s[2]']");
      browser.driver().findElement(By.name("from-s[2]")).sendKeys("4");
      awaitAt(browser, "from-s[2]", 4);
      assertThat(browser.driver().executeScript("return document.activeElement.name"))
          .isEqualTo("from-s[2]");
      browser.driver().switchTo().activeElement().sendKeys(Keys.ARROW_UP);
      assertThat(typed(browser, "from-s[2]")).isEqualTo("4.5");
      awaitAt(browser, "from-s[2]", 4.5);
      assertThat(at(browser, "from-s[1]")).isZero();
      assertThat(typed(browser, "from-s[1]")).isEmpty();
      browser.driver().executeScript("document.querySelector('button[value=count-2]').click()");
      hand.await("details[data-stand='2']");
      browser.driver().executeScript("document.querySelector('details[data-stand]').open = true");
      drag(browser, "to-s[2]", -60);
      awaitAt(browser, "to-s[2]", Double.parseDouble(typed(browser, "to-s[2]")));
      assertThat(browser.driver().findElements(By.cssSelector("details[data-stand='2'][open]")))
          .hasSize(1);
      assertThat(browser.barriers()).isEmpty();
      assertThat(browser.complaints()).isEmpty();
    }
  }

  private static double at(Chromium browser, String field) {
    return Double.parseDouble(
        browser
            .driver()
            .executeScript(
                "return document.querySelector('.edge[data-field=\"' + arguments[0] + '\"]')"
                    + ".getAttribute('aria-valuenow')",
                field)
            .toString());
  }

  private static String typed(Chromium browser, String field) {
    return browser.driver().findElement(By.name(field)).getAttribute("value");
  }

  /** Waits until the server has drawn it again. */
  private static void awaitAt(Chromium browser, String field, double seconds) throws Exception {
    Thread.sleep(700);
    for (int i = 0; i < 500 && busy(browser); i++) {
      Thread.sleep(20);
    }
    assertThat(at(browser, field)).isCloseTo(seconds, within(0.02));
  }

  private static boolean busy(Chromium browser) {
    return !browser.driver().findElements(By.cssSelector("#live[aria-busy]")).isEmpty();
  }

  /** Moves an edge by some pixels, and says where it should be then by the width of the drawing. */
  private static double drag(Chromium browser, String field, int pixels) {
    WebElement edge =
        browser.driver().findElement(By.cssSelector(".edge[data-field='" + field + "']"));
    Object middle =
        browser
            .driver()
            .executeScript(
                "const e = arguments[0]; e.scrollIntoView({block: 'center', behavior: 'instant'});"
                    + "const r = e.getBoundingClientRect();"
                    + "const over = e.closest('.over-time'); return [r.left + r.width / 2,"
                    + " r.top + r.height / 2, over.clientWidth];",
                edge);
    List<?> at = (List<?>) middle;
    int x = ((Number) at.get(0)).intValue();
    int y = ((Number) at.get(1)).intValue();
    PointerInput mouse = new PointerInput(PointerInput.Kind.MOUSE, "mouse");
    Duration soon = Duration.ofMillis(50);
    browser
        .driver()
        .perform(
            List.of(
                new Sequence(mouse, 0)
                    .addAction(move(mouse, Duration.ZERO, x, y))
                    .addAction(mouse.createPointerDown(0))
                    .addAction(move(mouse, soon, x + pixels / 2, y))
                    .addAction(move(mouse, soon, x + pixels, y))
                    .addAction(mouse.createPointerUp(0))));
    // The axis lies 11 mm from the left and 1 mm from the right of 90 mm.
    double axis = ((Number) at.get(2)).doubleValue() * 78 / 90;
    return LONG_S + pixels * LONG_S / axis;
  }

  private static org.openqa.selenium.interactions.Interaction move(
      PointerInput mouse, Duration time, int x, int y) {
    return mouse.createPointerMove(time, PointerInput.Origin.viewport(), x, y);
  }

  @Test
  void aFileWhoseSendingIsCancelledIsNotThere() throws Exception {
    try (OpenWindow window = new OpenWindow(folder);
        Chromium browser = new Chromium("en-GB", 1366, 768)) {
      Hand hand = opened(window, browser);
      browser.sendSlowly(20_000);
      Path large = folder.resolve("large.csv");
      Files.writeString(large, Files.readString(K7.resolve("shoe.csv")).repeat(3));
      hand.drop("recordings", List.of(large)).await("#working:not([hidden])");
      assertThat(hand.words("#working")).contains("Sending large.csv", "Cancel");
      browser.driver().executeScript("document.querySelector('#working button').click()");
      hand.await("#working[hidden]");
      browser.sendSlowly(-1);
      awaitNothing(folder.resolve("records/drafts"));
      browser.driver().navigate().refresh();
      assertThat(hand.words("#live")).contains("or drop them here").doesNotContain("large.csv");
    }
  }

  /** What was sent of it is dropped by the server. */
  private static void awaitNothing(Path drafts) throws IOException, InterruptedException {
    for (int i = 0; i < 500; i++) {
      try (Stream<Path> files = Files.walk(drafts)) {
        if (files.noneMatch(file -> file.getFileName().toString().startsWith("recording-"))) {
          return;
        }
      }
      Thread.sleep(20);
    }
    throw new AssertionError("half a file is left");
  }
}
