package caryatid.recording;

import static caryatid.recording.Sensors.RawChannel.FX12;
import static caryatid.recording.Sensors.RawChannel.FX34;
import static caryatid.recording.Sensors.RawChannel.FY14;
import static caryatid.recording.Sensors.RawChannel.FY23;
import static caryatid.recording.Sensors.RawChannel.FZ1;
import static caryatid.recording.Sensors.RawChannel.FZ2;
import static caryatid.recording.Sensors.RawChannel.FZ3;
import static caryatid.recording.Sensors.RawChannel.FZ4;

import java.util.EnumMap;
import java.util.Map;
import java.util.function.IntToDoubleFunction;

/**
 * Forces and moments of a plate on four three-axis sensors: Fx = fx12 + fx34, Fy = fy14 + fy23, Fz
 * = the sum of the four, Mx = b (fz1 + fz2 - fz3 - fz4), My = a (-fz1 + fz2 + fz3 - fz4), about the
 * sensors' centre.
 */
final class EightChannelForces {
  private EightChannelForces() {}

  static Map<Channel, double[]> of(
      Map<Sensors.RawChannel, double[]> raw, Sensors.EightChannels plate, int size) {
    double across = plate.horizontalNPerUnit();
    double down = plate.verticalNPerUnit();
    double[] one = raw.get(FZ1);
    double[] two = raw.get(FZ2);
    double[] three = raw.get(FZ3);
    double[] four = raw.get(FZ4);
    Map<Channel, double[]> forces = new EnumMap<>(Channel.class);
    forces.put(Channel.FORCE_X, sum(raw.get(FX12), raw.get(FX34), across));
    forces.put(Channel.FORCE_Y, sum(raw.get(FY14), raw.get(FY23), across));
    forces.put(Channel.FORCE_Z, each(size, i -> down * (one[i] + two[i] + three[i] + four[i])));
    forces.put(
        Channel.MOMENT_X,
        each(size, i -> plate.bMm() * down * (one[i] + two[i] - three[i] - four[i])));
    forces.put(
        Channel.MOMENT_Y,
        each(size, i -> plate.aMm() * down * (-one[i] + two[i] + three[i] - four[i])));
    return forces;
  }

  private static double[] sum(double[] a, double[] b, double scale) {
    return each(a.length, i -> scale * (a[i] + b[i]));
  }

  private static double[] each(int size, IntToDoubleFunction value) {
    double[] values = new double[size];
    java.util.Arrays.setAll(values, value);
    return values;
  }
}
