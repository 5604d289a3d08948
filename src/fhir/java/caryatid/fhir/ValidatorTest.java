package caryatid.fhir;

import static org.assertj.core.api.Assertions.assertThat;

import ca.uhn.fhir.context.FhirContext;
import ca.uhn.fhir.context.support.DefaultProfileValidationSupport;
import ca.uhn.fhir.validation.FhirValidator;
import ca.uhn.fhir.validation.ResultSeverityEnum;
import ca.uhn.fhir.validation.SingleValidationMessage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
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

  /** Probabilities have as many digits as in the result. */
  private static final String DIGITS =
      "WARNING The value '0.0...' is outside the range of commonly/reasonably supported decimals";

  private static final Map<String, Long> OF_THE_STORY =
      with(
          Map.of(
              result("inside too close"),
              1L,
              result("outside"),
              3L,
              result("within"),
              10L,
              DIGITS,
              2L));

  private static final Map<String, Long> OF_THE_SAMPLE =
      with(Map.of(result("inside too close"), 2L));

  @TempDir private static Path folder;
  private static FhirValidator validator;

  private static Map<String, Long> with(Map<String, Long> more) {
    Map<String, Long> all = new TreeMap<>(ALWAYS);
    all.putAll(more);
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

  @BeforeAll
  static void prepare() throws IOException {
    Made.story(folder);
    String m4 = "sample-recordings/m4/";
    Made.sample(
        folder,
        "M4-left",
        "transfemoral",
        "left",
        m4 + "barefoot.yaml",
        m4 + "plates.yaml",
        m4 + "barefoot.txt");
    validator = validator();
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

  static Stream<String> bundles() {
    return LANGUAGES.stream().flatMap(l -> Stream.of("K7-right " + l, "M4-left " + l));
  }

  @ParameterizedTest
  @MethodSource("bundles")
  void aBundleHasNoErrorAndItsOtherMessagesAreKnown(String codeAndLanguage) throws IOException {
    String[] words = codeAndLanguage.split(" ");
    Map<String, Long> said =
        messages(Made.bundle(folder, words[0], words[1])).stream()
            .collect(
                Collectors.groupingBy(
                    m ->
                        m.getSeverity()
                            + " "
                            + m.getMessage().replaceFirst("'0\\.0\\d{17}'", "'0.0...'"),
                    TreeMap::new,
                    Collectors.counting()));
    assertThat(said).isEqualTo(words[0].equals("K7-right") ? OF_THE_STORY : OF_THE_SAMPLE);
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
