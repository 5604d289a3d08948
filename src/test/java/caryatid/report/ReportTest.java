package caryatid.report;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.alignment.Result;
import caryatid.demo.Demo;
import caryatid.demo.PdfText;
import caryatid.format.ResultJson;
import caryatid.geometry.Side;
import caryatid.report.pages.Paper;
import caryatid.report.pdf.Attachments;
import caryatid.report.pdf.Attachments.AttachedFile;
import caryatid.report.pdf.Attachments.AttachmentRole;
import caryatid.wording.Wording;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;

class ReportTest {
  private static final Wording ENGLISH = Wording.in(Locale.ENGLISH);
  private static final Demo DEMO = Demo.transfemoral(Side.LEFT).notes();
  private static final Result RESULT = DEMO.result();
  private static final Attachments FILES =
      new Attachments(
          List.of(
              new AttachedFile(
                  AttachmentRole.RECORDING,
                  "demo-stand.csv",
                  "t,Fz\n".getBytes(StandardCharsets.UTF_8)),
              new AttachedFile(
                  AttachmentRole.RESULT, ResultJson.FILE_NAME, ResultJson.write(RESULT))));

  private static byte[] pdf(Paper paper) {
    return Report.pdf(RESULT, List.of(DEMO.recording()), FILES, ENGLISH, paper);
  }

  @Test
  void theSameInputGivesTheSameBytes() {
    assertThat(pdf(Paper.A4)).isEqualTo(pdf(Paper.A4));
  }

  @Test
  void theTableCanBeReadAsTextInItsOrder() throws IOException {
    assertThat(PdfText.lines(pdf(Paper.A4)))
        .containsSubsequence(
            "Load line in standing: DEMO-7, left leg",
            "○ Undecided: 7 of 8 results. Measure again before changing.",
            "prosthetic knee axis",
            "Conclusion Line at the knee",
            "+18.0 anterior 9.2 +15.0 (+5.0 to +25.0)",
            "−12.0 medial 10.9 −5.0 (−20.0 to +10.0)",
            "Sources: 1\u00a0Demo instructions, page 12 (in shoes).",
            "Cautions",
            "Not a medical device. For licensed practitioners.");
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
}
