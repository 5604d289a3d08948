package caryatid.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import caryatid.demo.Demo;
import caryatid.demo.Worst;
import caryatid.geometry.Side;
import caryatid.wording.Wording;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import java.util.logging.Level;
import java.util.stream.Collectors;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.interactions.Actions;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;
import org.openqa.selenium.print.PageMargin;
import org.openqa.selenium.print.PageSize;
import org.openqa.selenium.print.PrintOptions;

/** Holds the HTML report as a person's browser shows it. */
@Tag("proof")
class BrowserTest {
  private static final Path BROWSER = Path.of("/usr/bin/chromium");
  private static final Path DRIVER = Path.of("/usr/bin/chromedriver");

  @TempDir static Path folder;
  private static ChromeDriver browser;
  private static String usual;
  private static String fullest;

  @BeforeAll
  static void open() throws IOException {
    assumeTrue(
        Files.isExecutable(BROWSER) && Files.isExecutable(DRIVER),
        "skipped: no Chromium with its driver in /usr/bin (Debian's chromium and chromium-driver)");
    usual = page("report.html", Demo.transfemoral(Side.LEFT).notes(), Locale.ENGLISH);
    fullest = page("fullest.html", Worst.stand(), Locale.GERMAN);
    LoggingPreferences logging = new LoggingPreferences();
    logging.enable(LogType.BROWSER, Level.ALL);
    ChromeOptions options = new ChromeOptions();
    options.setBinary(BROWSER.toFile());
    options.addArguments("--headless=new", "--no-sandbox", "--disable-gpu");
    options.setCapability("goog:loggingPrefs", logging);
    ChromeDriverService service =
        new ChromeDriverService.Builder().usingDriverExecutable(DRIVER.toFile()).build();
    browser = new ChromeDriver(service, options);
    browser.manage().timeouts().scriptTimeout(Duration.ofSeconds(60));
  }

  private static String page(String name, Demo demo, Locale language) throws IOException {
    byte[] page = Report.html(demo.result(), List.of(demo.recording()), Wording.in(language));
    return Files.write(folder.resolve(name), page).toUri().toString();
  }

  @BeforeEach
  void show() {
    browser.get(usual);
  }

  @AfterAll
  static void close() {
    if (browser != null) {
      browser.quit();
    }
  }

  @Test
  void theConsoleStaysSilentAndNothingIsAskedOfAnyOtherPlace() {
    assertThat(browser.manage().logs().get(LogType.BROWSER).getAll()).isEmpty();
    Object asked = browser.executeScript("return performance.getEntriesByType('resource').length");
    assertThat(asked).isEqualTo(0L);
  }

  @Test
  void theKeyboardReachesEveryValueAndShowsWhatItSays() {
    List<WebElement> values = browser.findElements(By.cssSelector("svg .value"));
    assertThat(values).hasSizeGreaterThan(8);
    for (WebElement value : values) {
      new Actions(browser).sendKeys(Keys.TAB).perform();
      WebElement focused = browser.switchTo().activeElement();
      assertThat(focused.getAttribute("aria-label")).isEqualTo(value.getAttribute("aria-label"));
      Object shown =
          browser.executeScript(
              "return [...document.querySelectorAll('.tip')]"
                  + ".filter(t => getComputedStyle(t).visibility == 'visible').length");
      assertThat(shown).as(value.getAttribute("aria-label")).isEqualTo(1L);
    }
  }

  /** The page asks for Liberation Sans or Arial; in wider letters it takes more pages. */
  @Test
  void printsToTwoPages() throws IOException {
    Object lettersAreThere =
        browser.executeScript(
            "const width = font => { const c = document.createElement('canvas').getContext('2d');"
                + " c.font = '40px ' + font; return c.measureText('Caryatid iiii').width; };"
                + " return ['\"Liberation Sans\"', 'Arial']"
                + ".some(f => width(f + ', monospace') != width('monospace'));");
    assumeTrue(
        Boolean.TRUE.equals(lettersAreThere),
        "skipped: neither Liberation Sans nor Arial (Debian's fonts-liberation)");
    assertTwoPages();
    browser.get(fullest);
    assertTwoPages();
  }

  private static void assertTwoPages() throws IOException {
    PrintOptions a4 = new PrintOptions();
    a4.setPageSize(new PageSize(29.7, 21.0));
    a4.setPageMargin(new PageMargin(1.0, 1.0, 1.2, 1.2));
    byte[] pdf = Base64.getDecoder().decode(browser.print(a4).getContent());
    try (PDDocument document = Loader.loadPDF(pdf)) {
      assertThat(document.getNumberOfPages()).isEqualTo(2);
    }
  }

  /** Validation by an independent program: axe-core, against WCAG 2.1 and its own good practice. */
  @Test
  void theCheckForAccessFindsNothing() throws IOException {
    browser.executeScript(axe());
    @SuppressWarnings("unchecked")
    List<String> violations =
        (List<String>)
            browser.executeAsyncScript(
                "const done = arguments[0]; axe.run().then(r => done(r.violations.map("
                    + "v => v.id + ': ' + v.help + ' ' + v.nodes.map(n => n.target).join('; '))))");
    assertThat(violations.stream().collect(Collectors.joining("\n"))).isEmpty();
  }

  private static String axe() throws IOException {
    try (InputStream script = BrowserTest.class.getResourceAsStream("/axe.min.js")) {
      return new String(script.readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
