package caryatid.wording;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Properties;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Holds the keys of the sentences against the texts that stand in the program's source. */
class NoKeyIsUnusedTest {
  private static final Path SOURCE = Path.of("src/main/java");
  private static final Path BUNDLES = Path.of("src/main/resources/caryatid/wording");
  private static final Pattern TEXT = Pattern.compile("\"((?:\\\\.|[^\"\\\\\\n])*)\"");

  /** Constants of enums, whose codes end as they are named. */
  private static final Pattern CONSTANT = Pattern.compile("(?m)^ +([A-Z][A-Z0-9_]+)(?:[(,;]|$)");

  /** What stands in the program's source. */
  private record Source(Set<String> texts, Set<String> constants) {}

  @Test
  void everyKeyIsWrittenInTheSource() throws IOException {
    Source source = source();
    assertThat(keys()).hasSizeGreaterThan(400).allMatch(key -> isUsed(key, source));
  }

  @Test
  void aKeyThatNothingMentionsIsFound() {
    Source source =
        new Source(
            Set.of("Row.", "FIRST", "both ways", "Heap.HIGH", ".reason"),
            Set.of("LAST", "UP_HILL"));
    assertThat(
            List.of(
                "Row.FIRST",
                "Row.LAST",
                "Row.7",
                "Row.LAST.FIRST",
                "Row.both-ways",
                "Row.up-hill",
                "Heap.HIGH",
                "Heap.HIGH.reason"))
        .allMatch(key -> isUsed(key, source));
    assertThat(
            List.of(
                "Rows.FIRST",
                "Row.SECOND",
                "Row.LAST.SECOND",
                "Heap.LOW",
                "Heap.HIGH.cause",
                "Heap.LOW.reason"))
        .noneMatch(key -> isUsed(key, source));
  }

  /**
   * As it is; as a beginning that ends with a dot, if each part of the rest is written somewhere
   * too; or as a key with something behind it.
   */
  private static boolean isUsed(String key, Source source) {
    if (source.texts().contains(key)) {
      return true;
    }
    for (int dot = key.indexOf('.'); dot > 0; dot = key.indexOf('.', dot + 1)) {
      boolean begun =
          source.texts().contains(key.substring(0, dot + 1))
              && isRestWritten(key.substring(dot + 1), source);
      boolean ended =
          source.texts().contains(key.substring(0, dot))
              && source.texts().contains(key.substring(dot));
      if (begun || ended) {
        return true;
      }
    }
    return false;
  }

  private static boolean isRestWritten(String rest, Source source) {
    return isWritten(rest, source)
        || Stream.of(rest.split("\\.")).allMatch(part -> isWritten(part, source));
  }

  /** As a text, its hyphens perhaps blanks; as a constant's name; or as a counted number. */
  private static boolean isWritten(String part, Source source) {
    return source.texts().contains(part)
        || source.texts().contains(part.replace('-', ' '))
        || source.constants().contains(part.toUpperCase(Locale.ROOT).replace('-', '_'))
        || part.matches("[1-9]");
  }

  private static Source source() throws IOException {
    Set<String> texts = new HashSet<>();
    Set<String> constants = new HashSet<>();
    try (Stream<Path> files = Files.walk(SOURCE)) {
      for (Path file : files.filter(f -> f.toString().endsWith(".java")).toList()) {
        String java = Files.readString(file);
        TEXT.matcher(java).results().forEach(found -> texts.add(found.group(1)));
        CONSTANT.matcher(java).results().forEach(found -> constants.add(found.group(1)));
      }
    }
    return new Source(texts, constants);
  }

  private static List<String> keys() throws IOException {
    Properties all = new Properties();
    try (Stream<Path> files = Files.list(BUNDLES)) {
      for (Path file : files.filter(f -> !f.getFileName().toString().contains("_")).toList()) {
        try (var in = Files.newBufferedReader(file)) {
          all.load(in);
        }
      }
    }
    return all.stringPropertyNames().stream().sorted().toList();
  }
}
