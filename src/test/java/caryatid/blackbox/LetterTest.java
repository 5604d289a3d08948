package caryatid.blackbox;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The samples of one stand take two pages on either paper, in every language. */
class LetterTest {
  @TempDir private Path folder;

  @ParameterizedTest
  @CsvSource({
    "A4, en",
    "A4, de",
    "A4, fr",
    "A4, es",
    "Letter, en",
    "Letter, de",
    "Letter, fr",
    "Letter, es"
  })
  void noPageHoldsAFewLinesOnly(String paper, String language) throws IOException {
    Path m4 = Path.of("sample-recordings/m4").toAbsolutePath();
    Run run =
        Run.caryatid(
            "check",
            m4.resolve("barefoot.txt").toString(),
            "--trial",
            m4.resolve("barefoot.yaml").toString(),
            "--plate",
            m4.resolve("plates.yaml").toString(),
            "--out",
            folder.toString(),
            "--paper",
            paper,
            "--language",
            language);
    assertThat(run.err()).isEmpty();
    try (PDDocument document = Loader.loadPDF(folder.resolve("barefoot-report.pdf").toFile())) {
      assertThat(document.getNumberOfPages()).isEqualTo(2);
    }
  }
}
