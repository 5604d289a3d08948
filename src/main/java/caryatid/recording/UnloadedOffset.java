package caryatid.recording;

import caryatid.geometry.Axes;
import caryatid.recording.Channel.Quantity;
import caryatid.remark.Argument;
import caryatid.remark.Unit;
import java.util.BitSet;
import java.util.OptionalInt;

/**
 * What a plate shows while nobody stands on it: its offset. The longest unloaded stretch of half a
 * second or more counts; each channel's mean in it is subtracted when the description asks for
 * that, and a vertical offset is remarked otherwise.
 */
final class UnloadedOffset {
  /** A shorter stretch is a step on or off (common practice, no source). */
  private static final double SHORTEST_S = 0.5;

  /** A smaller offset matters to nobody, N (common practice, no source). */
  private static final double NOTEWORTHY_N = 2;

  private final RawPlate raw;
  private final Axes axes;
  private final Load load;
  private final String plate;
  private final Notebook notes;

  UnloadedOffset(RawPlate raw, Axes axes, Load load, String plate, Notebook notes) {
    this.raw = raw;
    this.axes = axes;
    this.load = load;
    this.plate = plate;
    this.notes = notes;
  }

  /**
   * Subtracts or remarks; true if something was subtracted, so that the load has to be seen anew.
   */
  boolean handle(boolean remove, double rateHz) {
    Channel vertical = Channel.of(Quantity.FORCE, axes.up().axis());
    if (!raw.has(vertical)) {
      return false;
    }
    int shortest = (int) Math.ceil(SHORTEST_S * rateHz);
    OptionalInt start = longest(shortest);
    if (start.isEmpty()) {
      if (remove) {
        notes.remark(RecordingRemark.NEVER_UNLOADED, Argument.text(plate));
      }
      return false;
    }
    int from = start.getAsInt();
    int to = load.unloaded().nextClearBit(from);
    double offset = mean(raw.at(vertical).orElseThrow(), from, to);
    if (remove) {
      subtract(from, to);
      notes.remark(RecordingRemark.OFFSET_REMOVED, Argument.text(plate), newton(offset));
    } else if (Math.abs(offset) > NOTEWORTHY_N) {
      notes.remark(RecordingRemark.OFFSET, Argument.text(plate), newton(offset));
    }
    return remove;
  }

  private static Argument newton(double value) {
    return Argument.of(value, Unit.N);
  }

  private OptionalInt longest(int shortest) {
    BitSet unloaded = load.unloaded();
    int best = -1;
    int length = shortest - 1;
    for (int from = unloaded.nextSetBit(0); from >= 0; ) {
      int to = unloaded.nextClearBit(from);
      if (to - from > length) {
        best = from;
        length = to - from;
      }
      from = unloaded.nextSetBit(to);
    }
    return best < 0 ? OptionalInt.empty() : OptionalInt.of(best);
  }

  private void subtract(int from, int to) {
    for (Channel channel : Channel.values()) {
      if (channel.quantity() != Quantity.COP && raw.has(channel)) {
        double[] series = raw.at(channel).orElseThrow();
        double offset = mean(series, from, to);
        for (int i = 0; i < series.length; i++) {
          series[i] -= offset;
        }
      }
    }
  }

  private static double mean(double[] series, int from, int to) {
    double sum = 0;
    for (int i = from; i < to; i++) {
      sum += series[i];
    }
    return sum / (to - from);
  }
}
