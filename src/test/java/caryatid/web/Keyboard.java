package caryatid.web;

import org.openqa.selenium.Keys;

/** A person at the keyboard alone. */
class Keyboard extends Hand {
  private static final int MOST_TABS = 250;

  /** One question, because the page may replace what has the focus between two. */
  private static final String FOCUSED =
      "const focused = document.activeElement;"
          + "return !!focused && focused.matches(arguments[0]);";

  Keyboard(RealBrowser browser) {
    super(browser);
  }

  private void press(Keys key) {
    write(key);
    countKeys(1);
  }

  /** Goes on by Tab until what is wanted has the focus. */
  void to(String selector) {
    for (int i = 0; i < MOST_TABS; i++) {
      if (is(FOCUSED, selector)) {
        return;
      }
      press(Keys.TAB);
    }
    throw new AssertionError("not reached by Tab: " + selector + " at " + address());
  }

  @Override
  Keyboard type(String name, String text) {
    to(named(name));
    write(text);
    countTyped(name, text);
    return this;
  }

  @Override
  Keyboard numbers(String first, String... numbers) {
    to(named(first));
    for (String number : numbers) {
      write(number);
      countKeys(number.length());
      press(Keys.ENTER);
    }
    return this;
  }

  @Override
  Keyboard enter() {
    press(Keys.ENTER);
    return this;
  }

  @Override
  Keyboard press(String selector) {
    to(selector);
    press(Keys.ENTER);
    return this;
  }

  @Override
  Keyboard choose(String name, String code) {
    to(named(name));
    for (int i = 0; i < 40 && !code.equals(attribute(named(name), "value")); i++) {
      write(Keys.ARROW_DOWN);
    }
    if (!code.equals(attribute(named(name), "value"))) {
      throw new AssertionError(name + " does not offer " + code);
    }
    count();
    return this;
  }

  @Override
  Keyboard send() {
    leave(() -> press(Keys.ENTER));
    return this;
  }

  @Override
  Keyboard follow(String selector) {
    to(selector);
    return send();
  }

  /** It has the focus by itself. */
  @Override
  Keyboard awaitReady(String selector) {
    await(selector + ":focus");
    return this;
  }
}
