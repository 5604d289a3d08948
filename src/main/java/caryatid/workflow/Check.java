package caryatid.workflow;

import caryatid.alignment.Result;
import caryatid.recording.Recording;
import caryatid.remark.BadInput;
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
    throw new UnsupportedOperationException("not built yet");
  }
}
