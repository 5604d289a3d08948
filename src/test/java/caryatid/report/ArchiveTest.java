package caryatid.report;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import caryatid.alignment.AlignmentState;
import caryatid.alignment.Result;
import caryatid.demo.Demo;
import caryatid.demo.Worst;
import caryatid.format.ResultJson;
import caryatid.geometry.Plane;
import caryatid.geometry.Side;
import caryatid.loadline.LandmarkKind;
import caryatid.recording.model.Recording;
import caryatid.report.pages.Paper;
import caryatid.report.pdf.Attachments;
import caryatid.report.pdf.Attachments.AttachedFile;
import caryatid.report.pdf.Attachments.AttachmentRole;
import caryatid.wording.Wording;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Holds reports of every kind to the standards; the sample reports are held to them beside. */
class ArchiveTest {

  static Stream<Arguments> kinds() {
    Demo two = Demo.transtibial(Side.RIGHT);
    Demo knee = Demo.transfemoral(Side.LEFT);
    return Stream.of(
        Arguments.of("one stand", one(knee.notes()), knee.recording(), "en", Paper.A4),
        Arguments.of(
            "fullest, two plates",
            one(Worst.stand()),
            Worst.stand().recording(),
            "de",
            Paper.LETTER),
        Arguments.of(
            "three stands", two.resultOf(two.state(-6, 0, 6)), two.recording(), "fr", Paper.A4),
        Arguments.of(
            "before and after", two.resultOf(two.state(0)), two.recording(), "es", Paper.LETTER),
        Arguments.of("nine landmarks", one(nine()), nine().recording(), "en", Paper.A4),
        Arguments.of("two prostheses", one(both()), both().recording(), "de", Paper.A4),
        Arguments.of("no target", one(bare()), bare().recording(), "en", Paper.LETTER));
  }

  private static Result one(Demo demo) {
    return demo.result();
  }

  private static Demo both() {
    return Demo.transtibial(Side.RIGHT).bothSides();
  }

  private static Demo bare() {
    return Demo.empty(Side.RIGHT).landmark("knee", LandmarkKind.KNEE_CENTRE, 40, 85, 490, 4);
  }

  private static Demo nine() {
    Demo demo = Demo.empty(Side.RIGHT).line(80, 60);
    for (int i = 0; i < 9; i++) {
      demo.landmark("point " + i, LandmarkKind.OTHER, 40, 80, 80 + 100 * i, 3)
          .target(Plane.SAGITTAL, "point " + i, 15, 10, 10)
          .target(Plane.FRONTAL, "point " + i, 0, 10, 10);
    }
    return demo;
  }

  private static byte[] pdf(Result result, Recording recording, String language, Paper paper) {
    AlignmentState last = result.state();
    List<Recording> recordings = last.stands().stream().map(stand -> recording).toList();
    Attachments files =
        new Attachments(
            List.of(
                new AttachedFile(
                    AttachmentRole.RECORDING,
                    "stand.csv",
                    "t,Fz\n".getBytes(StandardCharsets.UTF_8)),
                new AttachedFile(
                    AttachmentRole.RESULT, ResultJson.FILE_NAME, ResultJson.write(result))));
    Wording wording = Wording.in(Locale.forLanguageTag(language));
    return Report.pdf(result, recordings, files, wording, paper);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("kinds")
  void everyKindOfReportKeepsTheStandards(
      String which, Result result, Recording recording, String language, Paper paper)
      throws Exception {
    Standards.assertKept(pdf(result, recording, language, paper));
  }

  /** The check can fail: a document without its metadata is found out. */
  @Test
  void aDocumentThatKeepsThemNotIsFoundOut() throws Exception {
    Demo demo = Demo.transtibial(Side.RIGHT);
    ByteArrayOutputStream spoilt = new ByteArrayOutputStream();
    try (PDDocument document =
        Loader.loadPDF(pdf(demo.result(), demo.recording(), "en", Paper.A4))) {
      document.getDocumentCatalog().getCOSObject().removeItem(COSName.METADATA);
      document.save(spoilt);
    }
    assertThatThrownBy(() -> Standards.assertKept(spoilt.toByteArray()))
        .isInstanceOf(AssertionError.class)
        .hasMessageContaining("shall contain the Metadata key");
  }
}
