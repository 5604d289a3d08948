package caryatid.recording.track;

import caryatid.recording.model.PlateTrack;
import caryatid.recording.model.RecordingRemark;
import caryatid.recording.model.Samples;
import caryatid.recording.table.StageMessages;
import caryatid.remark.Argument;
import java.util.BitSet;

/**
 * Remarks runs of 2 to 30 samples that stick out together: a step away from the samples before, and
 * one back to them. A person who shifts weight comes back more slowly.
 */
final class Bursts {
  private final PlateTrack track;
  private final BitSet samples = new BitSet();
  private int runs;

  private Bursts(PlateTrack track) {
    this.track = track;
  }

  /**
   * Looks for them.
   *
   * @param copMm smallest step of the centre of pressure, mm
   * @param forceN smallest step of the vertical force, N
   */
  static StageMessages of(PlateTrack track, double copMm, double forceN, String file) {
    Bursts bursts = new Bursts(track);
    track.copRightMm().ifPresent(right -> bursts.look(right, copMm));
    bursts.look(track.copAnteriorMm(), copMm);
    track.upN().ifPresent(up -> bursts.look(up, forceN));
    StageMessages nothing = StageMessages.none(file);
    return bursts.runs == 0
        ? nothing
        : nothing.withRemark(
            RecordingRemark.BURSTS,
            Argument.text(track.plate()),
            Argument.count(bursts.samples.cardinality()));
  }

  private void look(Samples series, double limit) {
    double[] values = series.shared();
    int i = 1;
    while (i < values.length) {
      double step = values[i] - values[i - 1];
      int end = Math.abs(step) > limit && usable(i) ? end(values, i, step) : i;
      if (end > i + 1) {
        samples.set(i, end);
        runs++;
      }
      i = end > i ? end + 1 : i + 1;
    }
  }

  /** One past the last sample of a run; its first where it does not come back. */
  private int end(double[] values, int from, double step) {
    double before = values[from - 1];
    for (int i = from + 1;
        i < values.length && i <= from + TrackLimits.LONGEST_BURST && usable(i);
        i++) {
      double back = values[i] - values[i - 1];
      boolean quick = Math.abs(back) > TrackLimits.BURST_BACK * Math.abs(step) && back * step < 0;
      if (quick && Math.abs(values[i] - before) < TrackLimits.BURST_BACK * Math.abs(step)) {
        return i;
      }
    }
    return from;
  }

  private boolean usable(int i) {
    return track.usable().at(i - 1) && track.usable().at(i);
  }
}
