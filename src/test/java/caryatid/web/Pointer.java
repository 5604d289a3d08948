package caryatid.web;

import java.time.Duration;
import java.util.List;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.interactions.PointerInput;
import org.openqa.selenium.interactions.Sequence;

/**
 * A person who goes everywhere by mouse or finger, and types only into the field that they pressed.
 * What cannot be pressed, because something covers it or the page is too wide, fails.
 */
final class Pointer extends Hand {
  /** The middle of what is pressed, once it is in sight and the page waits for nothing. */
  private static final String MIDDLE =
      """
      const e = document.querySelector(arguments[0]);
      const live = document.getElementById('live');
      if (!e || (live && live.hasAttribute('aria-busy'))) return null;
      e.scrollIntoView({block: 'center', inline: 'nearest', behavior: 'instant'});
      const r = e.getBoundingClientRect();
      const x = Math.floor(r.left + r.width / 2), y = Math.floor(r.top + r.height / 2);
      const hit = document.elementFromPoint(x, y);
      const free = hit && (hit === e || e.contains(hit) || hit.contains(e) && hit.tagName === 'LABEL');
      const room = matchMedia('(pointer: coarse)').matches ? screen.width : innerWidth;
      const wide = document.documentElement.scrollWidth > room || visualViewport.scale !== 1;
      return [x, y, free ? '' : 'covered by ' + (hit ? hit.outerHTML.slice(0, 200) : 'nothing'),
        wide ? 'wider than the screen: ' + document.documentElement.scrollWidth : ''];
      """;

  /** The number that comes after a field, as the order on the page is. */
  private static final String NEXT =
      """
      const field = document.querySelector(arguments[0]);
      const all = [...field.form.querySelectorAll('input.number, input.words')].filter(
        f => f === field || (f.offsetParent && !f.closest('details:not([open]), .marking')));
      return all[all.indexOf(field) + 1]?.name || '';
      """;

  private static final String SEND =
      """
      const form = document.querySelector(arguments[0]).form;
      const all = [...form.elements].filter(e => e.type === 'submit' && e.offsetParent);
      all[all.length - 1].id = 'sends';
      """;

  /** A finger that presses twice within 0.3 s makes a double tap. */
  private static final long BETWEEN_TAPS_MS = 400;

  private final ChromeDriver driver;
  private final PointerInput.Kind kind;
  private String typedInto = "";

  Pointer(Chromium browser, PointerInput.Kind kind) {
    super(browser);
    driver = browser.driver();
    this.kind = kind;
  }

  private void tap(String selector) {
    int[] middle = free(selector);
    tap(middle[0], middle[1]);
    count();
  }

  private int[] free(String selector) {
    for (int i = 0; i < 1500; i++) {
      if (driver.executeScript(MIDDLE, selector) instanceof List<?> at) {
        String fault = at.get(2).toString() + at.get(3);
        if (!fault.isEmpty()) {
          throw new AssertionError(selector + " at " + address() + ": " + fault);
        }
        return new int[] {((Number) at.get(0)).intValue(), ((Number) at.get(1)).intValue()};
      }
      pause();
    }
    throw new AssertionError("not there: " + selector + " at " + address());
  }

  private void tap(int x, int y) {
    if (kind == PointerInput.Kind.TOUCH) {
      pause(BETWEEN_TAPS_MS);
    }
    PointerInput pointer = new PointerInput(kind, "hand");
    driver.perform(
        List.of(
            new Sequence(pointer, 0)
                .addAction(
                    pointer.createPointerMove(Duration.ZERO, PointerInput.Origin.viewport(), x, y))
                .addAction(pointer.createPointerDown(PointerInput.MouseButton.LEFT.asArg()))
                .addAction(pointer.createPointerUp(PointerInput.MouseButton.LEFT.asArg()))));
  }

  @Override
  Pointer type(String name, String text) {
    tap(named(name));
    // A finger's press gives the focus a moment later.
    await(named(name) + ":focus");
    if (!attribute(named(name), "value").isEmpty()) {
      write(Keys.chord(Keys.CONTROL, "a"));
      countKeys(1);
    }
    write(text);
    countTyped(name, text);
    typedInto = named(name);
    return this;
  }

  @Override
  Pointer numbers(String first, String... numbers) {
    String name = first;
    for (String number : numbers) {
      String before = driver.findElement(By.cssSelector(named(name))).getAttribute("data-before");
      type(name, number.isEmpty() ? before : number);
      name = String.valueOf(driver.executeScript(NEXT, named(name)));
    }
    return this;
  }

  @Override
  Pointer enter() {
    return this;
  }

  /** The list of a browser is a window of its own, which the driver presses in: two actions. */
  @Override
  Pointer choose(String name, String code) {
    free(named(name));
    driver.findElement(By.cssSelector(named(name) + " option[value=\"" + code + "\"]")).click();
    count();
    count();
    typedInto = named(name);
    return this;
  }

  @Override
  Pointer press(String selector) {
    tap(selector);
    return this;
  }

  @Override
  Pointer follow(String selector) {
    leave(() -> tap(selector));
    return this;
  }

  @Override
  Pointer send() {
    driver.executeScript(SEND, typedInto);
    return follow("#sends");
  }

  @Override
  Pointer awaitReady(String selector) {
    await(selector);
    return this;
  }
}
