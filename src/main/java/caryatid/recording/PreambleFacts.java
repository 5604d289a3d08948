package caryatid.recording;

import caryatid.recording.Understood.Basis;
import caryatid.remark.Argument;
import caryatid.remark.Unit;

/** Notes what the lines above a table state, and holds it against the table. */
final class PreambleFacts {
  private final Preamble preamble;
  private final Notebook notes;

  PreambleFacts(Preamble preamble, Notebook notes) {
    this.preamble = preamble;
    this.notes = notes;
  }

  void note(int rows) {
    preamble.rows().ifPresent(stated -> compare(Math.round(stated.value()), rows));
    preamble
        .plateSize()
        .ifPresent(text -> notes.understood(Aspect.PLATE_SIZE, Basis.STATED, Argument.text(text)));
    preamble
        .rateHz()
        .ifPresent(
            rate ->
                notes.understood(
                    Aspect.RATE,
                    Basis.STATED,
                    Argument.of(rate.value(), Unit.HZ),
                    Argument.count(rate.line())));
  }

  private void compare(long stated, int rows) {
    if (stated == rows) {
      notes.understood(Aspect.ROWS_AGREE, Basis.STATED, Argument.count(stated));
    } else {
      notes.remark(RecordingRemark.ROWS_STATED, Argument.count(stated), Argument.count(rows));
    }
  }
}
