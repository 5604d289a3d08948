package caryatid.recording.time;

import caryatid.recording.model.ImportFact;
import caryatid.recording.model.RecordingRemark;
import caryatid.recording.model.UnderstoodFact.Basis;
import caryatid.recording.table.Preamble;
import caryatid.recording.table.Preamble.Stated;
import caryatid.recording.table.StageMessages;
import caryatid.remark.Argument;
import caryatid.remark.Unit;
import java.util.Optional;

/** What the lines above a table state, and whether the table agrees. */
public final class PreambleFacts {
  private final Preamble preamble;
  private final String file;

  public PreambleFacts(Preamble preamble, String file) {
    this.preamble = preamble;
    this.file = file;
  }

  /**
   * What they state.
   *
   * @param rows how many rows the table has
   */
  public StageMessages of(int rows) {
    StageMessages messages = StageMessages.none(file);
    Optional<Stated> count = preamble.rows();
    if (count.isPresent()) {
      messages = compared(Math.round(count.get().value()), rows, messages);
    }
    Optional<String> size = preamble.plateSize();
    if (size.isPresent()) {
      messages = messages.withFact(ImportFact.PLATE_SIZE, Basis.STATED, Argument.text(size.get()));
    }
    Optional<Stated> rate = preamble.rateHz();
    if (rate.isPresent()) {
      messages =
          messages.withFact(
              ImportFact.RATE,
              Basis.STATED,
              Argument.of(rate.get().value(), Unit.HZ),
              Argument.count(rate.get().line()));
    }
    return messages;
  }

  /** Remarks a recording that is shorter than the lines above the table state. */
  StageMessages shorter(Timeline timeline) {
    StageMessages nothing = StageMessages.none(file);
    double lastsS = timeline.size() / timeline.rateHz();
    return preamble
        .durationS()
        .filter(
            stated ->
                lastsS + 2 / timeline.rateHz() < stated.value() * (1 - TimeLimits.DURATION_ROUNDED))
        .map(
            stated ->
                nothing.withRemark(
                    RecordingRemark.DURATION_STATED,
                    Argument.of(stated.value(), Unit.S),
                    Argument.of(lastsS, Unit.S)))
        .orElse(nothing);
  }

  private static StageMessages compared(long stated, int rows, StageMessages earlier) {
    return stated == rows
        ? earlier.withFact(ImportFact.ROWS_AGREE, Basis.STATED, Argument.count(stated))
        : earlier.withRemark(
            RecordingRemark.ROWS_STATED, Argument.count(stated), Argument.count(rows));
  }
}
