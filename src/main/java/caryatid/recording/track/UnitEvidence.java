package caryatid.recording.track;

import caryatid.geometry.Axis;
import caryatid.recording.model.Channel;
import caryatid.recording.model.Channel.Quantity;
import caryatid.recording.model.ForceUnit;
import caryatid.recording.model.LengthUnit;
import caryatid.recording.table.NumberColumn;
import caryatid.recording.table.ParsedTable;
import caryatid.recording.table.PlateColumns;
import caryatid.remark.Argument;
import caryatid.remark.Unit;
import java.util.Arrays;
import java.util.List;

/** What the numbers would mean in each unit, so that the user can tell which one is right. */
final class UnitEvidence {
  private final ParsedTable table;
  private final Axis vertical;

  UnitEvidence(ParsedTable table, Axis vertical) {
    this.table = table;
    this.vertical = vertical;
  }

  /** The mass the plates weigh together, for each unit of force. */
  List<Argument> ofForce(List<PlateColumns> plates) {
    double sum = 0;
    for (PlateColumns plate : plates) {
      for (NumberColumn column : PlateViews.forces(table, plate, vertical)) {
        sum += Math.abs(middle(column));
      }
    }
    double force = sum;
    return Arrays.stream(ForceUnit.values())
        .map(unit -> Argument.of(force * unit.newton() / ForceUnit.STANDARD_GRAVITY, Unit.KG))
        .toList();
  }

  /** How far from the export's zero the centre of pressure lies, for each unit of length. */
  List<Argument> ofCop(List<PlateColumns> plates) {
    double most = 0;
    for (PlateColumns plate : plates) {
      for (Channel channel : plate.columns().keySet()) {
        if (channel.quantity() == Quantity.COP) {
          most = Math.max(most, Math.abs(middle(table.column(plate.columns().get(channel)))));
        }
      }
    }
    double distance = most;
    return Arrays.stream(LengthUnit.values())
        .map(unit -> Argument.of(distance * unit.mm(), Unit.MM))
        .toList();
  }

  /** The median, which an empty plate's values hardly move. */
  private static double middle(NumberColumn column) {
    double[] values = new double[column.size()];
    Arrays.setAll(values, column::at);
    Arrays.sort(values);
    return values.length == 0 ? 0 : values[values.length / 2];
  }
}
