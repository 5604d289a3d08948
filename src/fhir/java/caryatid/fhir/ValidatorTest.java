package caryatid.fhir;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import ca.uhn.fhir.context.FhirContext;
import ca.uhn.fhir.context.support.DefaultProfileValidationSupport;
import ca.uhn.fhir.validation.FhirValidator;
import ca.uhn.fhir.validation.ResultSeverityEnum;
import ca.uhn.fhir.validation.SingleValidationMessage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hl7.fhir.common.hapi.validation.support.CommonCodeSystemsTerminologyService;
import org.hl7.fhir.common.hapi.validation.support.InMemoryTerminologyServerValidationSupport;
import org.hl7.fhir.common.hapi.validation.support.PrePopulatedValidationSupport;
import org.hl7.fhir.common.hapi.validation.support.SnapshotGeneratingValidationSupport;
import org.hl7.fhir.common.hapi.validation.support.ValidationSupportChain;
import org.hl7.fhir.common.hapi.validation.validator.FhirInstanceValidator;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The bundles before an independent validator, with the project's definitions in docs/fhir. */
class ValidatorTest {
  private static final List<String> LANGUAGES = List.of("en", "de", "fr", "es");
  private static final FhirContext R4 = FhirContext.forR4();

  /** Recommendations alone: the program has codes of its own, and no words about the patient. */
  private static final Map<String, Long> ALWAYS =
      Map.of(
          "INFORMATION None of the codings provided are in the value set 'Document Type Value Set'"
              + " (http://hl7.org/fhir/ValueSet/c80-doc-typecodes|4.0.1), and a coding is"
              + " recommended to come from this value set (codes ="
              + " http://caryatid.invalid/fhir/CodeSystem/record#fitting-record)",
          1L,
          "WARNING Constraint failed: dom-6: 'A resource should have narrative for robust"
              + " management' (defined in http://hl7.org/fhir/StructureDefinition/DomainResource)"
              + " (Best Practice Recommendation)",
          1L);

  private static final Pattern INTERPRETATION =
      Pattern.compile("\"interpretation\" : \\[[^]]*?\"code\" : \"([^\"]*)\"");

  /** Probabilities have as many digits as in the result. */
  private static final Pattern LONG = Pattern.compile("(?<=: )-?\\d+\\.\\d{18,}(?=[,\n])");

  @TempDir private static Path folder;
  private static FhirValidator validator;

  /** All that is said of a bundle, and how often. */
  private static Map<String, Long> expected(String bundle) {
    Map<String, Long> all = new TreeMap<>(ALWAYS);
    INTERPRETATION
        .matcher(bundle)
        .results()
        .forEach(found -> all.merge(result(found.group(1)), 1L, Long::sum));
    LONG.matcher(bundle)
        .results()
        .forEach(found -> all.merge(digits(found.group()), 1L, Long::sum));
    return all;
  }

  /** The standard's own results are of laboratories: normal, high, low. */
  private static String result(String code) {
    return "WARNING None of the codings provided are in the value set 'Observation Interpretation"
        + " Codes' (http://hl7.org/fhir/ValueSet/observation-interpretation|4.0.1), and a coding"
        + " should come from this value set unless it has no suitable code (note that the"
        + " validator cannot judge what is suitable) (codes ="
        + " http://caryatid.invalid/fhir/CodeSystem/record#"
        + code
        + ")";
  }

  private static String digits(String number) {
    return "WARNING The value '"
        + number
        + "' is outside the range of commonly/reasonably supported decimals";
  }

  @BeforeAll
  static void prepare() throws IOException {
    validator = validator();
    Made.samples(folder);
  }

  private static FhirValidator validator() throws IOException {
    PrePopulatedValidationSupport own = new PrePopulatedValidationSupport(R4);
    for (Path file : definitions()) {
      own.addResource(R4.newJsonParser().parseResource(Files.readString(file)));
    }
    ValidationSupportChain chain =
        new ValidationSupportChain(
            new DefaultProfileValidationSupport(R4),
            own,
            new CommonCodeSystemsTerminologyService(R4),
            new InMemoryTerminologyServerValidationSupport(R4),
            new SnapshotGeneratingValidationSupport(R4));
    return R4.newValidator().registerValidatorModule(new FhirInstanceValidator(chain));
  }

  private static List<Path> definitions() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("docs/fhir"))) {
      return files.sorted().toList();
    }
  }

  private static List<SingleValidationMessage> messages(Path file) throws IOException {
    return validator.validateWithResult(Files.readString(file)).getMessages();
  }

  private static void assertKnown(Path bundle) throws IOException {
    Map<String, Long> said =
        messages(bundle).stream()
            .collect(
                Collectors.groupingBy(
                    m -> m.getSeverity() + " " + m.getMessage(),
                    TreeMap::new,
                    Collectors.counting()));
    assertThat(said).as(bundle.toString()).isEqualTo(expected(Files.readString(bundle)));
  }

  static Stream<Arguments> bundlesOfSamples() {
    return Made.SAMPLES.stream().flatMap(code -> LANGUAGES.stream().map(l -> arguments(code, l)));
  }

  @ParameterizedTest
  @MethodSource("bundlesOfSamples")
  void theBundleOfASampleHasNoErrorAndItsOtherMessagesAreKnown(String code, String language)
      throws IOException {
    assertKnown(Made.bundle(folder, code, language));
  }

  /** After each entry one, in a language by turns; of the last state one in each. */
  @Test
  void eachBundleOfTheStoryHasNoErrorAndItsOtherMessagesAreKnown() throws IOException {
    List<Path> bundles = new ArrayList<>();
    Made.story(
        folder,
        () -> {
          Path bundle = Made.bundle(folder, "K7-right", LANGUAGES.get(bundles.size() % 4));
          bundles.add(bundle.resolveSibling(bundles.size() + ".json"));
          Files.move(bundle, bundles.get(bundles.size() - 1));
        });
    assertThat(bundles).hasSize(23);
    for (String language : LANGUAGES) {
      bundles.add(Made.bundle(folder, "K7-right", language));
    }
    for (Path bundle : bundles) {
      assertKnown(bundle);
    }
  }

  @Test
  void theDefinitionsHaveNoError() throws IOException {
    for (Path file : definitions()) {
      assertThat(messages(file))
          .as(file.toString())
          .filteredOn(m -> m.getSeverity().ordinal() >= ResultSeverityEnum.ERROR.ordinal())
          .extracting(SingleValidationMessage::getMessage)
          .isEmpty();
    }
  }
}
