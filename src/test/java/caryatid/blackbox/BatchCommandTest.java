package caryatid.blackbox;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import caryatid.cli.Main;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Many states in one go, from the samples. */
class BatchCommandTest {
  private static final Path M4 = Path.of("sample-recordings/m4");
  private static final Path K7 = Path.of("sample-recordings/k7");

  @TempDir Path temporary;
  private Path trials;
  private Path out;

  @BeforeEach
  void copySamples() throws IOException {
    trials = Files.createDirectory(temporary.resolve("trials \u00e4"));
    out = temporary.resolve("out");
    copy(M4, "m4", "plates.yaml", "shoe.yaml", "shoe.txt", "barefoot.yaml", "barefoot.txt");
    copy(
        K7,
        "k7",
        "plate.yaml",
        "barefoot.yaml",
        "barefoot-1.csv",
        "barefoot-2.csv",
        "barefoot-3.csv");
    copy(Path.of("sample-recordings/story"), "k7", "stand-1.yaml", "stand-1.csv");
  }

  private void copy(Path from, String to, String... names) throws IOException {
    Path folder = Files.createDirectories(trials.resolve(to));
    for (String name : names) {
      Files.copy(from.resolve(name), folder.resolve(name));
    }
  }

  private record Run(int exit, String said) {}

  private static Run run(String... words) {
    StringWriter said = new StringWriter();
    PrintWriter out = new PrintWriter(said);
    return new Run(Main.run(out, out, words), said.toString());
  }

  private Run batch(String... more) {
    List<String> words =
        new ArrayList<>(List.of("batch", trials.toString(), "--out", out.toString()));
    words.addAll(List.of(more));
    return run(words.toArray(String[]::new));
  }

  private List<CSVRecord> rows() throws IOException {
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    String text = Files.readString(out.resolve("findings.csv"), UTF_8);
    try (CSVParser parser = format.parse(new StringReader(text))) {
      return parser.getRecords();
    }
  }

  /** Each row has the numbers of the same state's {@code check --json}. */
  @Test
  void theTableHasWhatEachCheckFinds() throws Exception {
    Run run = batch();
    assertThat(run.exit()).as(run.said()).isZero();
    assertThat(rows())
        .extracting(r -> r.get("state"))
        .containsSubsequence("k7/barefoot", "k7/stand-1", "m4/barefoot", "m4/shoe");
    StringWriter json = new StringWriter();
    Main.run(
        new PrintWriter(json),
        new PrintWriter(new StringWriter()),
        "check",
        K7.resolve("barefoot-1.csv").toString(),
        K7.resolve("barefoot-2.csv").toString(),
        K7.resolve("barefoot-3.csv").toString(),
        "--plate",
        K7.resolve("plate.yaml").toString(),
        "--trial",
        K7.resolve("barefoot.yaml").toString(),
        "--json");
    JsonNode findings = new ObjectMapper().readTree(json.toString()).at("/state/findings");
    List<CSVRecord> barefoot =
        rows().stream().filter(r -> r.get("state").equals("k7/barefoot")).toList();
    assertThat(barefoot).hasSameSizeAs(findings).isNotEmpty();
    for (int i = 0; i < barefoot.size(); i++) {
      CSVRecord row = barefoot.get(i);
      JsonNode finding = findings.get(i);
      double mm = finding.at("/offset/mm/value").asDouble();
      assertThat(Double.parseDouble(row.get("offset-mm"))).isEqualTo(mm);
      assertThat(row.get("verdict")).isEqualTo(finding.get("verdict").asText());
      assertThat(Double.parseDouble(row.get("probability-within")))
          .isEqualTo(finding.get("probability-within").asDouble());
      double lower = Double.parseDouble(row.get("lower-95-mm"));
      double upper = Double.parseDouble(row.get("upper-95-mm"));
      assertThat((lower + upper) / 2).isCloseTo(mm, within(1e-9));
      assertThat(row.get("stands")).isEqualTo("3");
      assertThat(Double.parseDouble(row.get("used-s"))).isBetween(30.0, 90.0);
      assertThat(row.get("undecidable")).isIn("true", "false");
      assertThat(row.get("unusual")).as("fewer than ten").isEmpty();
    }
  }

  /** Dates and times as XML Schema has them: with seconds and an offset. */
  @Test
  void theTimeOfAStandHasSecondsAndAnOffset() throws Exception {
    batch();
    assertThat(rows())
        .extracting(r -> r.get("stood-at"))
        .contains("2026-03-04T10:15:00+01:00")
        .allMatch(
            at -> at.matches("\\d{4}-\\d\\d-\\d\\dT\\d\\d:\\d\\d:\\d\\d(\\+\\d\\d:\\d\\d|Z)"));
  }

  @Test
  void aTableOfFewerStatesThanTheFolderHoldsIsSaidToBeOne() throws Exception {
    String others = "This folder also holds results of states that are not in its table now: ";
    assertThat(batch().said()).doesNotContain(others);
    Run smaller = run("batch", trials.resolve("k7").toString(), "--out", out.toString());
    assertThat(smaller.said()).endsWith(others + "4. For a few states use a separate folder.\n");
  }

