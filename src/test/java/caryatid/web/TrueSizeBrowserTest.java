package caryatid.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import caryatid.usecase.Records;
import caryatid.usecase.RememberedPlates;
import caryatid.usecase.file.LocalFiles;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;

/** Drawings at true size after a card was held to the screen, in a real browser. */
@Tag("proof")
class TrueSizeBrowserTest {
  /** ISO/IEC 7810:2019, ID-1. */
  private static final double CARD_MM = 85.60;

  private static final double STRIPS_MM = 112;
  private static final double CARD_PX = 404;

  @TempDir Path folder;

  @Test
  void theStripsAreAtTrueSizeAfterACardUntilThePixelsChange() throws Exception {
    knowThePlate();
    try (OpenWindow window = new OpenWindow(folder);
        Chromium browser = new Chromium("en-GB", 1366, 768)) {
      browser.open(window.window());
      String stand = aStand(window);
      browser.driver().get(stand);
      assertThat(shown(browser, ".no-true-size")).isTrue();
      assertThat(shown(browser, ".true-size-only")).isFalse();
      holdACard(browser, window);
      browser.driver().get(stand);
      assertThat(shown(browser, ".no-true-size")).isFalse();
      assertThat(shown(browser, ".true-size-only")).isTrue();
      assertThat(widths(browser))
          .isNotEmpty()
          .allSatisfy(
              width -> assertThat(width).isCloseTo(CARD_PX * STRIPS_MM / CARD_MM, within(0.5)));
      assertThat(browser.barriers()).isEmpty();
      pixels(browser, 1.25);
      browser.driver().get(stand);
      assertThat(shown(browser, ".no-true-size")).isTrue();
      pixels(browser, 1);
      browser.driver().get(stand);
      assertThat(shown(browser, ".no-true-size")).as("forgotten").isTrue();
      assertThat(browser.complaints()).isEmpty();
    }
  }

  /** Landmarks, stands and result side by side, and the next step in sight. */
  @Test
  void thePageOfAStandIsOneScreenHigh() throws Exception {
    knowThePlate();
    try (OpenWindow window = new OpenWindow(folder);
        Chromium browser = new Chromium("en-GB", 1366, 768)) {
      browser.open(window.window());
      String stand = aStand(window);
      for (int[] screen : new int[][] {{1366, 768}, {1280, 800}, {1100, 600}}) {
        screen(browser, screen[0], screen[1], 1);
        browser.driver().get(stand);
        assertThat(browser.heightOfPage()).isEqualTo(screen[1]);
        for (String part : List.of(".sheet h2", ".stands h2", ".result .verdict", "#step button")) {
          Object bottom =
              browser.run(
                  "return document.querySelector(arguments[0]).getBoundingClientRect().bottom;",
                  part);
          assertThat(((Number) bottom).doubleValue()).as(part).isBetween(0.0, 1.0 * screen[1]);
        }
      }
    }
  }

  /** The leg stays above the numbers that are typed, however far the landmarks are scrolled. */
  @Test
  void theLegStaysInSightAboveTheLastLandmark() throws Exception {
    knowThePlate();
    try (OpenWindow window = new OpenWindow(folder);
        Chromium browser = new Chromium("en-GB", 1366, 768)) {
      browser.open(window.window());
      screen(browser, 1280, 800, 1);
      browser.driver().get(aStand(window));
      browser.driver().findElement(By.name("landmark[3].up")).click();
      browser.run("document.activeElement.scrollIntoView({block: 'start'})");
      Object between =
          browser.run(
              "const leg = document.querySelector('#leg svg').getBoundingClientRect();"
                  + "const sheet = document.querySelector('.sheet').getBoundingClientRect();"
                  + "const field = document.activeElement.getBoundingClientRect();"
                  + "return leg.top >= sheet.top - 4 && leg.bottom <= field.top;");
      assertThat(between).isEqualTo(true);
    }
  }

  private void knowThePlate() throws Exception {
    LocalFiles files = new LocalFiles();
    Path k7 = Path.of("sample-recordings/k7");
    RememberedPlates.remember(
        Records.in(folder.resolve("records"), Clock.system(ZoneId.systemDefault())),
        files.read(k7.resolve("barefoot-1.csv")),
        files.read(k7.resolve("plate.yaml")),
        false);
  }

  private static String aStand(OpenWindow window) throws Exception {
    String base = window.start("K7-right", "right");
    TypedStand stand = new TypedStand(window, base);
    stand.typeAs(Map.of(), "part", "live");
    stand.drop("barefoot-1.csv");
    stand.typeAs(Map.of(), "action", "count-1");
    return window.origin() + base + TypedStand.STEP;
  }

  private static void holdACard(Chromium browser, OpenWindow window) throws Exception {
    browser.driver().get(window.origin() + "/card");
    assertThat(browser.barriers()).isEmpty();
    browser
        .driver()
        .executeScript(
            "const w = document.getElementById('card-width'); w.value = arguments[0];"
                + " w.dispatchEvent(new Event('input'));",
            CARD_PX);
    assertThat(browser.driver().findElement(By.id("card-shape")).getSize().getWidth())
        .isEqualTo((int) CARD_PX);
    browser.driver().findElement(By.cssSelector("#card button")).click();
  }

  private static boolean shown(Chromium browser, String what) {
    return browser.driver().findElement(By.cssSelector(what)).isDisplayed();
  }

  @SuppressWarnings("unchecked")
  private static List<Double> widths(Chromium browser) {
    return ((List<Number>)
            browser
                .driver()
                .executeScript(
                    "return [...document.querySelectorAll('.strips svg')].map(e =>"
                        + " e.getBoundingClientRect().width);"))
        .stream().map(Number::doubleValue).toList();
  }

  private static void pixels(Chromium browser, double ratio) {
    screen(browser, 1366, 768, ratio);
  }

  private static void screen(Chromium browser, int width, int height, double ratio) {
    browser
        .driver()
        .executeCdpCommand(
            "Emulation.setDeviceMetricsOverride",
            Map.of("width", width, "height", height, "deviceScaleFactor", ratio, "mobile", false));
  }
}
