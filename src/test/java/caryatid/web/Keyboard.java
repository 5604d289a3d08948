package caryatid.web;

import static java.util.stream.Collectors.joining;

import java.nio.file.Path;
import java.util.List;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.interactions.Actions;
import org.openqa.selenium.remote.RemoteWebElement;

/** A person at the keyboard alone, whose input actions are counted. */
class Keyboard {
  private static final int MOST_TABS = 250;

  /** One question, because the page may replace what has the focus between two. */
  private static final String FOCUSED =
      "const focused = document.activeElement;"
          + "return focused && focused.matches(arguments[0]) ? focused : null;";

  final ChromeDriver driver;
  private int keys;
  private int choices;
  private int dropped;
  private int letters;

  Keyboard(ChromeDriver driver) {
    this.driver = driver;
  }

  /** Keys and choices so far, free text left out. */
  int actions() {
    return keys + choices + dropped;
  }

  @Override
  public String toString() {
    return "%d input actions (%d keys, %d choices, %d files), and %d letters of free text"
        .formatted(actions(), keys, choices, dropped, letters);
  }

  /** Something that is no key. */
  void count() {
    choices++;
  }

  private void press(CharSequence key) {
    new Actions(driver).sendKeys(key).perform();
    keys++;
  }

  /** Goes on by Tab until what is wanted has the focus. */
  WebElement to(String selector) {
    for (int i = 0; i < MOST_TABS; i++) {
      if (driver.executeScript(FOCUSED, selector) instanceof WebElement focused) {
        return focused;
      }
      press(Keys.TAB);
    }
    throw new AssertionError("not reached by Tab: " + selector + " at " + driver.getCurrentUrl());
  }

  static String named(String name) {
    return "[name=\"" + name + "\"]";
  }

  /** Types a number or a code, each key counted, or free text, whose letters are counted apart. */
  Keyboard type(String name, String text) {
    WebElement field = to(named(name));
    new Actions(driver).sendKeys(text).perform();
    if (List.of("number", "code").contains(field.getAttribute("class"))) {
      keys += text.length();
    } else {
      letters += text.length();
    }
    return this;
  }

  /** Types the numbers of one place after the other, and goes on with Enter. */
  Keyboard numbers(String first, String... numbers) {
    to(named(first));
    for (String number : numbers) {
      new Actions(driver).sendKeys(number).perform();
      keys += number.length();
      press(Keys.ENTER);
    }
    return this;
  }

  /** Goes on with Enter. */
  Keyboard enter() {
    press(Keys.ENTER);
    return this;
  }

  /** Chooses or drops files: one action each. */
  Keyboard drop(String id, List<Path> files) {
    String names = files.stream().map(f -> f.toAbsolutePath().toString()).collect(joining("\n"));
    driver.findElement(By.id(id)).sendKeys(names);
    dropped += files.size();
    return this;
  }

  /** The words of what is on the page now, which the page may replace at any time. */
  String words(String selector) {
    String asked = "const e = document.querySelector(arguments[0]); return e ? e.innerText : '';";
    return String.valueOf(driver.executeScript(asked, selector));
  }

  /** Waits until something is there. */
  Keyboard await(String selector) {
    for (int i = 0; i < 1500; i++) {
      if (!driver.findElements(By.cssSelector(selector)).isEmpty()) {
        return this;
      }
      pause();
    }
    throw new AssertionError("not there: " + selector + " at " + driver.getCurrentUrl());
  }

  /** Presses the button that has the focus by now, without a new page. */
  Keyboard press(String selector) {
    to(selector);
    press(Keys.ENTER);
    return this;
  }

  /** Chooses from a list. */
  Keyboard choose(String name, String code) {
    WebElement list = to(named(name));
    for (int i = 0; i < 40 && !code.equals(list.getAttribute("value")); i++) {
      new Actions(driver).sendKeys(Keys.ARROW_DOWN).perform();
    }
    if (!code.equals(list.getAttribute("value"))) {
      throw new AssertionError(name + " does not offer " + code);
    }
    choices++;
    return this;
  }

  /** Sends the form that has the focus. */
  Keyboard send() {
    return leave(() -> press(Keys.ENTER));
  }

  /** Does what leads to another page, and waits for it. */
  Keyboard leave(Runnable action) {
    String before = ((RemoteWebElement) driver.findElement(By.tagName("html"))).getId();
    action.run();
    awaitAnother(before);
    return this;
  }

  /** Goes where a link or button leads. */
  Keyboard follow(String selector) {
    to(selector);
    return send();
  }

  private void awaitAnother(String before) {
    for (int i = 0; i < 1500; i++) {
      List<WebElement> pages = driver.findElements(By.tagName("html"));
      if (!pages.isEmpty()
          && !((RemoteWebElement) pages.get(0)).getId().equals(before)
          && "complete".equals(driver.executeScript("return document.readyState"))) {
        return;
      }
      pause();
    }
    throw new AssertionError("no other page after " + driver.getCurrentUrl());
  }

  private static void pause() {
    try {
      Thread.sleep(20);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
