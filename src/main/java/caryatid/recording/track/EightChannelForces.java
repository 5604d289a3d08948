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
import caryatid.recording.model.Sensors;
import caryatid.recording.table.SampleSeries;
import java.util.EnumMap;
import java.util.Map;

/**
 * Forces and moments of a plate on four three-axis sensors: Fx = fx12 + fx34, Fy = fy14 + fy23, Fz
 * = the sum of the four, Mx = b (fz1 + fz2 - fz3 - fz4), My = a (-fz1 + fz2 + fz3 - fz4), about the
 * sensors' centre.
 */
final class EightChannelForces {
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
