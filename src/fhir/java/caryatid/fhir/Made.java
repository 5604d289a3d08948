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

  /** The codes of the samples' records. */
  static final List<String> SAMPLES = Sample.ALL.stream().map(Sample::code).toList();

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

  /** What is done after each entry of the story. */
  interface Step {
    void done() throws IOException;
  }

  /** The story's record, {@code K7-right}, in a folder of records. */
  static void story(Path folder, Step step) throws IOException {
    Set<String> kept = Set.of("record start", "record add", "check sample-recordings");
    for (String line : Files.readAllLines(Path.of("sample-recordings/story/README.md"))) {
      String command = line.replaceFirst("^\\./caryatid ", "");
      if (!command.equals(line) && kept.stream().anyMatch(command.replace('/', ' ')::startsWith)) {
        caryatid(words(command, folder));
        step.done();
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

  /**
   * A sample report.
   *
   * @param code the code of the record that is made of it
   * @param opening the record's side and level
   * @param files its recordings, trial sheet and plate description, as {@code check} is given them
   */
  private record Sample(String code, String opening, String files) {
    private static final String K7 = "wearer=K7 side=right level=transtibial";
    private static final String M4 = "wearer=M4 side=left level=transfemoral";
    private static final List<Sample> ALL =
        List.of(
            new Sample(
                "K7-1",
                K7,
                "k7/barefoot-1.csv k7/barefoot-2.csv k7/barefoot-3.csv --trial k7/barefoot.yaml"
                    + " --plate k7/plate.yaml"),
            new Sample(
                "K7-2", K7, "k7/shoe.csv --trial k7/shoe.yaml --plate k7/plate-pressure.yaml"),
            new Sample(
                "M4-1", M4, "m4/barefoot.txt --trial m4/barefoot.yaml --plate m4/plates.yaml"),
            new Sample("M4-2", M4, "m4/shoe.txt --trial m4/shoe.yaml --plate m4/plates.yaml"));

    private void make(Path folder) {
      String to = "--by AB --records " + folder.resolve("records") + " ";
      caryatid(
          ("record start " + code + " --at 2026-03-01T09:00+01:00 " + to + opening).split(" "));
      String from = files.replaceAll("(k7|m4)/", "sample-recordings/$0");
      String out = "--out " + folder.resolve("reports-" + code) + " ";
      caryatid(("check " + out + to + "--record " + code + " " + from).split(" "));
    }
  }

  /** Makes a record for each sample report, with one stand, in a folder of records. */
  static void samples(Path folder) {
    Sample.ALL.forEach(sample -> sample.make(folder));
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
