package caryatid.recording;

import caryatid.recording.Channel.Quantity;
import java.util.Collection;
import java.util.Map;

/** Which export axis seems vertical: the one along which the force is by far the largest. */
final class VerticalAxis {
  private VerticalAxis() {}

  /**
   * The axis, 0 for x, 1 for y, 2 for z; without forces the one that has no centre of pressure,
   * else z.
   */
  static int seen(Table table, Collection<PlatePlan> plates) {
    double[] forces = new double[3];
    boolean[] cop = new boolean[3];
    for (PlatePlan plan : plates) {
      for (Map.Entry<Channel, Integer> each : plan.columns().entrySet()) {
        Channel channel = each.getKey();
        if (channel.quantity() == Quantity.FORCE) {
          forces[channel.axis()] += sumOfSizes(table.column(each.getValue()));
        }
        cop[channel.axis()] |= channel.quantity() == Quantity.COP;
      }
    }
    if (forces[1] > forces[2] && forces[1] > forces[0]) {
      return 1;
    }
    boolean noForce = forces[0] + forces[1] + forces[2] == 0;
    return noForce && cop[0] && !cop[1] && cop[2] ? 1 : 2;
  }

  private static double sumOfSizes(Column column) {
    double sum = 0;
    for (int row = 0; row < column.size(); row++) {
      sum += Math.abs(column.at(row));
    }
    return sum;
  }
}
