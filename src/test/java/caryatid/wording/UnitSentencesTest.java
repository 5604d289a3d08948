package caryatid.wording;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.recording.model.ForceUnit;
import caryatid.recording.model.LengthUnit;
import caryatid.recording.model.MomentUnit;
import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Properties;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Sentences that list the units which can be read name every one of them. */
class UnitSentencesTest {
  private static final Path FOLDER = Path.of("src/main/resources/caryatid/wording");

  @ParameterizedTest
  @ValueSource(strings = {"", "_de", "_fr", "_es"})
  void anUnknownUnitIsAnsweredByAllThatAreKnown(String language) throws IOException {
    String sentence = sentence("recording" + language, "Reading.UNKNOWN_UNIT");
    assertThat(symbols()).allSatisfy(unit -> assertThat(sentence).containsPattern(word(unit)));
  }

  /** With a place for the distance in each unit, in the order of the constants. */
  @ParameterizedTest
  @ValueSource(strings = {"", "_de", "_fr", "_es"})
  void theQuestionAboutTheUnitOfLengthNamesEach(String language) throws IOException {
    String asked = sentence("recording" + language, "Reading.COP_UNIT");
    String inWindow = sentence("web" + language, "Web.ask.Reading.COP_UNIT");
    for (LengthUnit unit : LengthUnit.values()) {
      String place = "{" + (unit.ordinal() + 1) + "}";
      assertThat(asked).contains(place).containsPattern(word(unit.symbol()));
      assertThat(inWindow).contains(place);
    }
  }

  private static Stream<String> symbols() {
    return Stream.of(
            Arrays.stream(ForceUnit.values()).map((ForceUnit unit) -> unit.symbol()),
            Arrays.stream(MomentUnit.values()).map((MomentUnit unit) -> unit.symbol()),
            Arrays.stream(LengthUnit.values()).map((LengthUnit unit) -> unit.symbol()))
        .flatMap(each -> each);
  }

  private static String word(String unit) {
    return "\\b" + Pattern.quote(unit) + "\\b";
  }

  private static String sentence(String bundle, String key) throws IOException {
    Properties words = new Properties();
    try (Reader in = Files.newBufferedReader(FOLDER.resolve(bundle + ".properties"))) {
      words.load(in);
    }
    return words.getProperty(key);
  }
}
