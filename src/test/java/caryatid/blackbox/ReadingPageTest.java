package caryatid.blackbox;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Holds the page of what is read and refused against the specimens and the tests. */
class ReadingPageTest {
  private static final Path PAGE = Path.of("src/test/resources/caryatid/recording/reading.md");
  private static final Path TESTS = Path.of("src/test/java/caryatid");
  private static final Path SPECIMENS = Path.of("src/test/resources/caryatid/recording/specimens");
  private static final Pattern FILE = Pattern.compile("`([a-z0-9-]+\\.(?:csv|txt|xlsx))`");
  private static final Pattern METHOD = Pattern.compile("`([A-Z]\\w+Test)\\.(\\w+)`");

  private static List<MatchResult> named(Pattern pattern) throws IOException {
    return pattern.matcher(Files.readString(PAGE)).results().toList();
  }

  @Test
  void everySpecimenIsOnThePageAndTheOtherWayRound() throws IOException {
    Set<String> onThePage =
        named(FILE).stream().map(m -> m.group(1)).collect(Collectors.toCollection(TreeSet::new));
    try (Stream<Path> files = Files.list(SPECIMENS)) {
      Set<String> there =
          files
              .map(f -> f.getFileName().toString())
              .filter(n -> n.matches(".*\\.(csv|txt|xlsx)"))
              .collect(Collectors.toCollection(TreeSet::new));
      assertThat(onThePage).isEqualTo(there);
    }
  }

  @Test
  void everyTestOnThePageIsThere() throws IOException {
    for (MatchResult test : named(METHOD)) {
      assertThat(source(test.group(1)))
          .as(test.group())
          .containsPattern("void " + test.group(2) + "\\(");
    }
  }

  private static String source(String test) throws IOException {
    try (Stream<Path> files = Files.walk(TESTS)) {
      Path file =
          files
              .filter(f -> f.getFileName().toString().equals(test + ".java"))
              .findFirst()
              .orElseThrow();
      return Files.readString(file);
    }
  }
}
