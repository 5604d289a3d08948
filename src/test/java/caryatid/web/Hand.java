package caryatid.web;

import static java.util.stream.Collectors.joining;

import java.nio.file.Path;
import java.util.List;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.interactions.Actions;
import org.openqa.selenium.remote.RemoteWebElement;

/** A person at the window, whose input actions are counted, whatever they use. */
abstract class Hand {
  final ChromeDriver driver;
  private int keys;
  private int choices;
  private int files;
  private int letters;

  Hand(ChromeDriver driver) {
    this.driver = driver;
  }

  /** Types a number or a code, each key counted, or free text, whose letters are counted apart. */
  abstract Hand type(String name, String text);

  /** Types the numbers of one place after the other; an empty one is taken over as it was. */
  abstract Hand numbers(String first, String... numbers);

  /** Goes on from the last number to the recordings. */
  abstract Hand enter();

  /** Chooses from a list. */
  abstract Hand choose(String name, String code);

  /** Presses a button that leads to no new page. */
  abstract Hand press(String selector);

  /** Goes where a link or button leads. */
  abstract Hand follow(String selector);

  /** Sends the form that was typed into last. */
  abstract Hand send();

  /** Waits until a button may be pressed with nothing in between. */
  abstract Hand awaitReady(String selector);

  /** Keys, choices, presses and files so far, free text left out. */
  int actions() {
    return keys + choices + files;
  }

  @Override
  public String toString() {
    return "%d input actions (%d keys, %d choices and presses, %d files), and %d letters of free text"
        .formatted(actions(), keys, choices, files, letters);
  }

  /** Something that is no key. */
  void count() {
    choices++;
  }

  void countKeys(int pressed) {
    keys += pressed;
  }

  void countTyped(WebElement field, String text) {
    if (List.of("number", "code").contains(field.getAttribute("class"))) {
      keys += text.length();
    } else {
      letters += text.length();
    }
  }

  void write(CharSequence keysPressed) {
    new Actions(driver).sendKeys(keysPressed).perform();
  }

  static String named(String name) {
    return "[name=\"" + name + "\"]";
  }

  /** Chooses or drops files: one action each. */
  Hand drop(String id, List<Path> paths) {
    String names = paths.stream().map(f -> f.toAbsolutePath().toString()).collect(joining("\n"));
    driver.findElement(By.id(id)).sendKeys(names);
    files += paths.size();
    return this;
  }

  /** The words of what is on the page now, which the page may replace at any time. */
  String words(String selector) {
    String asked = "const e = document.querySelector(arguments[0]); return e ? e.innerText : '';";
    return String.valueOf(driver.executeScript(asked, selector));
  }

  /** Waits until something is there. */
  Hand await(String selector) {
    for (int i = 0; i < 1500; i++) {
      if (!driver.findElements(By.cssSelector(selector)).isEmpty()) {
        return this;
      }
      pause();
    }
    throw new AssertionError("not there: " + selector + " at " + driver.getCurrentUrl());
  }

  /** Does what leads to another page, and waits for it. */
  Hand leave(Runnable action) {
    String before = ((RemoteWebElement) driver.findElement(By.tagName("html"))).getId();
    action.run();
    awaitAnother(before);
    return this;
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

  static void pause() {
    pause(20);
  }

  static void pause(long ms) {
    try {
      Thread.sleep(ms);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
