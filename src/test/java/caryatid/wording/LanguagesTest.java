package caryatid.wording;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.entry.BenchItem;
import caryatid.entry.EntryKind;
import caryatid.entry.WalkingDeviation;
import caryatid.entry.form.Answers;
import caryatid.entry.form.EntryForms;
import caryatid.entry.form.Field;
import caryatid.entry.form.FieldType;
import caryatid.entry.form.Form;
import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Holds the other languages against the English bundles: every sentence is in all of them. */
class LanguagesTest {
  private static final Path FOLDER = Path.of("src/main/resources/caryatid/wording");

  /** Words that a language shares with English, units among them; in lower case. */
  private static final Map<String, Set<String>> SHARED =
      Map.of(
          "de",
          words(
              "anterior posterior lateral medial sagittal frontal transtibial transfemoral stand"
                  + " in name"),
          "fr",
          words(
              "sagittal frontal transtibial note notes source conclusion observations phase point"
                  + " force moment contractures suspension circumduction signature date direction"),
          "es",
          words("anterior posterior lateral medial frontal transtibial transfemoral liner"));

  private static final Set<String> UNITS = words("mm cm kg ms us min");

  /** Typed as it is in every language. */
  private static final Set<String> TYPED = words("yes no");

  private static final Pattern WORD = Pattern.compile("\\p{L}{2,}");
  private static final Pattern PLACE_HOLDER = Pattern.compile("\\{\\d}");

  /** Keys and commands between backticks, options, and lines of YAML. */
  private static final Pattern LITERAL =
      Pattern.compile("`[^`]*`|(?<![\\w-])--[a-z-]+|[a-z][a-z-]*: [\\[{]+[a-z][^}\\]]*[}\\]]");

  /** Bundles are read one by one until a key is found, so none may stand in two. */
  @Test
  void aKeyStandsInOneBundleOnly() throws IOException {
    Set<String> seen = new TreeSet<>();
    try (Stream<Path> files = Files.list(FOLDER)) {
      for (Path file :
          files.filter(f -> !f.toString().matches(".*_\\w\\w\\.properties")).toList()) {
        for (String key : read(file.getFileName().toString()).stringPropertyNames()) {
          assertThat(seen.add(key)).as(key).isTrue();
        }
      }
    }
    assertThat(seen).hasSizeGreaterThan(400);
  }

  @Test
  void thereAreBundlesOfTheLanguagesThatCanBeChosenAndOfNoOther() throws IOException {
    try (Stream<Path> files = Files.list(FOLDER)) {
      assertThat(files.map(f -> f.getFileName().toString()).map(LanguagesTest::language))
          .containsOnly(Stream.of(Language.values()).map(Language::tag).toArray(String[]::new));
    }
  }

  private static String language(String bundle) {
    int mark = bundle.indexOf('_');
    return mark < 0 ? Language.EN.tag() : bundle.substring(mark + 1, bundle.indexOf('.'));
  }

  @ParameterizedTest
  @MethodSource("translations")
  void noKeyIsMissingNoneIsTooManyAndThePlaceHoldersAreTheSame(String bundle, String language)
      throws IOException {
    Properties english = read(bundle + ".properties");
    Properties translated = read(bundle + "_" + language + ".properties");
    assertThat(new TreeSet<>(translated.stringPropertyNames()))
        .isEqualTo(new TreeSet<>(english.stringPropertyNames()));
    for (String key : english.stringPropertyNames()) {
      assertThat(holders(translated.getProperty(key)))
          .as(key)
          .isEqualTo(holders(english.getProperty(key)));
      assertThat(translated.getProperty(key)).as(key).isNotBlank();
    }
  }

  @ParameterizedTest
  @MethodSource("translations")
  void nothingIsLeftInEnglishButWordsThatBothLanguagesHave(String bundle, String language)
      throws IOException {
    Properties english = read(bundle + ".properties");
    Properties translated = read(bundle + "_" + language + ".properties");
    for (String key : english.stringPropertyNames()) {
      String sentence = english.getProperty(key);
      if (sentence.equals(translated.getProperty(key))) {
        assertThat(unshared(sentence, language)).as(key).isEmpty();
      }
    }
  }

  @Test
  void aSentenceLeftInEnglishIsFound() {
    assertThat(unshared("Force, N", "fr")).isEmpty();
    assertThat(unshared("Force, N", "de")).containsExactly("force");
    assertThat(unshared("the point ({0})", "fr")).containsExactly("the");
  }

  @ParameterizedTest
  @MethodSource("translations")
  void whatIsToBeTypedIsTheSameInEveryLanguage(String bundle, String language) throws IOException {
    Properties english = read(bundle + ".properties");
    Properties translated = read(bundle + "_" + language + ".properties");
    for (String key : english.stringPropertyNames()) {
      assertThat(all(LITERAL, translated.getProperty(key)))
          .as(key)
          .isEqualTo(all(LITERAL, english.getProperty(key)));
    }
  }

  private static Stream<Arguments> translations() throws IOException {
    try (Stream<Path> files = Files.list(FOLDER)) {
      List<String> bundles =
          files
              .map(f -> f.getFileName().toString().replace(".properties", ""))
              .filter(name -> !name.contains("_"))
              .sorted()
              .toList();
      assertThat(bundles).hasSizeGreaterThan(14);
      return bundles.stream()
          .flatMap(
              bundle ->
                  Stream.of("de", "fr", "es").map(language -> Arguments.of(bundle, language)));
    }
  }

  private static Set<String> unshared(String sentence, String language) {
    return WORD.matcher(sentence)
        .results()
        .map(found -> found.group().toLowerCase(Locale.ROOT))
        .filter(word -> !SHARED.get(language).contains(word))
        .filter(word -> !UNITS.contains(word) && !TYPED.contains(word))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static Set<String> words(String words) {
    return Set.of(words.split(" "));
  }

  /** Every word that forms offer, every item and every deviation has its own in each language. */
  @ParameterizedTest
  @EnumSource
  void everythingAnEntryCanSayHasAWord(Language language) {
    Wording wording = Wording.in(language.locale());
    for (EntryKind kind : EntryKind.values()) {
      assertThat(wording.word(kind)).isNotBlank();
      assertWorded(EntryForms.of(kind), new EntryWords(wording));
    }
    for (BenchItem item : BenchItem.values()) {
      assertThat(wording.word(item)).isNotBlank();
    }
    for (WalkingDeviation deviation : WalkingDeviation.values()) {
      assertThat(wording.word(deviation)).isNotBlank();
      assertThat(wording.word("WalkingDeviation." + deviation.name() + ".POINTS_TO")).isNotBlank();
      assertThat(wording.word(deviation.source())).isNotBlank();
    }
  }

  private static void assertWorded(Form form, EntryWords words) {
    for (Field field : form.fields()) {
      assertThat(words.label(field.key())).isNotBlank();
      if (field.type() instanceof FieldType.Rows rows) {
        assertWorded(rows.form(), words);
      } else if (field.type() instanceof FieldType.Choice choice) {
        choice
            .words()
            .forEach(
                w -> assertThat(words.value(field.key(), new Answers.Value.Words(w))).isNotBlank());
      }
    }
  }

  private static Set<String> holders(String sentence) {
    return all(PLACE_HOLDER, sentence);
  }

  private static Set<String> all(Pattern pattern, String sentence) {
    return pattern
        .matcher(sentence)
        .results()
        .map(result -> result.group())
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static Properties read(String file) throws IOException {
    Properties properties = new Properties();
    try (Reader reader = Files.newBufferedReader(FOLDER.resolve(file))) {
      properties.load(reader);
    }
    return properties;
  }
}
