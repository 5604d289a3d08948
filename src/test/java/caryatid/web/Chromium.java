package caryatid.web;

import static java.util.stream.Collectors.joining;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.logging.Level;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.openqa.selenium.By;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.interactions.Actions;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;

/** A real browser, whose requests and complaints are kept. */
final class Chromium implements RealBrowser {
  private static final Path BROWSER = Path.of("/usr/bin/chromium");
  private static final Path DRIVER = Path.of("/usr/bin/chromedriver");
  private static final Pattern ASKED =
      Pattern.compile("\"method\":\"Network\\.requestWillBeSent\".*?\"url\":\"([^\"]+)\"");

  private final ChromeDriver driver;

  /**
   * @param language the one that it asks for, such as {@code de-DE}
   */
  Chromium(String language, int width, int height) {
    assumeTrue(
        Files.isExecutable(BROWSER) && Files.isExecutable(DRIVER),
        "skipped: no Chromium with its driver in /usr/bin (Debian's chromium and chromium-driver)");
    LoggingPreferences logging = new LoggingPreferences();
    logging.enable(LogType.BROWSER, Level.ALL);
    logging.enable(LogType.PERFORMANCE, Level.ALL);
    ChromeOptions options = new ChromeOptions();
    options.setBinary(BROWSER.toFile());
    options.addArguments(
        "--headless=new",
        "--no-sandbox",
        "--disable-gpu",
        "--disable-background-networking",
        "--disable-component-update",
        "--disable-sync",
        "--lang=" + language,
        "--window-size=" + width + "," + height);
    options.setExperimentalOption("prefs", Map.of("intl.accept_languages", language));
    options.setCapability("goog:loggingPrefs", logging);
    driver =
        new ChromeDriver(
            new ChromeDriverService.Builder().usingDriverExecutable(DRIVER.toFile()).build(),
            options);
    driver.manage().timeouts().scriptTimeout(Duration.ofSeconds(60));
  }

  ChromeDriver driver() {
    return driver;
  }

  @Override
  public void open(Window window) {
    open(window.startFile());
  }

  void open(Path startFile) {
    driver.get(startFile.toUri().toString());
    for (int i = 0; i < 100 && driver.findElements(By.id("main")).isEmpty(); i++) {
      sleep();
    }
  }

  /** Chooses a file where the page asks for one, and waits for what becomes of it. */
  void choose(Path file) {
    driver.findElement(By.id("file")).sendKeys(file.toAbsolutePath().toString());
    String seen = "[name^=answer-], .upload .fault";
    for (int i = 0; i < 1500 && driver.findElements(By.cssSelector(seen)).isEmpty(); i++) {
      sleep();
    }
  }

  private static void sleep() {
    try {
      Thread.sleep(20);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  @Override
  public Object run(String script, Object... arguments) {
    return driver.executeScript(script, arguments);
  }

  @Override
  public void write(CharSequence keys) {
    new Actions(driver).sendKeys(keys).perform();
  }

  @Override
  public void give(String id, List<Path> files) {
    String names = files.stream().map(f -> f.toAbsolutePath().toString()).collect(joining("\n"));
    driver.findElement(By.id(id)).sendKeys(names);
  }

  @Override
  public void saveTo(Path folder) {
    driver.executeCdpCommand(
        "Browser.setDownloadBehavior",
        Map.of("behavior", "allow", "downloadPath", folder.toAbsolutePath().toString()));
  }

  /** Sends no faster than so. */
  void sendSlowly(int bytesPerSecond) {
    driver.executeCdpCommand("Network.enable", Map.of());
    driver.executeCdpCommand(
        "Network.emulateNetworkConditions",
        Map.of(
            "offline",
            false,
            "latency",
            0,
            "downloadThroughput",
            -1,
            "uploadThroughput",
            bytesPerSecond));
  }

  /** A screen as a telephone has it. */
  void likeATelephone(int width, int height) {
    driver.executeCdpCommand(
        "Emulation.setDeviceMetricsOverride",
        Map.of("width", width, "height", height, "deviceScaleFactor", 2, "mobile", true));
    driver.executeCdpCommand("Emulation.setTouchEmulationEnabled", Map.of("enabled", true));
  }

  void colours(String scheme) {
    driver.executeCdpCommand(
        "Emulation.setEmulatedMedia",
        Map.of("features", List.of(Map.of("name", "prefers-color-scheme", "value", scheme))));
  }

  @Override
  public List<String> asked() {
    return driver.manage().logs().get(LogType.PERFORMANCE).getAll().stream()
        .map(LogEntry::getMessage)
        .map(ASKED::matcher)
        .filter(Matcher::find)
        .map(found -> found.group(1))
        .toList();
  }

  @Override
  public List<String> complaints() {
    return driver.manage().logs().get(LogType.BROWSER).getAll().stream()
        .map(LogEntry::getMessage)
        .toList();
  }

  /** What an independent check for access finds: axe-core, with its own good practice. */
  @SuppressWarnings("unchecked")
  List<String> barriers() throws IOException {
    if (Boolean.FALSE.equals(driver.executeScript("return !!window.axe;"))) {
      driver.executeScript(axe());
    }
    return (List<String>)
        driver.executeAsyncScript(
            "const done = arguments[0]; axe.run().then(r => done(r.violations.map(v =>"
                + " v.id + ': ' + v.help + ' ' + v.nodes.map(n => n.target + ' ' + n.html).join('; '))))");
  }

  /** Ids that more than one thing on the page has. */
  @SuppressWarnings("unchecked")
  List<String> idsTwice() {
    return (List<String>)
        driver.executeScript(
            "const all = [...document.querySelectorAll('[id]')].map(e => e.id);"
                + "return all.filter((id, i) => all.indexOf(id) !== i);");
  }

  private static String axe() throws IOException {
    try (InputStream script = Chromium.class.getResourceAsStream("/axe.min.js")) {
      return new String(script.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  /** Targets for a finger that are smaller than 44 px, and whatever is wider than the screen. */
  @SuppressWarnings("unchecked")
  List<String> tooSmall() {
    return (List<String>)
        driver.executeScript(
            "const bad = [];"
                + "for (const e of document.querySelectorAll('a, button, input:not([type=hidden]),"
                + " select, summary, label')) {"
                + " const r = e.getBoundingClientRect(); const inList = e.closest('.skip');"
                + " const box = e.type == 'radio' || e.type == 'checkbox' || e.type == 'file';"
                + " const part = e.tagName == 'LABEL' && !e.closest('.choice, .check');"
                + " if (r.width && !inList && !box && !part && (r.height < 43.5 || r.width < 43.5))"
                + "  bad.push(e.tagName + ' ' + e.textContent.trim() + ' ' + r.width + ' x ' + r.height);"
                + "}"
                + "if (document.documentElement.scrollWidth > screen.width)"
                + " bad.push('wide: ' + document.documentElement.scrollWidth);"
                + "return bad;");
  }

  /** Fields and choices that are more than 60 px high. */
  @SuppressWarnings("unchecked")
  List<String> tallFields() {
    return (List<String>)
        driver.executeScript(
            "document.querySelectorAll('details').forEach(d => d.open = true);"
                + "return [...document.querySelectorAll('input, select')].filter(e =>"
                + " e.getBoundingClientRect().height > 60).map(e =>"
                + " e.id + ' ' + e.getBoundingClientRect().height);");
  }

  /** In px. */
  long heightOfPage() {
    return (Long) driver.executeScript("return document.documentElement.scrollHeight;");
  }

  @Override
  public void close() {
    driver.quit();
  }
}
