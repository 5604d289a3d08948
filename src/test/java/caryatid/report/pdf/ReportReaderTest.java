package caryatid.report.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import caryatid.alignment.Result;
import caryatid.demo.Demo;
import caryatid.format.ResultJson;
import caryatid.geometry.Side;
import caryatid.remark.BadInput;
import caryatid.report.Report;
import caryatid.report.pages.Paper;
import caryatid.report.pdf.Attachments.AttachedFile;
import caryatid.report.pdf.Attachments.AttachmentRole;
import caryatid.wording.Wording;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;

class ReportReaderTest {
  private static final Wording ENGLISH = Wording.in(Locale.ENGLISH);
  private static final Result RESULT = Demo.transtibial(Side.RIGHT).result();

  private static byte[] pdf(Attachments attachments) {
    return Report.pdf(RESULT, List.of(), attachments, ENGLISH, Paper.A4);
  }

  private static byte[] noise(int size) {
    byte[] bytes = new byte[size];
    new Random(size).nextBytes(bytes);
    return bytes;
  }

  @Test
  void whatWasPutInComesOutByteForByteAndTheResultIsTheSame() throws BadInput {
    Attachments in =
        new Attachments(
            List.of(
                new AttachedFile(AttachmentRole.RECORDING, "stand-1.csv", noise(100_001)),
                new AttachedFile(AttachmentRole.RECORDING, "stand-2.csv", noise(7)),
                new AttachedFile(AttachmentRole.TRIAL_SHEET, "blatt größe.yaml", noise(0)),
                new AttachedFile(AttachmentRole.PLATE_DESCRIPTION, "plate.yaml", noise(55)),
                new AttachedFile(
                    AttachmentRole.RESULT, ResultJson.FILE_NAME, ResultJson.write(RESULT))));
    Attachments out = ReportReader.read("report.pdf", pdf(in));
    assertThat(out.files())
        .extracting(AttachedFile::role)
        .containsExactlyElementsOf(in.files().stream().map(AttachedFile::role).toList());
    for (int i = 0; i < in.files().size(); i++) {
      assertThat(out.files().get(i).name()).isEqualTo(in.files().get(i).name());
      assertThat(out.files().get(i).bytes()).isEqualTo(in.files().get(i).bytes());
    }
    assertThat(ResultJson.read(out.files().get(4).bytes())).isEqualTo(RESULT);
  }

  @Test
  void aReportWithoutItsFilesIsSaid() {
    assertThat(refusal(pdf(Attachments.NONE)))
        .isEqualTo(
            "report.pdf: has no recording, trial sheet and result inside, so there is nothing to"
                + " compute again. Give the report of a stand; a record's report is not checked, its"
                + " record is: `record verify CODE`.");
  }

  @Test
  void whatIsNoPdfIsSaid() {
    byte[] text = "no pdf".getBytes(StandardCharsets.UTF_8);
    assertThat(refusal(text))
        .startsWith("report.pdf: expected a report as PDF, found something else (")
        .endsWith("). Give a report as the program wrote it.");
  }

  private static String refusal(byte[] bytes) {
    BadInput refused =
        catchThrowableOfType(BadInput.class, () -> ReportReader.read("report.pdf", bytes));
    return ENGLISH.say(refused.problems().get(0));
  }
}
