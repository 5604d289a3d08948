package caryatid.recording.track;

import static caryatid.recording.model.Sensors.RawChannel.FX12;
import static caryatid.recording.model.Sensors.RawChannel.FX34;
import static caryatid.recording.model.Sensors.RawChannel.FY14;
import static caryatid.recording.model.Sensors.RawChannel.FY23;
import static caryatid.recording.model.Sensors.RawChannel.FZ1;
import static caryatid.recording.model.Sensors.RawChannel.FZ2;
import static caryatid.recording.model.Sensors.RawChannel.FZ3;
import static caryatid.recording.model.Sensors.RawChannel.FZ4;

import caryatid.recording.model.Channel;
import caryatid.recording.model.Channel.Quantity;
import caryatid.recording.model.Sensors;
import caryatid.recording.table.NumberColumn;
import caryatid.recording.table.ParsedTable;
import caryatid.recording.table.PlateColumns;
import caryatid.recording.table.SampleSeries;
import caryatid.recording.time.Timeline;
import java.util.BitSet;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** One plate's channels in N, N mm and mm, along the export's axes, one number a sample. */
final class RawPlate {
  private final Map<Channel, SampleSeries> series;
  private final Map<Channel, BitSet> holesOf;
  private final BitSet holes = new BitSet();
  private final int size;

  private RawPlate(Map<Channel, SampleSeries> series, Map<Channel, BitSet> holesOf, int size) {
    this.series = series;
    this.holesOf = holesOf;
    this.size = size;
    holesOf.values().forEach(holes::or);
  }

  /** The channels of a plate that are needed. */
  static RawPlate of(
      ParsedTable table,
      PlateColumns plate,
      PlateUnits units,
      Timeline timeline,
      Set<Channel> needed) {
    Map<Channel, SampleSeries> series = new EnumMap<>(Channel.class);
    Map<Channel, BitSet> holes = new EnumMap<>(Channel.class);
    plate
        .columns()
        .forEach(
            (channel, index) -> {
              if (needed.contains(channel)) {
                NumberColumn column = table.column(index);
                holes.put(channel, timeline.holes(column));
                series.put(channel, timeline.series(column).times(units.scale(channel.quantity())));
              }
            });
    return new RawPlate(series, holes, timeline.size());
  }

  /** Forces and moments from eight raw channels (see {@link Sensors.EightChannels}). */
  static RawPlate of(
      ParsedTable table, PlateColumns plate, Sensors.EightChannels sensors, Timeline timeline) {
    BitSet holes = new BitSet();
    Map<Sensors.RawChannel, SampleSeries> raw = new EnumMap<>(Sensors.RawChannel.class);
    sensors
        .columns()
        .forEach(
            (channel, name) -> {
              NumberColumn column = table.column(plate.sensors().get(name));
              holes.or(timeline.holes(column));
              raw.put(channel, timeline.series(column));
            });
    Map<Channel, SampleSeries> computed = EightChannelForces.of(raw, sensors, timeline.size());
    Map<Channel, BitSet> holesOf = new EnumMap<>(Channel.class);
    computed.keySet().forEach(channel -> holesOf.put(channel, holes));
    return new RawPlate(computed, holesOf, timeline.size());
  }

  /** The plate with some of its channels alone. */
  RawPlate only(Set<Channel> needed) {
    Map<Channel, SampleSeries> kept = new EnumMap<>(series);
    kept.keySet().retainAll(needed);
    return new RawPlate(kept, holesOf, size);
  }

  /** The plate with the mean over some samples subtracted from each force and moment. */
  RawPlate withoutOffset(int from, int to) {
    Map<Channel, SampleSeries> shifted = new EnumMap<>(series);
    shifted.replaceAll(
        (channel, values) ->
            channel.quantity() == Quantity.COP ? values : values.plus(-values.mean(from, to)));
    return new RawPlate(shifted, holesOf, size);
  }

  /** A channel's numbers. */
  Optional<SampleSeries> at(Channel channel) {
    return Optional.ofNullable(series.get(channel));
  }

  boolean has(Channel channel) {
    return series.containsKey(channel);
  }

  /** Samples in which some channel has no number. */
  BitSet holes() {
    return holes;
  }

  /** Samples in which one channel has no number. */
  BitSet holes(Channel channel) {
    return holesOf.getOrDefault(channel, holes);
  }

  int size() {
    return size;
  }

  /**
   * Forces and moments of a plate on four three-axis sensors: Fx = fx12 + fx34, Fy = fy14 + fy23,
   * Fz = the sum of the four, Mx = b (fz1 + fz2 - fz3 - fz4), My = a (-fz1 + fz2 + fz3 - fz4),
   * about the sensors' centre.
   */
  private static final class EightChannelForces {
    private EightChannelForces() {}

    static Map<Channel, SampleSeries> of(
        Map<Sensors.RawChannel, SampleSeries> raw, Sensors.EightChannels plate, int size) {
      double across = plate.horizontalNPerUnit();
      double down = plate.verticalNPerUnit();
      SampleSeries one = raw.get(FZ1);
      SampleSeries two = raw.get(FZ2);
      SampleSeries three = raw.get(FZ3);
      SampleSeries four = raw.get(FZ4);
      Map<Channel, SampleSeries> forces = new EnumMap<>(Channel.class);
      forces.put(Channel.FORCE_X, sum(raw.get(FX12), raw.get(FX34), across));
      forces.put(Channel.FORCE_Y, sum(raw.get(FY14), raw.get(FY23), across));
      forces.put(
          Channel.FORCE_Z,
          SampleSeries.of(size, i -> down * (one.at(i) + two.at(i) + three.at(i) + four.at(i))));
      forces.put(
          Channel.MOMENT_X,
          SampleSeries.of(
              size, i -> plate.bMm() * down * (one.at(i) + two.at(i) - three.at(i) - four.at(i))));
      forces.put(
          Channel.MOMENT_Y,
          SampleSeries.of(
              size, i -> plate.aMm() * down * (-one.at(i) + two.at(i) + three.at(i) - four.at(i))));
      return forces;
    }

    private static SampleSeries sum(SampleSeries a, SampleSeries b, double scale) {
      return SampleSeries.of(a.size(), i -> scale * (a.at(i) + b.at(i)));
    }
  }
}
