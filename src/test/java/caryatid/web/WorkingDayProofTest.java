package caryatid.web;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.usecase.RememberedPlates;
import caryatid.usecase.file.LocalFiles;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/**
 * A working day of a window with 256 MB: stands arrive in the watched folder, are counted and kept
 * by threes, and between them the page asks every 3 s for 8 h whether something arrived, here
 * without waiting.
 */
@Tag("proof")
@Timeout(3600)
class WorkingDayProofTest {
  private static final int STANDS = Integer.getInteger("stands", 200);

  /** 8 h at one question in 3 s are 9,600, over 200 stands. */
  private static final int ASKED_BETWEEN = 48;

  private static final int OF_A_STATE = 3;
  private static final int OF_A_WEARER = 18;

  /**
   * What is live differs from one moment to the next by up to 4 MB with no stand between that stays
   * (regression). The text alone of the 150 stands of a full day would be 12 MB.
   */
  private static final long MOST_LEFT_BYTES = 10 << 20;

  private static final Path K7 = Path.of("sample-recordings/k7");

  @TempDir Path folder;
  private WindowProgram program;
  private Path exports;
  private String step = "";

  @Test
  void theHeapIsFlatOverADay() throws Exception {
    LocalFiles files = new LocalFiles();
    RememberedPlates.remember(
        OpenWindow.setting(folder).records(),
        files.read(K7.resolve("barefoot-1.csv")),
        files.read(K7.resolve("plate.yaml")),
        false);
    exports = Files.createDirectories(folder.resolve("exports"));
    try (WindowProgram started = new WindowProgram(folder)) {
      program = started;
      long quarter = 0;
      for (int stand = 0; stand < STANDS; stand++) {
        stand(stand);
        if (stand + 1 == STANDS / 4) {
          quarter = program.liveBytes();
        }
      }
      long end = program.liveBytes();
      System.out.printf(
          "Live after %d stands %,d bytes, after %d stands and %d questions %,d%n",
          STANDS / 4, quarter, STANDS, STANDS * ASKED_BETWEEN, end);
      assertThat(end - quarter).isLessThan(MOST_LEFT_BYTES);
    }
  }

  private void stand(int stand) throws Exception {
    if (stand % OF_A_WEARER == 0) {
      step = program.start("K" + (100 + stand / OF_A_WEARER) + "-right") + "/static-alignment";
    }
    if (stand % OF_A_STATE == 0) {
      send(stand, "action", "watch");
    }
    Files.writeString(exports.resolve("stand-" + stand + ".csv"), recording(stand));
    HttpResponse<String> answer = send(stand, "part", "live");
    for (int i = 0; i < ASKED_BETWEEN; i++) {
      answer = send(stand, "part", "live");
    }
    String count = "count-" + (1 + stand % OF_A_STATE);
    assertThat(answer.body()).contains("value=\"" + count);
    assertThat(send(stand, "part", "live", "action", count).body()).contains("un" + count);
    if (stand % OF_A_STATE == OF_A_STATE - 1) {
      String page = program.get(program.own(step)).body();
      HttpResponse<String> kept =
          send(stand, "action", "keep", "record-head", OpenWindow.head(page));
      String done = kept.headers().firstValue("Location").orElseThrow();
      HttpResponse<String> shown = program.get(program.own(done));
      assertThat(shown.statusCode()).as(shown.body()).isEqualTo(200);
    }
  }

  /** No two stands are alike to the last digit: that of the free moment's last row is its own. */
  private static String recording(int stand) throws IOException {
    String sample =
        Files.readString(K7.resolve("barefoot-" + (1 + stand % OF_A_STATE) + ".csv")).strip();
    String moment = String.format(Locale.ROOT, "4%02d,%d", stand / 10, stand % 10);
    return sample.substring(0, sample.lastIndexOf(';') + 1) + moment + "\n";
  }

  private HttpResponse<String> send(int stand, String... more) throws Exception {
    Map<String, String> fields = new TreeMap<>(TypedStand.sheet());
    fields.put("last-change", "state " + stand / OF_A_STATE);
    fields.put("watched-folder", exports.toString());
    for (int i = 0; i < more.length; i += 2) {
      fields.put(more[i], more[i + 1]);
    }
    return program.send(step, fields);
  }
}
