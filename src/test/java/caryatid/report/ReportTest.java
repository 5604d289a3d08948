package caryatid.report;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.alignment.Result;
import caryatid.demo.Demo;
import caryatid.geometry.Side;
import caryatid.report.Attachments.Attached;
import caryatid.report.Attachments.Role;
import caryatid.wording.Wording;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.ValidationResult;

class ReportTest {
  private static final Wording ENGLISH = Wording.in(Locale.ENGLISH);
  private static final Demo DEMO = Demo.transfemoral(Side.LEFT).notes();
  private static final Result RESULT = DEMO.result();
  private static final Attachments FILES =
      new Attachments(
          List.of(
              new Attached(
                  Role.RECORDING, "demo-stand.csv", "t,Fz\n".getBytes(StandardCharsets.UTF_8)),
              new Attached(Role.RESULT, ResultJson.FILE_NAME, ResultJson.write(RESULT))));

  private static byte[] pdf(Paper paper) {
    return Report.pdf(RESULT, List.of(DEMO.recording()), FILES, ENGLISH, paper);
  }

  @Test
  void theSameInputGivesTheSameBytes() {
    assertThat(pdf(Paper.A4)).isEqualTo(pdf(Paper.A4));
  }

  @Test
  void theTableCanBeReadAsTextInItsOrder() throws IOException {
    assertThat(text(pdf(Paper.A4)))
        .containsSubsequence(
            "Load line in standing: DEMO-7",
            "sagittal",
            "knee centre",
            "+18.0 anterior 9.1 +15.0 +5.0 to +25.0",
            "measured inside, too",
            "−12.0 medial 10.9 −5.0 −20.0 to +10.0",
            "Conclusion Line at the knee",
            "Cautions",
            "Change nothing under load.");
  }

  private static String text(byte[] pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      return new PDFTextStripper().getText(document);
    }
  }

  @Test
  void everyFontIsEmbedded() throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf(Paper.A4))) {
      for (var page : document.getPages()) {
        for (COSName name : page.getResources().getFontNames()) {
          assertThat(page.getResources().getFont(name).isEmbedded()).isTrue();
        }
      }
    }
  }

  /** Validation by an independent program against ISO 19005-3 level A and ISO 14289-1. */
  @ParameterizedTest
  @EnumSource(names = {"PDFA_3_A", "PDFUA_1"})
  void followsTheStandardsForArchivesAndForAccess(PDFAFlavour flavour) throws Exception {
    VeraGreenfieldFoundryProvider.initialise();
    try (PDFAParser parser =
        Foundries.defaultInstance()
            .createParser(new ByteArrayInputStream(pdf(Paper.A4)), flavour)) {
      ValidationResult found =
          Foundries.defaultInstance().createValidator(flavour, false).validate(parser);
      assertThat(
              found.getTestAssertions().stream()
                  .map(Object::toString)
                  .collect(Collectors.joining("\n")))
          .isEmpty();
      assertThat(found.isCompliant()).isTrue();
    }
  }
}
