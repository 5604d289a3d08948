package caryatid.web;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.usecase.RememberedPlates;
import caryatid.usecase.file.LocalFiles;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.chrome.ChromeDriver;

/**
 * Pictures of every page of the window, for looking at: {@code mvn -Dfast test -Dtests.run=pictures
 * -Dtests.leave=none -Dtest=WindowPicturesTest} writes them to {@code target/pictures/window}, a
 * folder for each screen; {@code -Dpictures.of=laptop,paper-a4} for some only. With {@code
 * -Dpictures.write} the README's picture is drawn too.
 */
@Tag("pictures")
class WindowPicturesTest {
  private static final Path OUT = Path.of("target/pictures/window");
  private static final Path README = Path.of("docs/pictures/window.png");
  private static final Path K7 = Path.of("sample-recordings/k7");
  private static final List<String> STEPS =
      List.of(
          "arriving",
          "parts",
          "assessment",
          "bench-alignment",
          "length-and-pelvis",
          "ready-to-stand",
          "static-alignment",
          "dynamic-alignment",
          "footwear",
          "closing",
          "record",
          "compare",
          "change",
          "bundle",
          "verify",
          "erase");

  /**
   * A screen.
   *
   * @param width in px
   * @param scale device pixels a px; a zoom of 200 % is half the width at a scale of 2
   * @param mobile whether it is a telephone's
   * @param features of the media query, name and value in turn
   */
  private record Screen(
      String name,
      String language,
      int width,
      double scale,
      boolean mobile,
      List<String> features) {
    private int height() {
      return width > 1280 ? 2160 : 800;
    }
  }

  private static final List<Screen> SCREENS =
      List.of(
          new Screen("laptop", "en-GB", 1280, 1, false, List.of()),
          new Screen("dark", "en-GB", 1280, 1, false, List.of("prefers-color-scheme", "dark")),
          new Screen("forced", "en-GB", 1280, 1, false, List.of("forced-colors", "active")),
          new Screen("zoom-200", "en-GB", 640, 2, false, List.of()),
          new Screen("telephone", "en-GB", 390, 2, true, List.of()),
          new Screen("narrow", "de-DE", 320, 2, true, List.of()),
          new Screen("large", "en-GB", 3840, 1, false, List.of()),
          new Screen("german", "de-DE", 1280, 1, false, List.of()),
          new Screen("french", "fr-FR", 1280, 1, false, List.of()),
          new Screen("spanish", "es-ES", 1280, 1, false, List.of()));

  /** Sheets of paper by name: width and height, in inches. */
  private static final Map<String, List<Double>> PAPERS =
      Map.of("paper-a4", List.of(8.27, 11.69), "paper-letter", List.of(8.5, 11.0));

  /** What sticks out of a page that is wider than its screen. */
  private static final String WIDEST =
      """
      const room = document.documentElement.clientWidth;
      return [...document.querySelectorAll('body *')]
        .filter(e => e.getBoundingClientRect().right > room + 0.5 && e.getClientRects().length
          && !e.closest('nav, .figure, .code'))
        .map(e => e.tagName + '#' + e.id + '.' + e.className + ' in ' + e.parentElement.textContent.slice(0, 60)
          + ' ' + e.getBoundingClientRect().right).join(', ');
      """;

  @TempDir Path folder;

  @Test
  void everyPageIsDrawnAndNoneIsWiderThanItsScreen() throws Exception {
    List<String> wanted = List.of(System.getProperty("pictures.of", "").split(","));
    Map<String, String> pages;
    try (OpenWindow window = new OpenWindow(folder)) {
      knowThePlate();
      pages = pages(window);
      List<String> wide = new ArrayList<>();
      for (Screen screen : SCREENS) {
        if (wanted.contains("") || wanted.contains(screen.name())) {
          draw(window, screen, pages, wide);
        }
      }
      for (String paper : PAPERS.keySet()) {
        if (wanted.contains("") || wanted.contains(paper)) {
          print(window, paper, pages);
        }
      }
      assertThat(wide).isEmpty();
      if (Boolean.getBoolean("pictures.write")) {
        forReadme(window, pages.get("static-alignment-counted"));
      }
    }
  }

  private void knowThePlate() throws Exception {
    LocalFiles files = new LocalFiles();
    RememberedPlates.remember(
        OpenWindow.setting(folder).records(),
        files.read(K7.resolve("barefoot-1.csv")),
        files.read(K7.resolve("plate.yaml")),
        false);
  }

