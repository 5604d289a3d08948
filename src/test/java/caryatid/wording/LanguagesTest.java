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
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Holds the other languages against the English bundles. All that a report or a drawing can say is
 * translated; what is said of damaged input and at the command line is English.
 */
class LanguagesTest {
  private static final Path FOLDER = Path.of("src/main/resources/caryatid/wording");

  /** Problems and questions, which end a run before there is a report, and what inspect shows. */
  private static final Pattern ENGLISH_ONLY =
      Pattern.compile(
          "((Check|Clinic|Photograph)Problem|(State|Record|Identity)Question|Aspect|Basis|Delimiter|DecimalMark|InspectionText|Archived(?!\\.(ENTRY_|NEWER_|OTHER_PAGE|OTHER_PART|FOREIGN_|NOT_ON_|NEVER_))|Role|FormFault|Keeping|BagFault)\\..*");

  private static final Pattern PLACE_HOLDER = Pattern.compile("\\{\\d}");

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
  @CsvSource({
    "words, de", "words, fr", "words, es",
    "chart, de", "chart, fr", "chart, es",
    "report, de", "report, fr", "report, es",
    "alignment, de", "alignment, fr", "alignment, es",
    "loadline, de", "loadline, fr", "loadline, es",
    "standing, de", "standing, fr", "standing, es",
    "recording, de", "recording, fr", "recording, es",
    "fitting, de", "fitting, fr", "fitting, es",
    "record, de", "record, fr", "record, es",
    "recheck, de", "recheck, fr", "recheck, es",
    "web, de", "web, fr", "web, es",
    "sheet, de", "sheet, fr", "sheet, es",
  })
  void noKeyIsMissingAndNoneIsTooMany(String bundle, String language) throws IOException {
    Properties english = read(bundle + ".properties");
    english.keySet().removeIf(key -> ENGLISH_ONLY.matcher((String) key).matches());
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
    return PLACE_HOLDER
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
