package caryatid.web;

import java.nio.file.Path;
import java.util.List;

/** A person at the window, whose input actions are counted, whatever they use. */
abstract class Hand {
  private final RealBrowser browser;
  private int keys;
  private int choices;
  private int files;
  private int letters;

  Hand(RealBrowser browser) {
    this.browser = browser;
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

  void countTyped(String name, String text) {
    if (List.of("number", "code").contains(attribute(named(name), "className"))) {
      keys += text.length();
    } else {
      letters += text.length();
    }
  }

  void write(CharSequence keysPressed) {
    browser.write(keysPressed);
  }

  static String named(String name) {
    return "[name=\"" + name + "\"]";
  }

  /** Chooses or drops files: one action each. */
  Hand drop(String id, List<Path> paths) {
    browser.give(id, paths);
    files += paths.size();
    return this;
  }

  /** The words of what is on the page now, which the page may replace at any time. */
  String words(String selector) {
    return attribute(selector, "innerText");
  }

  /** A property of the first that is found, empty where nothing is. */
  String attribute(String selector, String property) {
    String asked =
        "const e = document.querySelector(arguments[0]); return e ? e[arguments[1]] : '';";
    return String.valueOf(browser.run(asked, selector, property));
  }

  boolean isThere(String selector) {
    return is("return !!document.querySelector(arguments[0]);", selector);
  }

  boolean is(String question, String selector) {
    return Boolean.TRUE.equals(browser.run(question, selector));
  }

  String address() {
    return String.valueOf(browser.run("return location.href;"));
  }

  /** Waits until something is there. */
  Hand await(String selector) {
    for (int i = 0; i < 1500; i++) {
      if (isThere(selector)) {
        return this;
      }
      pause();
    }
    throw new AssertionError("not there: " + selector + " at " + address());
  }

  /** Does what leads to another page, and waits for it: the one that is left was marked. */
  Hand leave(Runnable action) {
    browser.run("window.isLeft = true;");
    action.run();
    for (int i = 0; i < 1500; i++) {
      if (is("return !window.isLeft && document.readyState === 'complete';", "")) {
        return this;
      }
      pause();
    }
    throw new AssertionError("no other page after " + address());
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
