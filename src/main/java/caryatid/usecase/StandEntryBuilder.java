package caryatid.usecase;

import caryatid.entry.KeptFile.Role;
import caryatid.fitting.Addition;
import caryatid.fitting.Addition.Attached;
import caryatid.fitting.StandEntry;
import caryatid.format.ResultJson;
import caryatid.recording.model.NamedBytes;
import caryatid.remark.BadInput;
import java.util.ArrayList;
import java.util.List;

/** A check as an entry of the fitting record, with everything it was found in. */
final class StandEntryBuilder {
  private StandEntryBuilder() {}

  /**
   * The addition to a record.
   *
   * @param report the report (PDF)
   * @param by initials of who adds it
   * @throws BadInput if a number is one that no entry holds
   */
  static Addition of(Inputs inputs, Check.Checked checked, byte[] report, String by)
      throws BadInput {
    List<Attached> files = new ArrayList<>();
    inputs.recordings().forEach(r -> files.add(new Attached(Role.RECORDING, r)));
    inputs.description().ifPresent(d -> files.add(new Attached(Role.DESCRIPTION, d)));
    files.add(new Attached(Role.SHEET, inputs.sheet()));
    checked.earlierSheets().forEach(s -> files.add(new Attached(Role.EARLIER_SHEET, s)));
    files.add(
        new Attached(
            Role.RESULT, NamedBytes.of(ResultJson.FILE_NAME, ResultJson.write(checked.result()))));
    files.add(new Attached(Role.REPORT, NamedBytes.of("report.pdf", report)));
    return StandEntry.addition(checked.result().state(), by, files);
  }
}
