package caryatid.workflow;

import caryatid.alignment.AlignmentState;
import caryatid.fitting.Addition;
import caryatid.fitting.KeptFile.Role;
import caryatid.fitting.Stands;
import caryatid.recording.NamedBytes;
import caryatid.report.ResultJson;
import java.util.ArrayList;
import java.util.List;

/**
 * Makes the entry that attaches a check to a fitting record: what was found, and every file of it.
 */
public final class StandEntry {
  private StandEntry() {}

  /**
   * The entry of a check's last state.
   *
   * @param by initials of who adds it
   * @param report the report's name and bytes
   */
  public static Addition of(Inputs inputs, Check.Checked checked, NamedBytes report, String by) {
    List<Addition.Attached> files = new ArrayList<>();
    inputs.recordings().forEach(file -> files.add(new Addition.Attached(Role.RECORDING, file)));
    files.add(new Addition.Attached(Role.SHEET, inputs.sheet()));
    inputs.description().ifPresent(f -> files.add(new Addition.Attached(Role.DESCRIPTION, f)));
    checked.earlierSheets().forEach(f -> files.add(new Addition.Attached(Role.EARLIER_SHEET, f)));
    NamedBytes result = NamedBytes.of(ResultJson.FILE_NAME, ResultJson.write(checked.result()));
    files.add(new Addition.Attached(Role.RESULT, result));
    files.add(new Addition.Attached(Role.REPORT, report));
    List<AlignmentState> states = checked.result().states();
    return Stands.addition(states.get(states.size() - 1), by, files);
  }
}
