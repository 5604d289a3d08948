package caryatid.fhir;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.cli.Main;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Records of the story in the docs and of the samples, made by the program's commands. */
final class Made {
  static final String PATIENT = "urn:oid:2.25.329800735698586629295641978511506172918|K7";
  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2026-12-01T08:00:00Z"), ZoneOffset.UTC);
  private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");

  private Made() {}

  /** What a command ended with and said. */
  record Said(int code, String out, String err) {
    /** What it said; it must not complain. */
    String done() {
      assertThat(code).as(err).isZero();
      return out;
    }
  }

  /** Runs a command. */
  static Said said(String... arguments) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int code = Main.run(CLOCK, new PrintWriter(out), new PrintWriter(err), arguments);
    return new Said(code, out.toString(), err.toString());
  }

  /** Runs a command, which must not complain. */
  static String caryatid(String... arguments) {
    return said(arguments).done();
  }

  /** The story's record, {@code K7-right}, in a folder of records. */
  static void story(Path folder) throws IOException {
    Set<String> kept = Set.of("record start", "record add", "check sample-recordings");
    for (String line : Files.readAllLines(Path.of("sample-recordings/story/README.md"))) {
      String command = line.replaceFirst("^\\./caryatid ", "");
      if (!command.equals(line) && kept.stream().anyMatch(command.replace('/', ' ')::startsWith)) {
        caryatid(words(command, folder));
      }
    }
  }

  private static String[] words(String command, Path folder) {
    List<String> words = new ArrayList<>();
    Matcher found = WORD.matcher(command);
    while (found.find()) {
      String word = found.group(1) == null ? found.group(2) : found.group(1);
      boolean writes = word.matches("records|reports-story.*");
      words.add(writes ? folder.resolve(word).toString() : word);
    }
    return words.toArray(String[]::new);
  }

  /** A record of a sample, in a folder of records, with one typed stand. */
  static void sample(
      Path folder,
      String code,
      String level,
      String side,
      String sheet,
      String plate,
      String... of) {
    String records = folder.resolve("records").toString();
    String wearer = code.substring(0, 2);
    caryatid(
        "record",
        "start",
        code,
        "--records",
        records,
        "--by",
        "AB",
        "--at",
        "2026-03-01T09:00+01:00",
        "wearer=" + wearer,
        "side=" + side,
        "level=" + level);
    List<String> check = new ArrayList<>(List.of("check"));
    check.addAll(List.of(of));
    check.addAll(
        List.of(
            "--trial",
            sheet,
            "--plate",
            plate,
            "--out",
            folder.resolve("reports").toString(),
            "--record",
            code,
            "--records",
            records,
            "--by",
            "AB"));
    caryatid(check.toArray(String[]::new));
  }

  /** A record's bundle in a language. */
  static Path bundle(Path folder, String code, String language) {
    Path file = folder.resolve(code + "-" + language + ".json");
    caryatid(
        "record",
        "bundle",
        code,
        file.toString(),
        "--records",
        folder.resolve("records").toString(),
        "--language",
        language,
        "--patient-identifier",
        PATIENT);
    return file;
  }
}
