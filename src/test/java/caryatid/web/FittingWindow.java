package caryatid.web;

import caryatid.usecase.Records;
import caryatid.usecase.RememberedPlates;
import caryatid.usecase.file.LocalFiles;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** What the tests of the window's pages share: a window with the new record of a right leg. */
abstract class FittingWindow {
  static final Path K7 = Path.of("sample-recordings/k7");

  @TempDir Path folder;
  OpenWindow window;
  String base;

  @BeforeEach
  void open() throws Exception {
    window = new OpenWindow(folder);
    base = window.start("K7-right", "right");
  }

  @AfterEach
  void close() throws Exception {
    window.close();
  }

  /** The window knows the plate of the samples from now on. */
  final void rememberPlate() throws Exception {
    LocalFiles files = new LocalFiles();
    RememberedPlates.remember(
        Records.in(folder.resolve("records"), Clock.system(ZoneId.systemDefault())),
        files.read(K7.resolve("barefoot-1.csv")),
        files.read(K7.resolve("plate.yaml")),
        false);
  }

  /** The answer to a form of the page, sent with its head and with somebody's initials. */
  final HttpResponse<String> send(String page, String... fields) throws Exception {
    String head = OpenWindow.head(window.page(base + page));
    return window.send(
        base + page,
        Stream.concat(Stream.of("record-head", head, "by-initials", "AB"), Stream.of(fields))
            .toArray(String[]::new));
  }
}
