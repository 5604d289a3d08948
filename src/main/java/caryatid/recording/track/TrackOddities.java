package caryatid.recording.track;

import caryatid.recording.model.PlateTrack;
import caryatid.recording.model.RecordingRemark;
import caryatid.recording.model.Samples;
import caryatid.recording.table.StageMessages;
import caryatid.remark.Argument;
import caryatid.remark.Unit;
import java.util.BitSet;

/** Remarks on single samples that stick out, on a force at its end of range, on repeated rows. */
final class TrackOddities {
  private final PlateTrack track;
  private final double copSpike;
  private final StageMessages nothing;

  TrackOddities(PlateTrack track, String file) {
    this(track, TrackLimits.SPIKE_MM, file);
  }

  /**
   * @param copSpike by how much a centre of pressure leaves its neighbours in a spike, in the
   *     track's own unit
   */
  TrackOddities(PlateTrack track, double copSpike, String file) {
    this.track = track;
    this.copSpike = copSpike;
    this.nothing = StageMessages.none(file);
  }

  StageMessages remarks() {
    int used = track.usable().count();
    if (used < 3) {
      return nothing;
    }
    double meanN = track.upN().map(up -> sum(up) / used).orElse(0.0);
    return spikes(TrackLimits.SPIKE_FRACTION * meanN)
        .and(track.upN().map(this::saturation).orElse(nothing))
        .and(repeats(used));
  }

  private StageMessages spikes(double forceN) {
    BitSet spikes = new BitSet();
    boolean steps = spikes(track.copAnteriorMm(), copSpike, spikes);
    steps |= track.copRightMm().filter(right -> spikes(right, copSpike, spikes)).isPresent();
    steps |= track.upN().filter(up -> spikes(up, forceN, spikes)).isPresent();
    track.horizontal().ifPresent(h -> spikes(h.rightN(), forceN, spikes));
    track.horizontal().ifPresent(h -> spikes(h.anteriorN(), forceN, spikes));
    StageMessages single =
        spikes.isEmpty()
            ? nothing
            : nothing.withRemark(
                RecordingRemark.SPIKES, plate(), Argument.count(spikes.cardinality()));
    return steps ? single.and(Bursts.of(track, copSpike, forceN, nothing.file())) : single;
  }

  private StageMessages repeats(int used) {
    int repeated = repeated();
    return repeated > TrackLimits.REPEATED_ROWS * used
        ? nothing.withRemark(
            RecordingRemark.REPEATED, plate(), Argument.of(100.0 * repeated / used, Unit.PERCENT))
        : nothing;
  }

  private Argument plate() {
    return Argument.text(track.plate());
  }

  private static double sum(Samples series) {
    double sum = 0;
    for (int i = 0; i < series.size(); i++) {
      sum += series.at(i);
    }
    return sum;
  }

  /** Marks the samples of a series that stick out, and tells whether any step is so large. */
  private boolean spikes(Samples series, double limit, BitSet spikes) {
    boolean steps = false;
    double before = series.at(0);
    double here = series.at(1);
    double[] values = series.shared();
    for (int i = 2; i < values.length; i++) {
      double after = values[i];
      double step = here - before;
      if (Math.abs(step) > limit) {
        steps = true;
        spikes.set(
            i - 1, spikes.get(i - 1) || sticksOut(step, after - here, limit) && usable(i - 1));
      }
      before = here;
      here = after;
    }
    return steps;
  }

  /** Whether a step back follows a step, both beyond the limit. */
  private static boolean sticksOut(double step, double next, double limit) {
    return step > 0 ? -next > limit : next > limit;
  }

  private boolean usable(int i) {
    return track.usable().at(i - 1) && track.usable().at(i) && track.usable().at(i + 1);
  }

  private StageMessages saturation(Samples up) {
    double largest = 0;
    int times = 0;
    int different = 0;
    for (int i = 0; i < up.size(); i++) {
      if (up.at(i) > largest) {
        largest = up.at(i);
        times = 0;
      }
      times += up.at(i) == largest ? 1 : 0;
      different += i > 0 && up.at(i) != up.at(i - 1) ? 1 : 0;
    }
    return times >= TrackLimits.SATURATED_SAMPLES && different > times
        ? nothing.withRemark(
            RecordingRemark.SATURATED, plate(), Argument.count(times), Argument.of(largest, Unit.N))
        : nothing;
  }

  private int repeated() {
    Samples anterior = track.copAnteriorMm();
    Samples right = track.copRightMm().orElse(anterior);
    Samples up = track.upN().orElse(right);
    int repeated = 0;
    for (int i = 1; i < right.size(); i++) {
      boolean same = right.at(i) == right.at(i - 1) && anterior.at(i) == anterior.at(i - 1);
      if (same && up.at(i) == up.at(i - 1) && track.usable().at(i) && track.usable().at(i - 1)) {
        repeated++;
      }
    }
    return repeated;
  }
}
