package caryatid.blackbox;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.demo.PdfText;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Where a prosthetic knee may bend, what to do comes before any result, and is all that is said.
 */
class SafetyFirstTest {
  private static final Path SAMPLES = Path.of("sample-recordings/m4");

  /** What is said where the line runs behind the knee's axis. */
  private static final Map<String, String> BEHIND =
      Map.of(
          "en",
          "The knee may bend. Seat the wearer, or hands on the rails and a helper. Correct"
              + " it, then stand again.",
          "de",
          "Das Knie kann einknicken. Den Anwender sich setzen lassen, oder Hände"
              + " an den Gehbarren und eine Hilfsperson dazu. Den Aufbau korrigieren, dann erneut"
              + " stehen lassen.",
          "fr",
          "Le genou peut se dérober. Asseoir le porteur, ou mains sur les barres parallèles et"
              + " une personne pour l'aider. Corriger l'alignement, puis refaire l'essai"
              + " debout.",
          "es",
          "La rodilla puede ceder. Sentar al usuario, o manos en las barras paralelas y otra"
              + " persona para ayudarle. Corregir la alineación y después repetir el ensayo de"
              + " pie.");

  /** The same where it may. */
  private static final Map<String, String> MAY_BE =
      Map.of(
          "en",
          "The knee may bend. Hands on the rails and a helper. Stand again; if still in"
              + " doubt, follow the knee's instructions.",
          "de",
          "Das Knie kann einknicken. Hände an den Gehbarren und eine Hilfsperson"
              + " dazu. Erneut stehen lassen; bleiben Zweifel, die Gebrauchsanweisung des Knies"
              + " befolgen.",
          "fr",
          "Le genou peut se dérober. Mains sur les barres parallèles et une personne pour"
              + " aider. Refaire l'essai debout ; si le doute persiste, suivre la notice du genou.",
          "es",
          "La rodilla puede ceder. Manos en las barras paralelas y otra persona para ayudar."
              + " Repetir el ensayo de pie; si persiste la duda, seguir las instrucciones de la"
              + " rodilla.");

  /** What must come after it. */
  private static final Map<String, String> RESULT =
      Map.of("en", "undecided", "de", "unentschieden", "fr", "indécis", "es", "sin decidir");

  /** What must not be said. */
  private static final Map<String, String> REPEAT =
      Map.of(
          "en", "measure again before changing",
          "de", "erst erneut messen, dann ändern",
          "fr", "remesurer avant de modifier",
          "es", "medir de nuevo antes de modificar");

  /** Nor this: the remark, the table of page two, the line below the table of page one. */
  private static final Map<String, List<String>> ADVICE =
      Map.of(
          "en",
          List.of("would help most:", "repeat: to", "below it says what would help most"),
          "de",
          List.of("meisten hilft:", "wiederholen: auf", "was am meisten helfen würde"),
          "fr",
          List.of("aiderait le plus :", "répéter : à", "ce qui aiderait le plus"),
          "es",
          List.of("más ayudaría:", "repetir: a", "qué ayudaría más"));

  @TempDir private Path folder;

  @ParameterizedTest
  @ValueSource(strings = {"en", "de", "fr", "es"})
  void aLineBehindTheKneeIsToldFirst(String language) throws IOException {
    told(language, 316, BEHIND.get(language));
  }

  /** 6 mm in front of the axis, give or take 18. */
  @ParameterizedTest
  @ValueSource(strings = {"en", "de", "fr", "es"})
  void aLineThatMayBeBehindTheKneeIsToldFirst(String language) throws IOException {
    told(language, 290, MAY_BE.get(language));
  }

  /** 24 mm in front, give or take 18, and the tolerance undecided. */
  @ParameterizedTest
  @ValueSource(strings = {"en", "de", "fr", "es"})
  void whereTheKneeIsSafeOneIsToldToRepeat(String language) throws IOException {
    Run run = check(language, 272);
    assertThat(run.out()).containsIgnoringCase(REPEAT.get(language));
    assertThat(pdf()).containsIgnoringCase(REPEAT.get(language));
    assertThat(plain(run.out() + pdf())).contains(ADVICE.get(language));
  }

  private void told(String language, int kneeForwardMm, String sentence) throws IOException {
    Run run = check(language, kneeForwardMm);
    assertThat(plain(run.out().lines().findFirst().orElseThrow())).contains(sentence);
    comesFirst(run.out(), language, sentence);
    comesFirst(pdf(), language, sentence);
    String html = Files.readString(folder.resolve("shoe-report.html"));
    comesFirst(html.replaceAll("(?s)<style>.*?</style>|<[^>]*>", " "), language, sentence);
  }

  private static void comesFirst(String page, String language, String sentence) {
    String text = plain(page);
    assertThat(text).containsSubsequence(sentence, RESULT.get(language));
    assertThat(text.indexOf(RESULT.get(language))).isGreaterThan(text.indexOf(sentence));
    assertThat(text).doesNotContainIgnoringCase(REPEAT.get(language));
    assertThat(text).doesNotContain(ADVICE.get(language));
  }

  private static String plain(String page) {
    return page.replace("&#39;", "'").replaceAll("[\\s\u00a0\u202f]+", " ");
  }

  private Run check(String language, int kneeForwardMm) throws IOException {
    String sheet = Files.readString(SAMPLES.resolve("shoe.yaml"));
    Path changed = folder.resolve("sheet.yaml");
    Files.writeString(changed, sheet.replace("forward-mm: 316", "forward-mm: " + kneeForwardMm));
    Run run =
        Run.caryatid(
            "check",
            SAMPLES.resolve("shoe.txt").toString(),
            "--trial",
            changed.toString(),
            "--plate",
            SAMPLES.resolve("plates.yaml").toString(),
            "--language",
            language,
            "--out",
            folder.toString(),
            "--forms",
            "pdf,html");
    assertThat(run.err()).isEmpty();
    assertThat(run.code()).isZero();
    return run;
  }

  private String pdf() throws IOException {
    return PdfText.running(Files.readAllBytes(folder.resolve("shoe-report.pdf")));
  }
}
