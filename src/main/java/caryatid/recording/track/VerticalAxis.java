package caryatid.recording.track;

import caryatid.geometry.Axis;
import caryatid.recording.model.Channel;
import caryatid.recording.model.Channel.Quantity;
import caryatid.recording.table.NumberColumn;
import caryatid.recording.table.ParsedTable;
import caryatid.recording.table.PlateColumns;
import java.util.Arrays;
import java.util.Collection;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Which export axis seems vertical: the one along which the force is by far the largest. */
final class VerticalAxis {
  private VerticalAxis() {}

  /** The axis; without forces the one that has no centre of pressure, else z. */
  static Axis seen(ParsedTable table, Collection<PlateColumns> plates) {
    Map<Axis, Double> forces = new EnumMap<>(Axis.class);
    Set<Axis> cop = EnumSet.noneOf(Axis.class);
    for (PlateColumns plate : plates) {
      for (Map.Entry<Channel, Integer> each : plate.columns().entrySet()) {
        Channel channel = each.getKey();
        if (channel.quantity() == Quantity.FORCE) {
          forces.merge(channel.axis(), sumOfSizes(table.column(each.getValue())), Double::sum);
        }
        if (channel.quantity() == Quantity.COP) {
          cop.add(channel.axis());
        }
      }
    }
    double x = forces.getOrDefault(Axis.X, 0.0);
    double y = forces.getOrDefault(Axis.Y, 0.0);
    double z = forces.getOrDefault(Axis.Z, 0.0);
    if (y > z && y > x) {
      return Axis.Y;
    }
    boolean onlyY = cop.equals(EnumSet.of(Axis.X, Axis.Z));
    return x + y + z == 0 && onlyY ? Axis.Y : Axis.Z;
  }

  /** The two other axes, in order. */
  static List<Axis> horizontal(Axis vertical) {
    return Arrays.stream(Axis.values()).filter(axis -> axis != vertical).toList();
  }

  private static double sumOfSizes(NumberColumn column) {
    double sum = 0;
    for (int row = 0; row < column.size(); row++) {
      sum += Math.abs(column.at(row));
    }
    return sum;
  }
}
