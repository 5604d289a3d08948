package caryatid.recording.track;

import caryatid.geometry.Axes;
import caryatid.recording.model.Channel;
import caryatid.recording.model.Channel.Quantity;
import caryatid.recording.model.PlateDescription;
import caryatid.recording.table.SampleSeries;
import java.util.BitSet;
import java.util.Optional;

/** Which samples of a plate carry somebody, by its vertical force. */
final class LoadedSamples {
  private final Optional<SampleSeries> vertical;
  private final double sign;
  private final BitSet unloaded;

  private LoadedSamples(Optional<SampleSeries> vertical, double sign, BitSet unloaded) {
    this.vertical = vertical;
    this.sign = sign;
    this.unloaded = unloaded;
  }

  static LoadedSamples of(RawPlate raw, Axes axes) {
    Optional<SampleSeries> vertical = raw.at(Channel.of(Quantity.FORCE, axes.up().axis()));
    BitSet unloaded = new BitSet(raw.size());
    if (vertical.isEmpty()) {
      return new LoadedSamples(vertical, 1, unloaded);
    }
    SampleSeries force = vertical.get();
    double sign = moreBelow(force) == (axes.up().sign() > 0) ? -1 : 1;
    double upward = axes.up().sign() * sign;
    for (int i = 0; i < force.size(); i++) {
      if (force.at(i) * upward < TrackLimits.LEAST_N) {
        unloaded.set(i);
      }
    }
    // Where no force was recorded, nobody knows whether the plate was loaded.
    unloaded.andNot(raw.holes(Channel.of(Quantity.FORCE, axes.up().axis())));
    return new LoadedSamples(vertical, sign, unloaded);
  }

  /** Whether more samples are loaded below zero than above; a single huge number proves nothing. */
  private static boolean moreBelow(SampleSeries force) {
    int above = 0;
    int below = 0;
    for (int i = 0; i < force.size(); i++) {
      above += force.at(i) >= TrackLimits.LEAST_N ? 1 : 0;
      below += force.at(i) <= -TrackLimits.LEAST_N ? 1 : 0;
    }
    return below > above;
  }

  /** +1 where the exported force is the one on the person, -1 where it is the one on the plate. */
  double sign() {
    return sign;
  }

  /** On whom the exported force acts: loaded, the force on the person points up. */
  Optional<PlateDescription.ForceIs> sense() {
    return vertical.map(
        v ->
            sign > 0
                ? PlateDescription.ForceIs.ON_THE_PERSON
                : PlateDescription.ForceIs.ON_THE_PLATE);
  }

  boolean loaded(int sample) {
    return !unloaded.get(sample);
  }

  /** The samples that show more than any person's weight. */
  BitSet heavy() {
    BitSet heavy = new BitSet();
    if (vertical.isPresent()) {
      SampleSeries force = vertical.get();
      for (int i = 0; i < force.size(); i++) {
        if (Math.abs(force.at(i)) > TrackLimits.HEAVIEST_N) {
          heavy.set(i);
        }
      }
    }
    return heavy;
  }

  BitSet unloaded() {
    return unloaded;
  }

  /** Whether there is a vertical force to tell by. */
  boolean known() {
    return vertical.isPresent();
  }
}
