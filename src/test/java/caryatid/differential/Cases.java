package caryatid.differential;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The cases that are the same in every run: samples, specimens, records. */
final class Cases {
  private static final List<String> LANGUAGES = List.of("en", "de", "fr", "es");
  private static final Path SPECIMENS = Path.of("src/test/resources/caryatid/recording/specimens");
  private static final Path FROZEN = Path.of("src/test/resources/caryatid/frozen/v1");
  private static final Path STORY = Path.of("sample-recordings/story/README.md");
  private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");

  private Cases() {}

  /** Result and text of each sample in each language, and what is understood of its export. */
  static List<Case> samples(Path out) {
    List<Case> cases = new ArrayList<>();
    for (Trial trial : Trial.SAMPLE) {
      cases.add(Case.of("sample, result", trial.name(), trial.check("--json")));
      String recording = trial.recordings().get(0).toString();
      cases.add(Case.of("sample, inspect", recording, "inspect", recording));
      cases.add(
          Case.of(
              "sample, inspect",
              recording + " with its plate",
              "inspect",
              recording,
              "--plate",
              trial.plate().toString()));
      for (String language : LANGUAGES) {
        String[] report = report(trial, language, "csv,json,pdf,html,svg", out);
        cases.add(Case.of("sample, report", trial.name() + " in " + language, report));
      }
    }
    return cases;
  }

  static String[] report(Trial trial, String language, String forms, Path out) {
    return trial.check("--language", language, "--forms", forms, "--out", out.toString());
  }

  /** What is understood of each specimen, and what a check says of it. */
  static List<Case> specimens(Path out) throws IOException {
    List<Case> cases = new ArrayList<>();
    try (Stream<Path> files = Files.list(SPECIMENS)) {
      for (Path file :
          files.filter(f -> f.toString().matches(".*\\.(csv|txt)")).sorted().toList()) {
        String export = file.toString();
        String plate = export.replaceFirst("\\.(csv|txt)$", ".yaml");
        cases.add(Case.of("specimen", "inspect " + file.getFileName(), "inspect", export));
        if (Files.exists(Path.of(plate))) {
          cases.add(
              Case.of(
                  "specimen",
                  "inspect " + file.getFileName() + " with its plate",
                  "inspect",
                  export,
                  "--plate",
                  plate));
          Trial trial =
              new Trial(List.of(file), Path.of("sample-recordings/k7/shoe.yaml"), Path.of(plate));
          cases.add(
              Case.of(
                  "specimen", "check " + file.getFileName(), report(trial, "en", "csv,json", out)));
        }
      }
    }
    return cases;
  }

  /** The story of the docs, and what earlier versions left. */
  static List<Case> records(Path out) throws IOException {
    List<Case> cases = new ArrayList<>();
    cases.add(new Case("record", "the story in the docs", story(out)));
    for (String code : List.of("M4-es", "mixed-1")) {
      List<String[]> commands = new ArrayList<>();
      String records = out.resolve("records").toString();
      String zip = FROZEN.resolve("packed/" + code + ".zip").toString();
      commands.add(new String[] {"record", "unpack", zip, "--records", records});
      for (String language : LANGUAGES) {
        for (String command : List.of("show", "compare", "report")) {
          List<String> words = new ArrayList<>(List.of("record", command, code));
          words.addAll(command.equals("compare") ? List.of("1", "7") : List.of());
          words.addAll(List.of("--records", records, "--language", language));
          if (command.equals("report")) {
            words.addAll(List.of("--out", out.resolve(code + "-" + language + ".pdf").toString()));
          }
          commands.add(words.toArray(String[]::new));
        }
      }
      cases.add(new Case("record", code, commands));
    }
    try (Stream<Path> reports = Files.list(FROZEN.resolve("reports"))) {
      reports
          .sorted()
          .map(Path::toString)
          .forEach(pdf -> cases.add(Case.of("report again", pdf, "check", pdf)));
    }
    return cases;
  }

  private static List<String[]> story(Path out) throws IOException {
    return Files.readString(STORY)
        .lines()
        .filter(line -> line.startsWith("./caryatid "))
        .map(line -> words(line.substring("./caryatid ".length()), out))
        .toList();
  }

  /** The command's words; what it writes goes to the folder that is compared. */
  private static String[] words(String command, Path out) {
    List<String> words = new ArrayList<>();
    Matcher found = WORD.matcher(command);
    while (found.find()) {
      String word = found.group(1) == null ? found.group(2) : found.group(1);
      boolean writes =
          word.matches(
              "records|restored|backup-.*|colleague|reports-story.*|next/.*|.*\\.zip|.*\\.pdf");
      words.add(writes ? out.resolve(word).toString() : word);
    }
    return words.toArray(String[]::new);
  }
}
