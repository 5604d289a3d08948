package caryatid.usecase;

import caryatid.format.ResultJson;
import caryatid.recording.model.NamedBytes;
import caryatid.recording.model.Provenance;
import caryatid.remark.BadInput;
import caryatid.report.Report;
import caryatid.report.pages.Paper;
import caryatid.report.pdf.Attachments;
import caryatid.report.pdf.Attachments.AttachedFile;
import caryatid.report.pdf.Attachments.AttachmentRole;
import caryatid.wording.Wording;
import java.util.ArrayList;
import java.util.List;

/** The report of a check as a PDF, with all its inputs and the result attached. */
final class CheckPdf {
  private CheckPdf() {}

  /**
   * The report of a check as a PDF.
   *
   * @throws BadInput if an input can no longer be read
   */
  static byte[] pdf(Inputs inputs, Check.Checked checked, Wording wording, Paper paper)
      throws BadInput {
    return Report.pdf(
        checked.result(), checked.recordings(), attachments(inputs, checked), wording, paper);
  }

  static Attachments attachments(Inputs inputs, Check.Checked checked) throws BadInput {
    List<AttachedFile> files = new ArrayList<>();
    for (NamedBytes recording : inputs.recordings()) {
      files.add(attached(AttachmentRole.RECORDING, recording));
    }
    files.add(attached(AttachmentRole.TRIAL_SHEET, inputs.sheet()));
    if (inputs.description().isPresent()) {
      files.add(attached(AttachmentRole.PLATE_DESCRIPTION, inputs.description().get()));
    }
    for (NamedBytes sheet : checked.earlierSheets()) {
      files.add(attached(AttachmentRole.OTHER_SHEET, sheet));
    }
    if (inputs.earlier().isPresent()) {
      files.add(attached(AttachmentRole.EARLIER_STATES, inputs.earlier().get()));
    }
    files.add(
        new AttachedFile(
            AttachmentRole.RESULT, ResultJson.FILE_NAME, ResultJson.write(checked.result())));
    return new Attachments(files);
  }

  private static AttachedFile attached(AttachmentRole role, NamedBytes file) throws BadInput {
    return new AttachedFile(role, Provenance.fileName(file.name()), file.readAll());
  }
}
