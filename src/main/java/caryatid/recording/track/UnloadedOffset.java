package caryatid.recording.track;

import caryatid.geometry.Axes;
import caryatid.recording.model.Channel;
import caryatid.recording.model.Channel.Quantity;
import caryatid.recording.model.RecordingRemark;
import caryatid.recording.table.Outcome;
import caryatid.recording.table.SampleSeries;
import caryatid.recording.table.StageMessages;
import caryatid.remark.Argument;
import caryatid.remark.Unit;
import java.util.BitSet;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * The offset of a plate: what it shows while it is unloaded. The longest unloaded stretch of half a
 * second or more counts; each channel's mean in it is subtracted when the description asks for
 * that, and a vertical offset is remarked otherwise.
 */
final class UnloadedOffset {
  private final RawPlate raw;
  private final Axes axes;
  private final LoadedSamples load;
  private final String plate;
  private final StageMessages nothing;

  UnloadedOffset(RawPlate raw, Axes axes, LoadedSamples load, String plate, String file) {
    this.raw = raw;
    this.axes = axes;
    this.load = load;
    this.plate = plate;
    this.nothing = StageMessages.none(file);
  }

  /**
   * Subtracts or remarks.
   *
   * @return the plate without its offset, of which the load has to be seen again; empty where
   *     nothing was subtracted
   */
  Outcome<Optional<RawPlate>> handle(boolean remove, double rateHz) {
    Optional<SampleSeries> vertical = raw.at(Channel.of(Quantity.FORCE, axes.up().axis()));
    if (vertical.isEmpty()) {
      return new Outcome<>(Optional.empty(), nothing);
    }
    OptionalInt start = longest((int) Math.ceil(TrackLimits.UNLOADED_S * rateHz));
    if (start.isEmpty()) {
      return new Outcome<>(
          Optional.empty(),
          remove
              ? nothing.withRemark(RecordingRemark.NEVER_UNLOADED, Argument.text(plate))
              : nothing);
    }
    int from = start.getAsInt();
    int to = load.unloaded().nextClearBit(from);
    double offset = vertical.get().mean(from, to);
    return remove
        ? new Outcome<>(
            Optional.of(raw.withoutOffset(from, to)),
            remarked(RecordingRemark.OFFSET_REMOVED, offset))
        : new Outcome<>(
            Optional.empty(),
            Math.abs(offset) > TrackLimits.NOTEWORTHY_OFFSET_N
                ? remarked(RecordingRemark.OFFSET, offset)
                : nothing);
  }

  private StageMessages remarked(RecordingRemark remark, double offsetN) {
    return nothing.withRemark(remark, Argument.text(plate), Argument.of(offsetN, Unit.N));
  }

  /** Where the longest unloaded stretch starts, if there is one of a length. */
  private OptionalInt longest(int shortest) {
    BitSet unloaded = load.unloaded();
    OptionalInt best = OptionalInt.empty();
    int length = shortest - 1;
    for (int from = unloaded.nextSetBit(0); from >= 0; ) {
      int to = unloaded.nextClearBit(from);
      if (to - from > length) {
        best = OptionalInt.of(from);
        length = to - from;
      }
      from = unloaded.nextSetBit(to);
    }
    return best;
  }
}
