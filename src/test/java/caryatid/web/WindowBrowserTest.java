package caryatid.web;

import static org.assertj.core.api.Assertions.assertThat;

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
import org.openqa.selenium.WebElement;

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

  private static String text(Chromium browser) {
    return new Keyboard(browser).words("#main");
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
      Keyboard keyboard = new Keyboard(browser);
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
      new Keyboard(browser).type("by-initials", "AB");
      browser.choose(Path.of("sample-recordings/k7/shoe.csv"));
      assertThat(browser.driver().findElements(By.cssSelector(".upload .fault"))).hasSize(1);
      assertThat(browser.driver().findElement(By.cssSelector(".busy")).isDisplayed()).isFalse();
    }
  }

  /** The two directions of the chosen item alone, none of them chosen by itself. */
  @Test
  void aChangeShowsItsDirectionsAndWhatItComesTo() throws Exception {
    try (OpenWindow window = new OpenWindow(folder);
        Chromium browser = new Chromium("en-GB", 1366, 768)) {
      String base = window.start("K7-right", "right");
      String[] bench = {
        "record-head", OpenWindow.head(window.page(base + "/bench-alignment")),
        "by-initials", "AB",
        "items[1].item", "socket flexion",
        "items[1].unit", "deg",
        "items[1].set", "5"
      };
      assertThat(window.send(base + "/bench-alignment", bench).body()).contains("Kept as entry 2");
      browser.open(window.window());
      browser.driver().get(window.origin() + base + "/change");
      WebElement way = browser.driver().findElement(By.id("change-way"));
      assertThat(way.getDomProperty("value")).isEmpty();
      Keyboard keyboard = new Keyboard(browser).choose("change-what", "0");
      assertThat(way.getDomProperty("value")).isEmpty();
      assertThat(way.findElements(By.tagName("option")))
          .extracting(WebElement::getText)
          .containsExactly("", "towards flexion", "towards extension");
      keyboard.choose("change-way", "EXTENSION");
      browser.driver().findElement(By.id("change-by")).sendKeys("1.5");
      WebElement said = browser.driver().findElement(By.cssSelector("[data-comes-to]"));
      for (int i = 0; i < 100 && said.getText().isEmpty(); i++) {
        Thread.sleep(50);
      }
      assertThat(said.getText()).isEqualTo("socket flexion: 5 \u2192 3.5 deg");
      keyboard.choose("change-what", "2");
      assertThat(way.getDomProperty("value")).isEmpty();
    }
  }

  /** A telephone, 390 px wide: all that is touched is large enough, and nothing sticks out. */
  @Test
  void aFingerFindsEverythingOnASmallScreen() throws Exception {
    knowThePlate();
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

  /** A field is a line high, and the page of a stand is no scroll. */
  @Test
  void noFieldIsTallerThanAFinger() throws Exception {
    knowThePlate();
    try (OpenWindow window = new OpenWindow(folder);
        Chromium browser = new Chromium("en-GB", 1366, 768)) {
      browser.open(window.window());
      for (String page : pages(window)) {
        browser.driver().get(window.origin() + page);
        if (page.endsWith("static-alignment")) {
          assertThat(browser.driver().findElements(By.cssSelector(".target input.words")))
              .isNotEmpty();
          assertThat(browser.heightOfPage()).isLessThan(1000);
        }
        assertThat(browser.tallFields()).as(page).isEmpty();
      }
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

  private static void keepAState(OpenWindow window, String base) throws Exception {
    TypedStand stand = new TypedStand(window, base);
    stand.typeAs(Map.of(), "part", "live");
    stand.drop("barefoot-1.csv");
    stand.typeAs(Map.of(), "action", "count-1");
    String head = OpenWindow.head(window.page(base + TypedStand.STEP));
    stand.typeAs(Map.of(), "action", "keep", "record-head", head);
  }

  @Test
  void enterGoesOnToTheNextGreyNumberOfALandmark() throws Exception {
    knowThePlate();
    try (OpenWindow window = new OpenWindow(folder);
        Chromium browser = new Chromium("en-GB", 1366, 768)) {
      browser.open(window.window());
      String base = window.start("K7-right", "right");
      keepAState(window, base);
      browser.driver().get(window.origin() + base + TypedStand.STEP);
      Keyboard keyboard = new Keyboard(browser);
      String focused = "return document.activeElement.name || document.activeElement.id;";
      keyboard.to("[name='landmark[3].forward']");
      keyboard.enter();
      assertThat(browser.driver().executeScript(focused)).isEqualTo("landmark[3].rightward");
      keyboard.enter();
      assertThat(browser.driver().executeScript(focused)).isEqualTo("landmark[3].up");
      keyboard.await("#kept[data-draft='draft saved']");
      keyboard.to("[name='landmark[4].forward']");
      keyboard.enter();
      assertThat(browser.driver().executeScript(focused)).isEqualTo("recordings");
      assertThat(browser.complaints()).isEmpty();
    }
  }

  @Test
  void whatIsTickedBeforeAStandIsCountedAtOnce() throws Exception {
    knowThePlate();
    try (OpenWindow window = new OpenWindow(folder);
        Chromium browser = new Chromium("en-GB", 1366, 768)) {
      browser.open(window.window());
      String base = window.start("K7-right", "right");
      browser.driver().get(window.origin() + base + TypedStand.STEP);
      WebElement heading = browser.driver().findElement(By.cssSelector(".ready-to-stand summary"));
      assertThat(heading.getText()).isEqualTo("Ready to stand: 0 of 4");
      heading.click();
      browser.driver().findElement(By.id("ready-rails")).click();
      browser.driver().findElement(By.id("ready-feet")).click();
      assertThat(heading.getText()).isEqualTo("Ready to stand: 2 of 4");
      browser.driver().findElement(By.id("ready-rails")).click();
      assertThat(heading.getText()).isEqualTo("Ready to stand: 1 of 4");
    }
  }

  @Test
  void fieldsThatDoNotApplyAreHidden() throws Exception {
    knowThePlate();
    try (OpenWindow window = new OpenWindow(folder);
        Chromium browser = new Chromium("en-GB", 1366, 768)) {
      browser.open(window.window());
      String base = window.start("K7-right", "right");
      browser.driver().get(window.origin() + base + TypedStand.STEP);
      Keyboard keyboard = new Keyboard(browser);
      By otherFoot = By.id("other-foot");
      assertThat(browser.driver().findElement(otherFoot).isDisplayed()).isTrue();
      keyboard.choose("stance", "one plate per foot");
      assertThat(browser.driver().findElement(otherFoot).isDisplayed()).isFalse();
      browser.driver().get(window.origin() + base + "/bench-alignment");
      assertThat(browser.driver().findElements(By.cssSelector("select[name$='.side']")))
          .isNotEmpty()
          .noneMatch(field -> field.isDisplayed());
      browser.driver().get(window.origin() + "/new");
      By level = By.id("level-left");
      assertThat(browser.driver().findElement(level).isDisplayed()).isFalse();
      keyboard.choose("side", "both");
      assertThat(browser.driver().findElement(level).isDisplayed()).isTrue();
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
            "/plates/prove/0",
            "/plates/hand",
            "/plates/turn",
            "/verify",
            base + "/compare",
            base + "/verify",
            base + "/erase"));
    return pages;
  }
}
