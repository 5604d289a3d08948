package caryatid.recording;

import caryatid.remark.Argument;
import caryatid.remark.Unit;
import java.util.BitSet;

/**
 * Which samples of a plate cannot be used, and why: no number, no load, or a centre of pressure
 * where no plate is.
 */
final class UnusableSamples {
  /** A larger share far from any plate is no accident (common practice, no source). */
  private static final double MOST_FAR = 0.05;

  private final RawPlate raw;
  private final Load load;
  private final String plate;
  private final boolean edgesKnown;
  private final Notebook notes;

  UnusableSamples(RawPlate raw, Load load, PlateLayout layout, Notebook notes) {
    this.edgesKnown = layout.size().isPresent();
    this.raw = raw;
    this.load = load;
    this.plate = layout.name();
    this.notes = notes;
  }

  /** The samples; each kind is remarked with its count. */
  BitSet find(double[] right, double[] anterior, double rateHz) {
    BitSet missing = (BitSet) raw.holes().clone();
    missing.andNot(load.unloaded());
    remark(RecordingRemark.MISSING, missing);
    BitSet unusable = (BitSet) load.unloaded().clone();
    unusable.or(raw.holes());
    if (load.known()) {
      remark(RecordingRemark.UNLOADED, load.unloaded());
      unusable.or(far(right, anterior, unusable));
    } else {
      BitSet empty = UnloadedPattern.of(right, anterior, rateHz);
      empty.andNot(missing);
      remark(RecordingRemark.UNLOADED_PATTERN, empty);
      unusable.or(empty);
    }
    return unusable;
  }

  private void remark(RecordingRemark remark, BitSet samples) {
    remark(remark, samples, plate, notes);
  }

  /** Says how many samples of a plate were left out; nothing where there are none. */
  static void remark(RecordingRemark remark, BitSet samples, String plate, Notebook notes) {
    if (!samples.isEmpty()) {
      notes.remark(
          remark,
          Argument.text(plate),
          Argument.count(samples.cardinality()),
          Argument.of(Load.LEAST_N, Unit.N));
    }
  }

  private BitSet far(double[] right, double[] anterior, BitSet unusable) {
    BitSet far = new BitSet();
    for (int i = 0; i < right.length; i++) {
      if (UnloadedPattern.far(right[i], anterior[i]) && !unusable.get(i)) {
        far.set(i);
      }
    }
    int used = right.length - unusable.cardinality();
    if (far.cardinality() <= MOST_FAR * used) {
      remark(RecordingRemark.FAR_OFF, far);
      return far;
    }
    if (!edgesKnown) {
      notes.problem(
          Reading.FAR_OFF,
          Argument.text(plate),
          Argument.count(far.cardinality()),
          Argument.count(used));
    }
    // Where the edges are known, they tell more of so many.
    return new BitSet();
  }
}
