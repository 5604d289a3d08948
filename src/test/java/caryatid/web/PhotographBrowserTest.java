package caryatid.web;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.demo.DemoPhotograph;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;

/** Photographs in a real browser. */
@Tag("proof")
class PhotographBrowserTest {
  private static final String PICTURE = ".pictures img";
  private static final String FAULT = ".photographs .fault";

  @TempDir Path folder;

  @Test
  void aPhotographIsSeenSmallGoesWithTheEntryAndIsTakenAwayAgain() throws Exception {
    byte[] taken = DemoPhotograph.turned(DemoPhotograph.corners(200, 120), 6);
    Path photograph = Files.write(folder.resolve("foot.jpg"), taken);
    Path notes = Files.writeString(folder.resolve("notes.txt"), "no picture");
    try (OpenWindow window = new OpenWindow(folder);
        Chromium browser = new Chromium("en-GB", 1366, 768)) {
      browser.open(window.window());
      String base = window.start("K7-right", "right");
      browser.driver().get(window.origin() + base + "/dynamic-alignment");
      Keyboard keyboard = new Keyboard(browser);
      keyboard.type("comfort", "8");
      choose(browser, photograph);
      keyboard.await(PICTURE);
      assertThat(
              browser
                  .driver()
                  .executeScript(
                      "const i = document.querySelector(arguments[0]); await i.decode();"
                          + " return i.naturalWidth + ' x ' + i.naturalHeight;",
                      PICTURE))
          .isEqualTo("120 x 200");
      choose(browser, notes);
      keyboard.await(FAULT);
      assertThat(keyboard.words(FAULT)).contains("expected a photograph as JPEG or PNG");
      assertThat(browser.barriers()).isEmpty();
      keyboard.press("button[name='photograph-remove']");
      keyboard.await("[name=comfort]");
      assertThat(browser.driver().findElements(By.cssSelector(PICTURE))).isEmpty();
      assertThat(browser.driver().findElement(By.id("comfort")).getAttribute("value"))
          .isEqualTo("8");
      choose(browser, photograph);
      keyboard.await(PICTURE);
      keyboard.follow("section.onward button.strong");
      assertThat(keyboard.words("#main")).contains("Kept as entry 2");
      browser.driver().get(window.origin() + base + "/record");
      assertThat(keyboard.words("#main")).contains("photograph-foot.jpg");
      assertThat(browser.complaints()).isEmpty();
    }
  }

  private static void choose(Chromium browser, Path file) {
    browser.driver().findElement(By.id("photograph")).sendKeys(file.toString());
  }
}
