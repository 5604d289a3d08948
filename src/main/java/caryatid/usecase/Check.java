package caryatid.usecase;

import caryatid.alignment.AlignmentState;
import caryatid.alignment.Result;
import caryatid.alignment.Stand;
import caryatid.alignment.StateAnalysis;
import caryatid.recording.importer.Importer;
import caryatid.recording.model.NamedBytes;
import caryatid.recording.model.Recording;
import caryatid.remark.BadInput;
import java.util.ArrayList;
import java.util.List;

/**
 * Checks the stands of one alignment state: named bytes in, one result out, nothing else touched.
 */
public final class Check {
  private Check() {}

  /**
   * A result and what it was found in, for drawing and keeping.
   *
   * @param result what was found
   * @param recordings the recordings, in the order of the inputs
   * @param earlierSheets the sheets that the trial sheet is based on, newest first
   */
  public record Checked(
      Result result, List<Recording> recordings, List<NamedBytes> earlierSheets) {}

  /**
   * Checks the load line of one alignment state against its targets.
   *
   * @throws BadInput if an input cannot be used
   */
  public static Checked run(Inputs inputs) throws BadInput {
    EarlierSheetFinder beside = new EarlierSheetFinder(inputs.beside());
    TrialContext setting = TrialContext.read(inputs, beside);
    List<Recording> recordings = new ArrayList<>();
    List<Stand> stands = new ArrayList<>();
    for (NamedBytes file : inputs.recordings()) {
      Recording recording = Importer.read(file, setting.plate());
      recordings.add(recording);
      stands.add(stand(setting, recording, file.name()));
    }
    DuplicateInputCheck.check(inputs, recordings, beside.used());
    AlignmentState state = StateAnalysis.of(stands, setting.doubts());
    return new Checked(
        new Result(Result.METHOD, Program.NAME, state), List.copyOf(recordings), beside.used());
  }

  /**
   * A recording knows its file without the folders before it; a problem names it as it was given.
   */
  private static Stand stand(TrialContext setting, Recording recording, String given)
      throws BadInput {
    try {
      return setting.stand(recording);
    } catch (BadInput e) {
      String bare = recording.provenance().name();
      throw new BadInput(
          e.problems().stream().map(p -> p.place().file().equals(bare) ? p.in(given) : p).toList());
    }
  }
}
