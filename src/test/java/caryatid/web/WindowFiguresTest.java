package caryatid.web;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import caryatid.usecase.RememberedPlates;
import caryatid.usecase.file.LocalFiles;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * How long a person waits at the window, measured in Chromium: from the start of the program by its
 * launcher to the first page, and from the drop of a recording of 32 s at 1000 Hz to its drawing.
 */
@Tag("figures")
class WindowFiguresTest {
  private static final int STARTS = Integer.getInteger("window.starts", 5);
  private static final int DROPS = 6;
  private static final Path K7 = Path.of("sample-recordings/k7");

  /** Drops a file made of the text, and notes when what is asked for was painted. */
  private static final String DROP =
      """
      const file = new File([arguments[0]], arguments[1]);
      const dropped = new DataTransfer();
      dropped.items.add(file);
      window.shownAfter = null;
      const live = document.getElementById('live');
      const begun = performance.now();
      const seen = new MutationObserver(() => {
        if (live.querySelector('button[value=count-1]') && live.querySelector('.arrived svg')) {
          seen.disconnect();
          requestAnimationFrame(() => requestAnimationFrame(() => {
            window.shownAfter = performance.now() - begun;
          }));
        }
      });
      seen.observe(live, {childList: true, subtree: true});
      document.dispatchEvent(new DragEvent('drop', {dataTransfer: dropped, cancelable: true}));
      """;

  private static final String COUNT =
      """
      window.shownAfter = null;
      const live = document.getElementById('live');
      const begun = performance.now();
      const seen = new MutationObserver(() => {
        if (live.querySelector('button[value=keep]') && live.querySelector('.result svg')) {
          seen.disconnect();
          requestAnimationFrame(() => requestAnimationFrame(() => {
            window.shownAfter = performance.now() - begun;
          }));
        }
      });
      seen.observe(live, {childList: true, subtree: true});
      live.querySelector('button[value=count-1]').click();
      """;

  @TempDir Path folder;
  private final List<Double> pages = new ArrayList<>();
  private final List<Double> first = new ArrayList<>();
  private final List<Double> later = new ArrayList<>();
  private final List<Double> results = new ArrayList<>();
  private final List<Double> processor = new ArrayList<>();

  @Test
  void figures() throws Exception {
    LocalFiles files = new LocalFiles();
    RememberedPlates.remember(
        OpenWindow.setting(folder).records(),
        files.read(K7.resolve("barefoot-1.csv")),
        files.read(K7.resolve("plate.yaml")),
        false);
    String base;
    try (OpenWindow window = new OpenWindow(folder)) {
      base = window.start("K7-right", "right");
      new TypedStand(window, base).typeAs(java.util.Map.of(), "part", "live");
    }
    String recording = new String(KeystrokeTiming.longer(K7.resolve("barefoot-1.csv")), UTF_8);
    try (Chromium browser = new Chromium("en-GB", 1366, 768)) {
      for (int start = 0; start < STARTS; start++) {
        start(browser, recording.strip(), start);
      }
    }
    tell("start of the program to the first page, s", pages, 1000);
    tell("first drop to its drawing, ms", first, 1);
    tell("later drop to its drawing, ms", later, 1);
    tell("the window's processor time for it, ms", processor, 1);
    tell("counting it to the drawn result, ms", results, 1);
    assertThat(later).hasSizeGreaterThanOrEqualTo(STARTS * DROPS - STARTS);
  }

  private void start(Chromium browser, String recording, int start) throws Exception {
    Path windows = folder.resolve("windows-" + start);
    ProcessBuilder launcher =
        new ProcessBuilder(
            "./caryatid",
            "open",
            "--no-browser",
            "--records",
            folder.resolve("records").toString());
    launcher.environment().put("JDK_JAVA_OPTIONS", "-Dcaryatid.windows=" + windows);
    long begun = System.currentTimeMillis();
    Process program = launcher.redirectError(ProcessBuilder.Redirect.DISCARD).start();
    try {
      program.inputReader().readLine();
      try (Stream<Path> all = Files.list(windows)) {
        browser.open(all.filter(f -> f.toString().endsWith(".html")).findFirst().orElseThrow());
      }
      pages.add(
          number(
                  browser.run(
                      "return performance.timeOrigin"
                          + " + performance.getEntriesByType('navigation')[0].responseEnd;"))
              - begun);
      Hand hand = new Keyboard(browser);
      hand.leave(() -> browser.run("document.querySelector('a[href^=\"/r/\"]').click();"));
      String step = hand.address().replaceAll("(/r/[^/]+).*", "$1/static-alignment");
      browser.driver().get(step);
      for (int drop = 0; drop < DROPS; drop++) {
        // No two recordings are alike, so that nothing that was drawn before serves again.
        String own = recording.substring(0, recording.length() - 2) + start + drop + "\n";
        drop(browser, hand, program, own, drop == 0 ? first : later);
      }
    } finally {
      program.destroy();
      program.onExit().orTimeout(30, TimeUnit.SECONDS).join();
    }
  }

  private void drop(
      Chromium browser, Hand hand, Process program, String recording, List<Double> times)
      throws Exception {
    hand.await("#live:not([aria-busy])");
    Duration before = program.info().totalCpuDuration().orElseThrow();
    browser.run(DROP, recording, "stand.csv");
    times.add(shown(browser));
    if (times == later) {
      Duration after = program.info().totalCpuDuration().orElseThrow();
      processor.add((double) after.minus(before).toMillis());
    }
    hand.await("#live:not([aria-busy])");
    browser.run(COUNT);
    results.add(shown(browser));
    hand.await("#live:not([aria-busy])");
    browser.run("document.querySelector('button[value=uncount-1]').click();");
    hand.await("button[value=remove-1]").await("#live:not([aria-busy])");
    browser.run("document.querySelector('button[value=remove-1]').click();");
    for (int i = 0; i < 500 && hand.isThere("button[value=remove-1]"); i++) {
      Hand.pause();
    }
  }

  private static double shown(Chromium browser) {
    for (int i = 0; i < 500; i++) {
      if (browser.run("return window.shownAfter;") instanceof Number ms) {
        return ms.doubleValue();
      }
      Hand.pause(20);
    }
    throw new AssertionError("nothing drawn");
  }

  private static double number(Object value) {
    return ((Number) value).doubleValue();
  }

  private static void tell(String what, List<Double> times, double unit) {
    double[] sorted = times.stream().mapToDouble(t -> t / unit).sorted().toArray();
    double median = (sorted[(sorted.length - 1) / 2] + sorted[sorted.length / 2]) / 2;
    System.out.printf(
        Locale.ROOT,
        "%-46s %3d times   median %.2f   least %.2f   largest %.2f%n",
        what,
        sorted.length,
        median,
        sorted[0],
        sorted[sorted.length - 1]);
  }
}