  /** A column a line, each with what it means; in the order of the table. */
  @Test
  void everyColumnIsExplained() throws Exception {
    batch("--words");
    JsonNode metadata =
        new ObjectMapper().readTree(out.resolve("findings.csv-metadata.json").toFile());
    assertThat(metadata.get("url").asText()).isEqualTo("findings.csv");
    List<String> titles = new ArrayList<>();
    metadata
        .at("/tableSchema/columns")
        .forEach(column -> titles.add(column.get("titles").asText()));
    String header = Files.readString(out.resolve("findings.csv")).lines().findFirst().orElseThrow();
    assertThat(titles).containsExactly(header.split(",")).endsWith("landmark-name", "source");
    metadata
        .at("/tableSchema/columns")
        .forEach(column -> assertThat(column.get("dc:description").asText()).isNotBlank());
  }

  @Test
  void withoutWordsNobodysOwnWordsAreInTheTable() throws Exception {
    batch();
    assertThat(Files.readString(out.resolve("findings.csv")))
        .doesNotContain("Invented instructions")
        .doesNotContain("demo");
  }

  @Test
  void theBytesAreTheSameHoweverManyAreCheckedAtATime() throws Exception {
    batch("--at-a-time", "1");
    Map<String, String> one = files();
    out = temporary.resolve("other");
    batch("--at-a-time", "4");
    assertThat(files()).isEqualTo(one).hasSizeGreaterThan(6);
  }

  private Map<String, String> files() throws IOException {
    Map<String, String> files = new TreeMap<>();
    try (Stream<Path> all = Files.walk(out)) {
      for (Path file : all.filter(Files::isRegularFile).toList()) {
        files.put(out.relativize(file).toString(), Files.readString(file, UTF_8));
      }
    }
    return files;
  }

  @Test
  void aBadFileStopsNoOtherOneAndIsListed() throws Exception {
    Path bad = trials.resolve("k7/stand-1.csv");
    Files.writeString(bad, Files.readString(bad).replaceAll("(?m)^(.*;){3}", "$0x"));
    Files.writeString(trials.resolve("k7/lost.csv"), "a;b\n1;2\n");
    Run run = batch();
    assertThat(run.exit()).isEqualTo(1);
    assertThat(run.said()).contains("k7/stand-1 could not be checked", "k7/lost.csv could not be");
    assertThat(rows())
        .extracting(r -> r.get("state"))
        .contains("k7/barefoot", "m4/shoe")
        .doesNotContain("k7/stand-1");
    assertThat(Files.readString(out.resolve("findings.html")))
        .contains("Not checked: 2", "<b>k7/stand-1</b>", "<b>k7/lost.csv</b>");
    assertThat(Files.readString(out.resolve("refused.csv")).lines())
        .contains("state,code,file,line,column,reason")
        .anyMatch(row -> row.startsWith("k7/lost.csv,BatchProblem.NO_SHEET,"))
        .anyMatch(row -> row.startsWith("k7/stand-1,Reading."));
    assertThat(out.resolve("results/k7/stand-1.json")).doesNotExist();
  }

  /** What was interrupted goes on: only what is missing or has changed is checked again. */
  @Test
  void aSecondRunTakesOverWhatHasNotChanged() throws Exception {
    batch();
    final Map<String, String> first = files();
    assertThat(batch().said()).contains("Checked 4 of 4, 4 of them in an earlier run");
    assertThat(files()).isEqualTo(first);
    Files.delete(out.resolve("results/m4/shoe.json"));
    assertThat(batch().said()).contains("3 of them in an earlier run");
    assertThat(files()).isEqualTo(first);
    Path sheet = trials.resolve("k7/stand-1.yaml");
    Files.writeString(sheet, Files.readString(sheet) + "# looked at again\n");
    assertThat(batch().said()).contains("3 of them in an earlier run");
    Path result = out.resolve("results/k7/barefoot.json");
    Files.writeString(result, Files.readString(result).substring(0, 900));
    assertThat(batch().said()).contains("3 of them in an earlier run");
  }

  /** What is left of an earlier run never stands beside the numbers of this one. */
  @Test
  void aStateThatChangedOrIsRefusedHasNoOldReport() throws Exception {
    batch("--reports");
    Path sheet = trials.resolve("m4/shoe.yaml");
    Files.writeString(sheet, Files.readString(sheet) + "# looked at again\n");
    batch();
    assertThat(out.resolve("results/m4/shoe.json")).exists();
    assertThat(out.resolve("reports/m4/shoe-report.pdf")).doesNotExist();
    assertThat(batch("--reports").said()).contains("3 of them in an earlier run");
    Files.writeString(sheet, "trial-sheet: 1\n");
    assertThat(batch("--reports").exit()).isEqualTo(1);
    assertThat(out.resolve("results/m4/shoe.json")).doesNotExist();
    assertThat(out.resolve("reports/m4/shoe-report.pdf")).doesNotExist();
  }

