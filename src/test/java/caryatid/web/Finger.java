package caryatid.web;

import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;

/** A person who touches what they want, and types on the keys that the screen shows. */
final class Finger extends Keyboard {
  Finger(ChromeDriver driver) {
    super(driver);
  }

  /** Brings it into sight and touches it; what hides it would be touched instead, and fails. */
  @Override
  WebElement to(String selector) {
    WebElement element = driver.findElement(By.cssSelector(selector));
    driver.executeScript(
        "arguments[0].scrollIntoView({block: 'center', behavior: 'instant'})", element);
    if (!element.getTagName().equals("select")) {
      element.click();
    }
    count();
    return element;
  }

  @Override
  Keyboard choose(String name, String code) {
    Object chosen =
        driver.executeScript(
            "const list = arguments[0]; list.value = arguments[1];"
                + "list.dispatchEvent(new Event('input', {bubbles: true}));"
                + "list.dispatchEvent(new Event('change', {bubbles: true})); return list.value",
            to(named(name)),
            code);
    if (!code.equals(chosen)) {
      throw new AssertionError(name + " does not offer " + code);
    }
    count();
    return this;
  }

  /** The form's own button. */
  @Override
  Keyboard send() {
    return leave(() -> to("form:has(:focus) button.strong"));
  }

  @Override
  Keyboard follow(String selector) {
    return leave(() -> to(selector));
  }

  @Override
  Keyboard press(String selector) {
    to(selector);
    return this;
  }
}
