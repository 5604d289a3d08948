package caryatid.recording;

import java.util.BitSet;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** One plate's channels in N, N mm and mm, along the export's axes, one number a sample. */
final class RawPlate {
  private final Map<Channel, double[]> series = new EnumMap<>(Channel.class);
  private final Map<Channel, BitSet> holesOf = new EnumMap<>(Channel.class);
  private final BitSet holes = new BitSet();
  private final int size;

  private RawPlate(int size) {
    this.size = size;
  }

  /** The channels of a plate that are needed, taken out of the table. */
  static RawPlate of(
      Table table, PlatePlan plan, PlateUnits units, Timeline timeline, Set<Channel> needed) {
    RawPlate plate = new RawPlate(timeline.size());
    for (Channel channel : needed) {
      plan.column(channel)
          .ifPresent(index -> plate.take(channel, table.column(index), units, timeline));
    }
    return plate;
  }

  private void take(Channel channel, Column column, PlateUnits units, Timeline timeline) {
    BitSet missing = timeline.pickHoles(column.holes());
    holes.or(missing);
    holesOf.put(channel, missing);
    put(channel, timeline.pick(column.take()), units.scale(channel.quantity()));
  }

  private void put(Channel channel, double[] values, double scale) {
    for (int i = 0; scale != 1 && i < values.length; i++) {
      values[i] *= scale;
    }
    series.put(channel, values);
  }

  /** Forces and moments from eight raw channels (see {@link Sensors.EightChannels}). */
  static RawPlate of(
      Table table,
      PlatePlan plan,
      Sensors.EightChannels sensors,
      Timeline timeline,
      DeadColumns dead) {
    RawPlate plate = new RawPlate(timeline.size());
    Map<Sensors.RawChannel, double[]> raw = new EnumMap<>(Sensors.RawChannel.class);
    for (Map.Entry<Sensors.RawChannel, String> each : sensors.columns().entrySet()) {
      Column column = table.column(plan.sensors().get(each.getValue()));
      plate.holes.or(timeline.pickHoles(column.holes()));
      raw.put(each.getKey(), timeline.pick(column.take()));
    }
    EightChannelForces.of(raw, sensors, timeline.size()).forEach((c, v) -> plate.put(c, v, 1));
    BitSet unusable = plate.unloadedOrMissing();
    raw.forEach(
        (channel, values) -> {
          if (channel.isVertical() || sensors.az0Mm() != 0) {
            dead.refuse(sensors.columns().get(channel), values, unusable);
          }
        });
    return plate;
  }

  private BitSet unloadedOrMissing() {
    BitSet unusable = (BitSet) holes.clone();
    double[] up = series.get(Channel.FORCE_Z);
    for (int i = 0; i < size; i++) {
      if (Math.abs(up[i]) < Load.LEAST_N) {
        unusable.set(i);
      }
    }
    return unusable;
  }

  /** A channel's numbers, to be reused by whoever takes them last. */
  Optional<double[]> at(Channel channel) {
    return Optional.ofNullable(series.get(channel));
  }

  boolean has(Channel channel) {
    return series.containsKey(channel);
  }

  /** Samples in which some channel has no number. */
  BitSet holes() {
    return holes;
  }

  /** Samples in which one channel has no number; of a channel that was computed, all such. */
  BitSet holes(Channel channel) {
    return holesOf.getOrDefault(channel, holes);
  }

  int size() {
    return size;
  }
}
