package caryatid;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Holds the tables of docs/licences.md against the libraries the tests run with. */
class LicencesTest {
  private static final Pattern ROW = Pattern.compile("(?m)^\\| (\\S+) \\| (\\d\\S*) \\| ");

  /** What runs the tests and is no dependency of the project. */
  private static final Pattern RUNNER =
      Pattern.compile("surefire-.*|common-java5-.*|junit-platform-(launcher|reporting)-.*");

  @Test
  void eachLibraryHasItsRowAndEachRowItsLibrary() throws IOException {
    assertThat(rows(Path.of("docs", "licences.md")))
        .containsExactlyInAnyOrderElementsOf(libraries());
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
