package caryatid.wording;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.remark.Topic;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Holds the bundles against the topics of the program. */
class EveryTopicHasItsSentenceTest {
  private static final Path BUNDLES = Path.of("src/main/resources/caryatid/wording");

  @Test
  void everyTopicOfTheProgramHasASentence() {
    Wording wording = Wording.in(Locale.ENGLISH);
    assertThat(topics())
        .isNotEmpty()
        .allSatisfy(topic -> assertThat(wording.word(topic.code())).isNotBlank());
  }

  @Test
  void aSentenceStandsOnceAlthoughTheBundlesAreSeveral() throws IOException {
    Set<String> seen = new HashSet<>();
    assertThat(keys().filter(key -> !seen.add(key))).isEmpty();
  }

  private static Stream<String> keys() throws IOException {
    try (Stream<Path> files = Files.list(BUNDLES)) {
      List<Path> english =
          files.filter(f -> !f.getFileName().toString().contains("_")).sorted().toList();
      return english.stream().flatMap(EveryTopicHasItsSentenceTest::keys);
    }
  }

  private static Stream<String> keys(Path bundle) {
    try {
      return Files.readAllLines(bundle).stream()
          .filter(line -> line.contains("=") && !line.startsWith("#"))
          .map(line -> line.substring(0, line.indexOf('=')).strip());
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  private static List<Topic> topics() {
    return new ClassFileImporter()
        .importUrl(Topic.class.getProtectionDomain().getCodeSource().getLocation()).stream()
            .filter(type -> type.isEnum() && type.isAssignableTo(Topic.class))
            .map(JavaClass::reflect)
            .flatMap(type -> Arrays.stream(type.getEnumConstants()))
            .map(Topic.class::cast)
            .toList();
  }
}
