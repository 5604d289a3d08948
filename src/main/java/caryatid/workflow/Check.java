package caryatid.workflow;

import caryatid.alignment.AlignmentState;
import caryatid.alignment.Result;
import caryatid.alignment.Stand;
import caryatid.alignment.StateAnalysis;
import caryatid.loadline.DecisionRule;
import caryatid.recording.Importer;
import caryatid.recording.NamedBytes;
import caryatid.recording.Recording;
import caryatid.remark.BadInput;
import java.util.ArrayList;
import java.util.List;

/** The main job as one pure call. */
public final class Check {
  private Check() {}

  /**
   * A result and the recordings it was found in, for drawing.
   *
   * @param result what was found
   * @param recordings the recordings, in the order of the inputs
   */
  public record Checked(Result result, List<Recording> recordings) {}

  /**
   * Checks the load line of one alignment state against its targets.
   *
   * @throws BadInput if an input cannot be used
   */
  public static Checked run(Inputs inputs) throws BadInput {
    Setting setting = Setting.read(inputs);
    List<Recording> recordings = new ArrayList<>();
    List<Stand> stands = new ArrayList<>();
    for (NamedBytes file : inputs.recordings()) {
      Recording recording = Importer.read(file, setting.plate());
      recordings.add(recording);
      stands.add(setting.stand(recording));
    }
    AlignmentState state = StateAnalysis.of(stands, setting.doubts(), DecisionRule.USUAL);
    return new Checked(
        new Result(Result.VERSION, Program.NAME, List.of(state)), List.copyOf(recordings));
  }
}
