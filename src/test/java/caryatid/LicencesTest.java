package caryatid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * Compares the tables of docs/licences.md and src/test/licences.md with the libraries the tests run
 * with, and the first with the bill of materials.
 */
class LicencesTest {
  private static final Pattern ROW = Pattern.compile("(?m)^\\| (\\S+) \\| (\\d\\S*) \\| ");

  /** What runs the tests and is no dependency of the project. */
  private static final Pattern RUNNER =
      Pattern.compile("surefire-.*|common-java5-.*|junit-platform-(launcher|reporting)-.*");

  private static final String BILL = "caryatid.bill";
  private static final Path PROGRAM = Path.of("docs", "licences.md");
  private static final Path TESTS_ALONE = Path.of("src", "test", "licences.md");

  /** What POMs call licences that have a short name. */
  private static final Map<String, String> SHORT_NAMES =
      Map.of(
          "GNU Lesser General Public Licence", "LGPL-2.1",
          "GNU Lesser General Public License (LGPL), Version 2.1", "LGPL-2.1",
          "Mozilla Public License Version 2.0", "MPL-2.0");

  @Test
  void eachLibraryHasItsRowAndEachRowItsLibrary() throws IOException {
    Set<String> rows = rows(PROGRAM);
    rows.addAll(rows(TESTS_ALONE));
    assertThat(rows).containsExactlyInAnyOrderElementsOf(libraries());
  }

  /** The bill says what each POM says; a row may say more, never something else. */
  @Test
  void eachLicenceOfTheBillOfMaterialsStandsInItsRow() throws IOException {
    assumeThat(Path.of(System.getProperty(BILL, "none")))
        .as("the bill of materials, made by an online build with the checks")
        .exists();
    String document = Files.readString(PROGRAM);
    Set<String> first = new TreeSet<>();
    for (String line : document.split("\n")) {
      if (ROW.matcher(line).find()) {
        String[] cells = line.split(" *[|] *");
        first.add(cells[1] + "-" + cells[2]);
      }
    }
    Set<String> listed = new TreeSet<>();
    for (JsonNode component : bill()) {
      String library = component.get("name").asText() + "-" + component.get("version").asText();
      listed.add(library);
      assertThat(component.get("hashes")).as(library).isNotEmpty();
      assertThat(component.get("licenses")).as(library).isNotEmpty();
      for (JsonNode licence : component.get("licenses")) {
        assertThat(row(document, component)).contains(shortName(licence.get("license")));
      }
    }
    assertThat(listed).isEqualTo(first);
  }

  private static JsonNode bill() throws IOException {
    return new ObjectMapper().readTree(new File(System.getProperty(BILL))).get("components");
  }

  private static String row(String document, JsonNode component) {
    String start =
        "| " + component.get("name").asText() + " | " + component.get("version").asText() + " |";
    return document.lines().filter(line -> line.startsWith(start)).findFirst().orElse("");
  }

  private static String shortName(JsonNode licence) {
    return licence.has("id")
        ? licence.get("id").asText()
        : SHORT_NAMES.getOrDefault(licence.get("name").asText(), licence.get("name").asText());
  }

  private static Set<String> rows(Path document) throws IOException {
    return ROW.matcher(Files.readString(document))
        .results()
        .map(LicencesTest::jar)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static String jar(MatchResult row) {
    return row.group(1) + "-" + row.group(2);
  }

  private static Set<String> libraries() {
    return Pattern.compile(File.pathSeparator, Pattern.LITERAL)
        .splitAsStream(System.getProperty("java.class.path"))
        .map(entry -> Path.of(entry).getFileName().toString())
        .filter(name -> name.endsWith(".jar"))
        .map(name -> name.substring(0, name.length() - ".jar".length()))
        .filter(name -> !RUNNER.matcher(name).matches())
        .collect(Collectors.toCollection(TreeSet::new));
  }
}
