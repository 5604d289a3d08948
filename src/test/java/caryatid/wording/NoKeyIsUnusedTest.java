package caryatid.wording;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Properties;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Holds the keys of the sentences against the texts that stand in the program's source. */
class NoKeyIsUnusedTest {
  private static final Path SOURCE = Path.of("src/main/java");
  private static final Path BUNDLES = Path.of("src/main/resources/caryatid/wording");
  private static final Pattern TEXT = Pattern.compile("\"((?:\\\\.|[^\"\\\\\\n])*)\"");

  @Test
  void everyKeyIsWrittenInTheSource() throws IOException {
    Set<String> texts = texts();
    assertThat(keys()).hasSizeGreaterThan(400).allMatch(key -> isUsed(key, texts));
  }

  @Test
  void aKeyThatNothingMentionsIsFound() {
    Set<String> texts = Set.of("Row.", "Heap.HIGH", ".reason");
    assertThat(List.of("Row.FIRST", "Heap.HIGH", "Heap.HIGH.reason"))
        .allMatch(key -> isUsed(key, texts));
    assertThat(List.of("Rows.FIRST", "Heap.LOW", "Heap.HIGH.cause", "Heap.LOW.reason"))
        .noneMatch(key -> isUsed(key, texts));
  }

  /** As it is, as a beginning that ends with a dot, or as a key with something behind it. */
  private static boolean isUsed(String key, Set<String> texts) {
    if (texts.contains(key)) {
      return true;
    }
    for (int dot = key.indexOf('.'); dot > 0; dot = key.indexOf('.', dot + 1)) {
      boolean begun = texts.contains(key.substring(0, dot + 1));
      boolean ended = texts.contains(key.substring(0, dot)) && texts.contains(key.substring(dot));
      if (begun || ended) {
        return true;
      }
    }
    return false;
  }

  private static Set<String> texts() throws IOException {
    Set<String> texts = new HashSet<>();
    try (Stream<Path> files = Files.walk(SOURCE)) {
      for (Path file : files.filter(f -> f.toString().endsWith(".java")).toList()) {
        Matcher found = TEXT.matcher(Files.readString(file));
        while (found.find()) {
          texts.add(found.group(1));
        }
      }
    }
    return texts;
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
