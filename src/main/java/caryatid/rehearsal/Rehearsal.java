package caryatid.rehearsal;

import static java.nio.charset.StandardCharsets.UTF_8;

import caryatid.cli.Main;
import caryatid.remark.BadInput;
import caryatid.usecase.Records;
import caryatid.web.Window;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.CookieHandler;
import java.net.CookieManager;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What people do most, done once with a sample: Java notes the classes it needs, and the launcher
 * keeps them ready for the next start. In one process, because Java's lists of several cannot be
 * put together.
 */
final class Rehearsal {
  private static final Pattern ADDRESS = Pattern.compile("href=\"(http[^\"]+)\"");

  private Rehearsal() {}

  /**
   * Checks a stand, keeps it in a record, inspects an export and opens the window.
   *
   * @param args the folder of the sample, and an empty one for what is written
   */
  public static void main(String[] args) throws BadInput, IOException {
    Path sample = Path.of(args[0]);
    Path work = Path.of(args[1]);
    String records = work.resolve("records").toString();
    List<String> stand =
        List.of(
            "check",
            sample.resolve("barefoot-1.csv").toString(),
            "--trial",
            sample.resolve("barefoot.yaml").toString(),
            "--plate",
            sample.resolve("plate.yaml").toString());
    run(stand, "--out", work.toString());
    run(
        List.of("record", "start", "K7-right", "--records", records, "--by", "AB"),
        "wearer=K7",
        "side=right",
        "level=transtibial",
        "body-mass-kg=82",
        "mobility-grade=3");
    run(stand, "--json", "--record", "K7-right", "--records", records);
    run(
        List.of("inspect", sample.resolve("shoe.csv").toString()),
        "--plate",
        sample.resolve("plate-pressure.yaml").toString());
    open(Path.of(records), work.resolve("window"));
    System.exit(0);
  }

  private static void run(List<String> command, String... more) {
    PrintWriter nowhere = new PrintWriter(new StringWriter());
    String[] words = command.toArray(new String[command.size() + more.length]);
    System.arraycopy(more, 0, words, command.size(), more.length);
    if (Main.run(nowhere, nowhere, words) != 0) {
      throw new IllegalStateException(String.join(" ", words));
    }
  }

  /** The window's first page, as a browser asks for it. */
  private static void open(Path records, Path home) throws BadInput, IOException {
    Clock clock = Clock.systemUTC();
    CookieHandler.setDefault(new CookieManager());
    Window.Setting setting =
        new Window.Setting(Records.in(records, clock), 0, home, clock, Throwable::toString);
    try (Window window = Window.open(setting).orElseThrow()) {
      Matcher address = ADDRESS.matcher(Files.readString(window.startFile(), UTF_8));
      if (!address.find()) {
        throw new IllegalStateException("no address in the start file");
      }
      try (InputStream page = URI.create(address.group(1)).toURL().openStream()) {
        page.readAllBytes();
      }
    }
  }
}
