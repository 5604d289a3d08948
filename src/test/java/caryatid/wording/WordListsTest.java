package caryatid.wording;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Holds the bundles and the docs to plain words, and to one word for one thing. */
class WordListsTest {
  private static final Path BUNDLES = Path.of("src/main/resources/caryatid/wording");
  private static final String WORDS = "caryatid/words/";

  /** Where a metrologist's words are in place: page two, and what a plate's proof prints. */
  private static final Pattern PAGE_TWO =
      Pattern.compile("(Findings|Budget|SecondPage|StandTable|Proof|Hands|RepeatProblem)\\..*");

  @ParameterizedTest
  @EnumSource(Language.class)
  void noSentenceHasAWordThatIsNotToBeUsed(Language language) throws IOException {
    List<String> found = new ArrayList<>();
    List<Pattern> words = patterns(language.tag() + ".txt");
    sentences(language).forEach((key, text) -> found.addAll(found(words, key, text)));
    assertThat(found).isEmpty();
  }

  @ParameterizedTest
  @EnumSource(Language.class)
  void aMetrologistsWordsStandOnPageTwoOnly(Language language) throws IOException {
    List<String> found = new ArrayList<>();
    List<Pattern> words = patterns("metrology-" + language.tag() + ".txt");
    sentences(language)
        .forEach(
            (key, text) -> {
              if (!PAGE_TWO.matcher(key).matches()) {
                found.addAll(found(words, key, text));
              }
            });
    assertThat(found).isEmpty();
  }

  @Test
  void noPageOfTheDocsHasAWordThatIsNotToBeUsed() throws IOException {
    List<String> found = new ArrayList<>();
    List<Pattern> words = patterns("en.txt");
    for (Path page : pages()) {
      found.addAll(found(words, page.toString(), Files.readString(page)));
    }
    assertThat(found).isEmpty();
  }

  @Test
  void theListsFindWhatTheyAreToFindAndNoPartOfAnotherWord() throws IOException {
    assertThat(found(patterns("en.txt"), "sample", "Each landmark wants its word."))
        .containsExactly("sample: wants");
    assertThat(found(patterns("en.txt"), "sample", "The wearer is unwanted here.")).isEmpty();
    assertThat(found(patterns("de.txt"), "sample", "Der Träger steht auf dem Datenträger."))
        .containsExactly("sample: Träger");
    assertThat(found(patterns("fr.txt"), "sample", "Le plateau et la plateforme."))
        .containsExactly("sample: plateau");
    assertThat(found(patterns("es.txt"), "sample", "Nuevo registro."))
        .containsExactly("sample: registro");
    assertThat(found(patterns("metrology-en.txt"), "sample", "With 8 degrees of freedom."))
        .containsExactly("sample: degrees of freedom");
  }

  private static List<String> found(List<Pattern> words, String place, String text) {
    return words.stream()
        .flatMap(word -> word.matcher(text).results())
        .map(hit -> place + ": " + hit.group())
        .toList();
  }

  private static List<Pattern> patterns(String list) throws IOException {
    int flags = Pattern.UNICODE_CHARACTER_CLASS;
    return Files.readAllLines(Path.of("src/test/resources", WORDS + list)).stream()
        .filter(line -> !line.isBlank() && !line.startsWith("#"))
        .map(line -> Pattern.compile("\\b(" + line.strip() + ")\\b", flags))
        .toList();
  }

  private static List<Path> pages() throws IOException {
    try (Stream<Path> docs = Files.list(Path.of("docs"))) {
      return Stream.concat(Stream.of(Path.of("README.md")), docs.sorted())
          .filter(page -> page.toString().endsWith(".md"))
          .toList();
    }
  }

  private static Map<String, String> sentences(Language language) throws IOException {
    Map<String, String> all = new TreeMap<>();
    String end = language == Language.EN ? "" : "_" + language.tag().toLowerCase(Locale.ROOT);
    try (Stream<Path> files = Files.list(BUNDLES)) {
      for (Path file :
          files.filter(f -> f.toString().matches(".*/[a-z]+" + end + "\\.properties")).toList()) {
        Properties read = new Properties();
        try (Reader reader = Files.newBufferedReader(file)) {
          read.load(reader);
        }
        read.stringPropertyNames().forEach(key -> all.put(key, read.getProperty(key)));
      }
    }
    assertThat(all).hasSizeGreaterThan(400);
    return all;
  }
}
