package caryatid.blackbox;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A stand that somebody types: its result is computed, and it is marked as typed. */
class TypedStandTest {
  @TempDir private Path folder;
  private Clinic clinic;

  @BeforeEach
  void startRecord() {
    clinic = new Clinic(folder.resolve("records"));
    clinic.start();
  }

  private Run stand(String offset, String expanded, String... more) {
    List<String> all =
        new ArrayList<>(
            List.of(
                "stand",
                "--by",
                "AB",
                "footwear=boot",
                "findings[1].plane=sagittal",
                "findings[1].side=right",
                "findings[1].landmark=knee centre",
                "findings[1].offset-mm=" + offset,
                "findings[1].expanded-mm=" + expanded,
                "findings[1].recommended-mm=20",
                "findings[1].below-mm=15",
                "findings[1].above-mm=15",
                "findings[1].source=instructions (invented)"));
    all.addAll(Arrays.asList(more));
    return clinic.record("add", "K7-right", all.toArray(String[]::new));
  }

  @Test
  void aTypedResultIsRefused() {
    assertThat(stand("20", "8", "findings[1].result=within"))
        .isEqualTo(
            new Run(
                1,
                "",
                "command line: findings[1].result is computed from the other numbers. Leave it"
                    + " out.\n"));
  }

  /**
   * By hand with the normal distribution: u = 8/1.96 = 4.08; one-sided 95 % lies 1.645 u = 6.71
   * inside or beyond the limits 5 and 35.
   */
  @ParameterizedTest
  @CsvSource({
    "20, tolerance met",
    "28.2, tolerance met",
    "28.4, undecided: 7 mm within the tolerance",
    "41.6, undecided: 7 mm beyond the tolerance",
    "41.8, tolerance not met"
  })
  void theResultIsComputedFromTheTypedNumbers(String offset, String result) {
    stand(offset, "8");
    assertThat(clinic.record("show", "K7-right").out().replace('\u00a0', ' '))
        .contains(result + ", typed, no recording\n", "static alignment, typed, no recording\n");
  }

  @Test
  void withoutAnUncertaintyNoResultCanBeComputed() {
    assertThat(stand("20", "0").err())
        .isEqualTo(
            "stand: findings[1].expanded-mm: expected more than 0. Without an uncertainty no result"
                + " can be computed. Give the half-width of the offset's 95 % interval, or leave"
                + " the finding out.\n");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "en| typed, no recording",
        "de| eingetippt, ohne Aufzeichnung",
        "fr| saisi, sans enregistrement",
        "es| tecleado, sin grabación"
      })
  void theMarkStandsInTheReportWithEveryNumber(String language, String mark) throws IOException {
    stand("50", "8");
    Path pdf = folder.resolve("report.pdf");
    clinic.record("report", "K7-right", "--out", pdf.toString(), "--language", language);
    try (PDDocument document = Loader.loadPDF(Files.readAllBytes(pdf))) {
      String text = new PDFTextStripper().getText(document).replaceAll("[\\s\u00a0]+", " ");
      // The table of offsets, what is open, and the timeline; shorter below the drawing.
      assertThat(text.split(mark, -1)).hasSize(4);
      String shorter = mark.substring(0, mark.indexOf(','));
      assertThat(text.split("2 " + shorter + "(?!,)", -1)).hasSize(2);
    }
  }

  @Test
  void theFormDoesNotAskForTheResult() {
    assertThat(clinic.record("form", "stand").out()).contains("offset-mm").doesNotContain("result");
  }

  @Test
  void aHandThatHoldsGivesNoResultAndNobodyIsAskedToLetGo() throws IOException {
    Path sheet = folder.resolve("sheet.yaml");
    String text = Files.readString(Path.of("sample-recordings/story/stand-1.yaml"));
    Files.writeString(
        sheet,
        text.contains("hands:")
            ? text.replaceFirst("(?m)^hands:.*", "hands: holding")
            : text + "\nhands: holding\n");
    Run run =
        Run.caryatid(
            "check",
            "sample-recordings/story/stand-1.csv",
            "--trial",
            sheet.toString(),
            "--plate",
            "sample-recordings/k7/plate.yaml",
            "--out",
            folder.toString());
    assertThat(run.code()).isEqualTo(1);
    assertThat(run.out()).isEmpty();
    assertThat(run.err())
        .endsWith(
            "no result: a hand holds on, and the plate does not show what it bears. If the wearer"
                + " needs the support, keep it: align by the instructions and by walking, and note"
                + " it with `record add CODE walking`. If a light touch is enough, record again"
                + " with hands: touching, between the rails and with help at hand.\n");
  }
}
