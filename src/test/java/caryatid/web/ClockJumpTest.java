package caryatid.web;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.usecase.Records;
import caryatid.usecase.RememberedPlates;
import caryatid.usecase.file.LocalFiles;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Map;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The machine's clock jumps, after a sleep or because it was set, while a window is open. */
class ClockJumpTest {
  private static final Path K7 = Path.of("sample-recordings/k7");

  @TempDir Path folder;

  /** A clock that somebody sets. */
  private static final class SetClock extends Clock {
    private Duration by = Duration.ZERO;

    @Override
    public ZoneId getZone() {
      return ZoneId.of("Europe/Berlin");
    }

    @Override
    public Clock withZone(ZoneId zone) {
      return this;
    }

    @Override
    public Instant instant() {
      return Instant.parse("2026-03-28T15:00:00Z").plus(by);
    }
  }

  /** The night crosses a change of summer time. */
  @ParameterizedTest
  @ValueSource(ints = {9, 15, 64, -2})
  void sessionDraftAndWatchedFolderOutliveIt(int hours) throws Exception {
    SetClock clock = new SetClock();
    Records records = Records.in(folder.resolve("records"), clock);
    LocalFiles files = new LocalFiles();
    RememberedPlates.remember(
        records,
        files.read(K7.resolve("barefoot-1.csv")),
        files.read(K7.resolve("plate.yaml")),
        false);
    Path exports = Files.createDirectories(folder.resolve("exports"));
    Map<String, String> watched = Map.of("watched-folder", exports.toString());
    Window.Setting setting =
        new Window.Setting(records, 0, folder.resolve("home"), clock, failure -> "kept");
    try (OpenWindow window = new OpenWindow(setting)) {
      TypedStand stand = new TypedStand(window, window.start("K7-right", "right"));
      stand.typeAs(watched, "action", "watch");
      clock.by = Duration.ofHours(hours);
      Files.copy(K7.resolve("barefoot-1.csv"), exports.resolve("later.csv"));
      // Its size is seen twice.
      assertThat(window.page(stand.base() + TypedStand.STEP)).doesNotContain("later.csv");
      String page = window.page(stand.base() + TypedStand.STEP);
      assertThat(page).contains("later.csv", "not yet counted", "value=\"492\"");
      stand.typeAs(watched, "action", "count-1");
      page = window.page(stand.base() + TypedStand.STEP);
      assertThat(
              stand.typeAs(watched, "action", "keep", "record-head", OpenWindow.head(page)).body())
          .contains("Kept as entry");
    }
  }
}