  /** A run in which every state was refused can be repeated once the reason is mended. */
  @Test
  void aRunWithoutAResultGoesOn() throws Exception {
    Path other = Files.createDirectory(temporary.resolve("other-plates"));
    Files.move(trials.resolve("m4/plates.yaml"), other.resolve("plates.yaml"));
    Files.move(trials.resolve("k7/plate.yaml"), other.resolve("plate.yaml"));
    assertThat(batch().exit()).isEqualTo(1);
    Files.move(other.resolve("plates.yaml"), trials.resolve("m4/plates.yaml"));
    Files.move(other.resolve("plate.yaml"), trials.resolve("k7/plate.yaml"));
    Run again = batch();
    assertThat(again.exit()).as(again.said()).isZero();
  }

  /** The folder for what is made may lie among the trials. */
  @Test
  void whatIsMadeIsNotTakenForTrials() throws Exception {
    out = trials.resolve("m4/out");
    assertThat(batch().exit()).isZero();
    assertThat(batch().exit()).isZero();
  }

  @Test
  void namesThatADiskTakesForOneAreRefused() throws Exception {
    Path list = temporary.resolve("list.csv");
    String files = ",k7/barefoot-1.csv,k7/barefoot.yaml,k7/plate.yaml\n";
    Files.writeString(list, "state,recording,sheet,plate\nA" + files + "a" + files);
    Run run = run("batch", "--list", list.toString(), "--out", out.toString());
    assertThat(run.exit()).isEqualTo(1);
    assertThat(run.said()).contains("a: two states have this name");
  }

  /** A sheet that stands on another one is checked again: that one may have changed. */
  @Test
  void aSheetBasedOnAnotherIsNeverTakenOver() throws Exception {
    Path story = Path.of("sample-recordings/story");
    Files.copy(story.resolve("stand-2.yaml"), trials.resolve("k7/stand-2.yaml"));
    for (String stand : List.of("a", "b", "c")) {
      String name = "stand-2" + stand + ".csv";
      Files.copy(story.resolve(name), trials.resolve("k7/" + name));
    }
    assertThat(Files.readString(story.resolve("stand-2.yaml"))).contains("based-on");
    batch();
    assertThat(batch().said()).contains("Checked 5 of 5, 4 of them in an earlier run");
  }

  /** A report that is asked for later is made, and the same as that of {@code check}. */
  @Test
  void reportsComeOnRequest() throws Exception {
    batch();
    assertThat(out.resolve("reports")).doesNotExist();
    assertThat(batch("--reports").said()).contains("0 of them in an earlier run");
    run(
        "check",
        trials.resolve("m4/shoe.txt").toString(),
        "--plate",
        trials.resolve("m4/plates.yaml").toString(),
        "--trial",
        trials.resolve("m4/shoe.yaml").toString(),
        "--out",
        temporary.resolve("alone").toString());
    assertThat(out.resolve("reports/m4/shoe-report.pdf"))
        .hasSameBinaryContentAs(temporary.resolve("alone/shoe-report.pdf"));
    assertThat(Files.readString(out.resolve("findings.html")))
        .contains("href=\"reports/m4/shoe-report.pdf\"", "href=\"results/m4/shoe.json\"");
    assertThat(batch("--reports").said()).contains("4 of them in an earlier run");
  }

  @Test
  void aFolderWithOtherFilesIsLeftAlone() throws Exception {
    Files.createDirectory(out);
    Files.writeString(out.resolve("thesis.txt"), "mine");
    Run run = batch();
    assertThat(run.exit()).isEqualTo(1);
    assertThat(run.said()).contains("expected a new folder, or that of an earlier batch");
    try (Stream<Path> inside = Files.list(out)) {
      assertThat(inside).hasSize(1);
    }
  }

  @Test
  void aListNamesWhatNoNameTells() throws Exception {
    Path list = temporary.resolve("list.csv");
    Files.writeString(
        list,
        """
        state,recording,sheet,plate
        first,trials \u00e4/k7/barefoot-1.csv,trials \u00e4/k7/barefoot.yaml,trials \u00e4/k7/plate.yaml
        """);
    Run run = run("batch", "--list", list.toString(), "--out", out.toString());
    assertThat(run.exit()).as(run.said()).isZero();
    assertThat(rows()).extracting(r -> r.get("state")).containsOnly("first");
  }

  @Test
  void nothingToCheckIsSaid() throws Exception {
    Path empty = Files.createDirectory(temporary.resolve("empty"));
    Run run = run("batch", empty.toString(), "--out", out.toString());
    assertThat(run.exit()).isEqualTo(1);
    assertThat(run.said()).contains("expected trial sheets and exports, and found none");
    assertThat(out).doesNotExist();
  }

  /** The page asks for nothing from anywhere else. */
  @Test
  void thePageIsCompleteInItself() throws Exception {
    batch();
    assertThat(Files.readString(out.resolve("findings.html")))
        .doesNotContainPattern("(src|href)=\"(https?:)?//")
        .contains("Not a medical device", "<table class=\"sortable\">", "class=\"band\"");
  }
}
