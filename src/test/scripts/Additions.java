import caryatid.cli.Main;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.stream.Stream;

/**
 * Fills a record with stands up to its 99th entry, for {@code cost}: java -cp JAR Additions.java
 * SAMPLES FOLDER, from any folder. The sheet and the recording of the hundredth are left in
 * FOLDER/sheet.yaml and FOLDER/stand.csv.
 */
final class Additions {
  private Additions() {}

  public static void main(String[] args) throws Exception {
    Path k7 = Path.of(args[0], "k7");
    Path folder = Path.of(args[1]);
    Path sheet = folder.resolve("sheet.yaml");
    String records = folder.resolve("records").toString();
    run(
        "record", "start", "K7-right", "--records", records, "--by", "AB", "wearer=K7", "side=right",
        "level=transtibial", "--at", "2026-01-01T08:00+01:00");
    List<String> lines = Files.readAllLines(k7.resolve("barefoot.yaml"));
    List<String> rows = Files.readAllLines(k7.resolve("barefoot-1.csv"));
    Path recording = folder.resolve("stand.csv");
    OffsetDateTime at = OffsetDateTime.parse("2026-01-01T09:00:00+01:00");
    for (int entry = 2; entry <= 100; entry++) {
      String time = "at: " + at.plusMinutes(entry).toString();
      Files.write(sheet, lines.stream().map(l -> l.startsWith("at:") ? time : l).toList());
      // The same recording is refused a second time: each starts later than the one before.
      Files.write(recording, startedLater(rows, entry));
      if (entry < 100) {
        run(
            "check", recording.toString(), "--trial", sheet.toString(), "--plate",
            k7.resolve("plate.yaml").toString(), "--json", "--record", "K7-right", "--records", records);
      }
    }
  }

  private static List<String> startedLater(List<String> rows, int by) {
    return Stream.concat(rows.stream().limit(1), rows.stream().skip(1L + by)).toList();
  }

  private static void run(String... arguments) {
    StringWriter err = new StringWriter();
    int code = Main.run(new PrintWriter(new StringWriter()), new PrintWriter(err), arguments);
    if (code != 0) {
      throw new IllegalStateException(Stream.of(arguments).toList() + ": " + err);
    }
  }
}