  /** Addresses by the picture's name: of a record with nothing, with a state, with a draft. */
  private static Map<String, String> pages(OpenWindow window) throws Exception {
    Map<String, String> pages = new LinkedHashMap<>();
    String empty = window.start("K8-left", "left");
    pages.put("empty-record", empty + "/record");
    pages.put("empty-static-alignment", empty + TypedStand.STEP);
    String drafted = window.start("K9-right", "right");
    TypedStand draft = new TypedStand(window, drafted);
    draft.typeAs(Map.of(), "part", "live");
    draft.drop("barefoot-1.csv");
    draft.drop("barefoot-2.csv");
    pages.put("static-alignment-met", drafted + TypedStand.STEP);
    String counted = window.start("K6-right", "right");
    count(window, counted);
    pages.put("static-alignment-counted", counted + TypedStand.STEP);
    String base = window.start("K7-right", "right");
    TypedStand kept = count(window, base);
    String head = OpenWindow.head(window.page(base + TypedStand.STEP));
    kept.typeAs(Map.of(), "action", "keep", "record-head", head);
    STEPS.forEach(step -> pages.put(step, base + "/" + step));
    for (String page : List.of("new", "plates", "plates/hand", "plates/turn", "verify", "end")) {
      pages.put(page.replace('/', '-'), "/" + page);
    }
    pages.put("records", "/");
    pages.put("plates-prove", "/plates/prove/0");
    return pages;
  }

  private static TypedStand count(OpenWindow window, String base) throws Exception {
    TypedStand stand = new TypedStand(window, base);
    stand.typeAs(Map.of(), "part", "live");
    for (int i = 1; i <= 3; i++) {
      stand.drop("barefoot-" + i + ".csv");
      stand.typeAs(Map.of(), "action", "count-" + i);
    }
    return stand;
  }

  private static void draw(
      OpenWindow window, Screen screen, Map<String, String> pages, List<String> wide)
      throws Exception {
    Path to = Files.createDirectories(OUT.resolve(screen.name()));
    try (Chromium browser = new Chromium(screen.language(), 1366, 900)) {
      browser.open(window.window());
      ChromeDriver driver = browser.driver();
      show(driver, screen);
      for (Map.Entry<String, String> page : pages.entrySet()) {
        driver.get(window.origin() + page.getValue());
        String widest = (String) driver.executeScript(WIDEST);
        if (!widest.isEmpty()) {
          wide.add(screen.name() + " " + page.getKey() + ": " + widest);
        }
        Files.write(to.resolve(page.getKey() + ".png"), picture(driver));
        long whole = (Long) driver.executeScript("return document.body.scrollHeight;");
        if (whole > screen.height() && !page.getKey().startsWith("static")) {
          size(driver, screen, whole);
          Files.write(to.resolve(page.getKey() + "-whole.png"), picture(driver));
          size(driver, screen, screen.height());
        }
      }
    }
  }

  private static void show(ChromeDriver driver, Screen screen) {
    size(driver, screen, screen.height());
    driver.executeCdpCommand("Emulation.setScrollbarsHidden", Map.of("hidden", true));
    if (!screen.features().isEmpty()) {
      Map<String, String> feature =
          Map.of("name", screen.features().get(0), "value", screen.features().get(1));
      driver.executeCdpCommand("Emulation.setEmulatedMedia", Map.of("features", List.of(feature)));
    }
  }

  private static void size(ChromeDriver driver, Screen screen, long height) {
    driver.executeCdpCommand(
        "Emulation.setDeviceMetricsOverride",
        Map.of(
            "width",
            screen.width(),
            "height",
            height,
            "deviceScaleFactor",
            screen.scale(),
            "mobile",
            screen.mobile()));
  }

  private static byte[] picture(ChromeDriver driver) {
    Map<String, Object> picture =
        driver.executeCdpCommand("Page.captureScreenshot", Map.of("format", "png"));
    return Base64.getDecoder().decode((String) picture.get("data"));
  }

  private static void print(OpenWindow window, String paper, Map<String, String> pages)
      throws Exception {
    Path to = Files.createDirectories(OUT.resolve(paper));
    List<Double> size = PAPERS.get(paper);
    try (Chromium browser = new Chromium("en-GB", 1366, 900)) {
      browser.open(window.window());
      for (Map.Entry<String, String> page : pages.entrySet()) {
        browser.driver().get(window.origin() + page.getValue());
        Map<String, Object> printed =
            browser
                .driver()
                .executeCdpCommand(
                    "Page.printToPDF",
                    Map.of("paperWidth", size.get(0), "paperHeight", size.get(1)));
        Files.write(
            to.resolve(page.getKey() + ".pdf"),
            Base64.getDecoder().decode((String) printed.get("data")));
      }
    }
  }

  private static void forReadme(OpenWindow window, String page) throws Exception {
    try (Chromium browser = new Chromium("en-GB", 1366, 900)) {
      browser.open(window.window());
      show(browser.driver(), new Screen("readme", "en-GB", 1280, 1, false, List.of()));
      browser.driver().get(window.origin() + page);
      Files.write(README, picture(browser.driver()));
    }
  }
}
