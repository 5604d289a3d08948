package caryatid.altered;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.blackbox.Frozen;
import caryatid.blackbox.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Altered reports end with exit code 1, and say what was altered; untouched ones do not. */
class AlteredReportsTest {
  private static final Path TODAYS = Path.of("reports/m4-shoe.pdf");
  private static final Path FIRST = Frozen.V1.resolve("reports/m4-de.pdf");

  @TempDir private Path folder;

  static Stream<Arguments> alterations() {
    List<Arguments> all = new ArrayList<>();
    Alteration.ofAnyLayout().forEach(a -> all.add(Arguments.of(TODAYS, a)));
    Alteration.ofTodaysLayout().forEach(a -> all.add(Arguments.of(TODAYS, a)));
    Alteration.ofFiles(Path.of("reports/k7-shoe.pdf"))
        .forEach(a -> all.add(Arguments.of(TODAYS, a)));
    Alteration.ofAnyLayout().forEach(a -> all.add(Arguments.of(FIRST, a)));
    Alteration.ofFiles(Frozen.V1.resolve("reports/k7-based-on.pdf"))
        .forEach(a -> all.add(Arguments.of(FIRST, a)));
    return all.stream();
  }

  @ParameterizedTest(name = "{0}: {1}")
  @MethodSource("alterations")
  void anAlteredReportIsNamed(Path report, Alteration alteration) throws IOException {
    Path altered = folder.resolve("altered.pdf");
    Files.write(altered, alteration.of(Files.readAllBytes(report)));
    Run run = Run.caryatid("check", altered.toString());
    assertThat(run.code()).as(run.out() + run.err()).isEqualTo(1);
    assertThat(run.err()).contains(alteration.named()).doesNotContain("\tat ");
  }

  /** A word moved, as another build of the version may print it: the numbers are all there. */
  @Test
  void pagesThatAnotherBuildMayHavePrintedAreNotCalledAltered() throws IOException {
    Path moved = folder.resolve("moved.pdf");
    Alteration word = Alteration.ofTodaysLayout().get(0);
    Files.write(moved, word.of(Files.readAllBytes(TODAYS)));
    Run run = Run.caryatid("check", moved.toString());
    assertThat(run.code()).isEqualTo(1);
    assertThat(run.out()).contains("\u00d7 tolerance not met");
    assertThat(run.err())
        .isEqualTo(
            moved
                + ": the result inside, made by Caryatid 0.2.0, is reproduced from the files inside"
                + " the report. Its pages show the same numbers, but are not what this program"
                + " prints (page 1): another build of the same version made them, or words or"
                + " drawings on them were altered. Go by the result, not by the pages; to have pages"
                + " that can be checked, print the report again.\n");
  }

  @ParameterizedTest
  @CsvSource({"en, A4", "de, LETTER", "fr, A4", "es, LETTER"})
  void anUntouchedReportIsReproducedInWhateverLanguageAndPaper(String language, String paper) {
    String k7 = "sample-recordings/k7/";
    Run made =
        Run.caryatid(
            "check",
            k7 + "barefoot-1.csv",
            k7 + "barefoot-2.csv",
            "--trial",
            k7 + "barefoot.yaml",
            "--plate",
            k7 + "plate.yaml",
            "--language",
            language,
            "--paper",
            paper,
            "--out",
            folder.toString());
    assertThat(made.code()).as(made.err()).isZero();
    Run again = Run.caryatid("check", folder.resolve("barefoot-1-report.pdf").toString());
    assertThat(again.err()).isEmpty();
    assertThat(again.code()).isZero();
    assertThat(again.out()).contains("is reproduced from the files inside it");
  }
}
