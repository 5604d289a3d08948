package caryatid.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.openqa.selenium.By;

/** The window in a real browser. */
@Tag("proof")
class WindowBrowserTest {
  private static final List<String> STEPS =
      List.of(
          "arriving",
          "parts",
          "assessment",
          "bench-alignment",
          "length-and-pelvis",
          "static-alignment",
          "dynamic-alignment",
          "footwear",
          "closing",
          "record",
          "answer");

  @TempDir Path folder;

  /** English with points, German with commas. */
  @ParameterizedTest
  @CsvSource({"en-GB, 12.5, K7-right", "de-DE, '12,5', K7-right"})
  void aRecordIsMadeByTheKeyboardAlone(String language, String decimal, String code)
      throws Exception {
    try (OpenWindow window = new OpenWindow(folder);
        Chromium browser = new Chromium(language, 1366, 768)) {
      browser.open(window.window());
      Keyboard keyboard = new Keyboard(browser.driver());
      keyboard.follow("a[href='/new']").type("record-code", code).type("wearer", "K7");
      keyboard.choose("side", "right").choose("level", "transtibial");
      keyboard.type("body-mass-kg", "82").type("mobility-grade", "3").type("by-initials", "AB");
      keyboard.send();
      keyboard.type("components[1].what", "foot").type("components[1].name", "flexible foot");
      keyboard.type("components[1].serial", "F-1024").send();
      assertThat(text(browser)).contains("2");
      keyboard.follow("a.next");
      keyboard.type("sock-ply", "3").type("skin", "no marks");
      keyboard.type("minutes-since-donning", decimal).send();
      keyboard.follow("a.next");
      keyboard.type("items[1].recommended", "5").type("items[1].set", "7").send();
      keyboard.follow("a.next");
      keyboard.type("landmarks[1].landmark", "iliac crest").type("landmarks[1].left-mm", "1012");
      keyboard.type("landmarks[1].right-mm", "1010").tick("pelvis-level").send();
      keyboard.follow("nav a[href$='/dynamic-alignment']");
      keyboard.choose("observations[1].severity", "slight").type("comfort", "8").send();
      keyboard.follow("nav a[href$='/footwear']");
      keyboard.type("shoes[1].shoe", "walking shoe").type("shoes[1].heel-height-mm", decimal);
      keyboard.send();
      keyboard.follow("nav a[href$='/closing']");
      keyboard.type("socket-comfort", "8").type("skin", "no marks").send();
      keyboard.follow("nav a[href$='/record']");
      assertThat(text(browser)).contains("F-1024", decimal).contains("iliac crest", "1010");
      assertThat(browser.complaints()).isEmpty();
      assertThat(browser.asked())
          .isNotEmpty()
          .allMatch(url -> url.startsWith(window.origin()) || url.matches("(file|data|chrome):.*"));
      System.out.println("By the keyboard alone, " + language + ": " + keyboard);
    }
  }

  private static String text(Chromium browser) {
    return browser.driver().findElement(By.id("main")).getText();
  }

  /** An export is chosen, its questions answered, and the plate is known from then on. */
  @Test
  void aPlateIsLearntFromAnExport() throws Exception {
    try (OpenWindow window = new OpenWindow(folder);
        Chromium browser = new Chromium("en-GB", 1366, 768)) {
      browser.open(window.window());
      browser.driver().get(window.origin() + "/plates");
      browser.choose(Path.of("sample-recordings/k7/shoe.csv"));
      assertThat(text(browser)).contains("What was understood", "shoe.csv");
      assertThat(browser.barriers()).isEmpty();
      Keyboard keyboard = new Keyboard(browser.driver());
      keyboard.choose("answer-1", "+x").choose("answer-2", "+y").choose("answer-3", "+z");
      keyboard.follow("main button.strong");
      assertThat(browser.barriers()).isEmpty();
      keyboard.type("plate-name", "Fitting room").send();
      assertThat(text(browser)).contains("Every export with these 4 columns is understood");
      assertThat(browser.complaints()).isEmpty();
      assertThat(browser.asked())
          .isNotEmpty()
          .allMatch(url -> url.startsWith(window.origin()) || url.matches("(file|data|chrome):.*"));
    }
  }

  /** What is no packed record is refused where it was dropped. */
  @Test
  void aRefusalOfAFileStandsWhereItWasChosen() throws Exception {
    try (OpenWindow window = new OpenWindow(folder);
        Chromium browser = new Chromium("en-GB", 1366, 768)) {
      browser.open(window.window());
      new Keyboard(browser.driver()).type("by-initials", "AB");
      browser.choose(Path.of("sample-recordings/k7/shoe.csv"));
      assertThat(browser.driver().findElements(By.cssSelector(".upload .fault"))).hasSize(1);
      assertThat(browser.driver().findElement(By.cssSelector(".busy")).isDisplayed()).isFalse();
    }
  }

  /** Validation by an independent program, axe-core, on each page in both schemes of colours. */
  @Test
  void theCheckForAccessFindsNothingOnAnyPage() throws Exception {
    try (OpenWindow window = new OpenWindow(folder);
        Chromium browser = new Chromium("en-GB", 1366, 768)) {
      browser.open(window.window());
      List<String> pages = pages(window);
      for (String scheme : List.of("light", "dark")) {
        browser.colours(scheme);
        for (String page : pages) {
          browser.driver().get(window.origin() + page);
          assertThat(browser.barriers()).as(page + " " + scheme).isEmpty();
        }
        String faulty =
            window.start(scheme.equals("dark") ? "K8-left" : "K9-left", "left") + "/footwear";
        browser.driver().get(window.origin() + faulty);
        Keyboard keyboard = new Keyboard(browser.driver());
        keyboard.type("shoes[1].heel-height-mm", "many").send();
        assertThat(browser.driver().findElements(By.id("faults"))).hasSize(1);
        assertThat(browser.barriers()).as(scheme + " with a fault").isEmpty();
      }
      assertThat(browser.complaints()).allMatch(said -> said.contains("status of 422"));
    }
  }

  /** A telephone, 390 px wide: all that is touched is large enough, and nothing sticks out. */
  @Test
  void aFingerFindsEverythingOnASmallScreen() throws Exception {
    try (OpenWindow window = new OpenWindow(folder);
        Chromium browser = new Chromium("de-DE", 1366, 768)) {
      browser.open(window.window());
      browser.likeATelephone(390, 844);
      for (String page : pages(window)) {
        browser.driver().get(window.origin() + page);
        assertThat(browser.tooSmall()).as(page).isEmpty();
      }
    }
  }

  private static List<String> pages(OpenWindow window) throws Exception {
    String base = window.start("K7-right", "right");
    List<String> pages =
        new java.util.ArrayList<>(STEPS.stream().map(step -> base + "/" + step).toList());
    pages.addAll(
        List.of(
            "/",
            "/new",
            "/end",
            "/plates",
            "/verify",
            base + "/compare",
            base + "/verify",
            base + "/erase"));
    return pages;
  }
}
