package caryatid.recording.track;

import caryatid.geometry.Axis;
import caryatid.recording.model.Channel;
import caryatid.recording.model.Channel.Quantity;
import caryatid.recording.table.NumberColumn;
import caryatid.recording.table.ParsedTable;
import caryatid.recording.table.PlateColumns;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.function.IntPredicate;
import java.util.function.IntToDoubleFunction;

/**
 * Recognises a set of columns that holds all plates together, by its values: its vertical force is
 * the sum of the others', or, where it has none, its centre of pressure is their load-weighted
 * mean.
 */
final class SumOfPlates {
  private final ParsedTable table;
  private final Map<PlateColumns, PlateUnits> units;
  private final Axis vertical;

  /**
   * @param vertical the export's axis that seems vertical
   */
  SumOfPlates(ParsedTable table, Map<PlateColumns, PlateUnits> units, Axis vertical) {
    this.table = table;
    this.units = units;
    this.vertical = vertical;
  }

  /** The plates that a set of columns may hold together. */
  List<PlateColumns> parts(PlateColumns plate) {
    return units.keySet().stream()
        .filter(other -> !other.name().equals(plate.name()) && !named(other))
        .toList();
  }

  /** Whether a plate's name says that it is none of its own. */
  static boolean named(PlateColumns plate) {
    return TotalColumnNames.plates(plate.name());
  }

  /** Whether the values of a plate are those of some others together. */
  boolean holds(PlateColumns plate, List<PlateColumns> parts) {
    boolean enough = parts.size() >= (named(plate) ? 1 : 2);
    boolean told = enough && parts.stream().allMatch(this::hasForce);
    return told && (hasForce(plate) ? forceIsSum(plate, parts) : copIsMean(plate, parts));
  }

  boolean hasForce(PlateColumns plate) {
    return !PlateViews.forces(table, plate, vertical).isEmpty();
  }

  private boolean forceIsSum(PlateColumns plate, List<PlateColumns> parts) {
    IntToDoubleFunction whole = force(plate);
    IntToDoubleFunction sum = sum(parts.stream().map(this::force).toList());
    double size = 0;
    for (int row = 0; row < table.rows(); row++) {
      size += Math.abs(whole.applyAsDouble(row)) / table.rows();
    }
    double most = TrackLimits.SUM_AGREES * size;
    return most > 0
        && agrees(
            holes(plate, parts),
            row -> Math.abs(whole.applyAsDouble(row) - sum.applyAsDouble(row)) <= most);
  }

  private boolean copIsMean(PlateColumns plate, List<PlateColumns> parts) {
    List<Channel> channels =
        plate.columns().keySet().stream()
            .filter(c -> c.quantity() == Quantity.COP && c.axis() != vertical)
            .filter(c -> parts.stream().allMatch(p -> p.has(c)))
            .toList();
    BitSet holes = holes(plate, parts);
    return channels.size() == plate.measures().count()
        && channels.stream().allMatch(c -> agrees(holes, isMean(plate, parts, c)));
  }

  private IntPredicate isMean(PlateColumns plate, List<PlateColumns> parts, Channel channel) {
    IntToDoubleFunction whole = value(plate, channel);
    List<IntToDoubleFunction> forces = parts.stream().map(this::force).toList();
    List<IntToDoubleFunction> centres = parts.stream().map(p -> value(p, channel)).toList();
    return row -> {
      double moment = 0;
      double sum = 0;
      double largest = 0;
      for (int i = 0; i < parts.size(); i++) {
        double centre = centres.get(i).applyAsDouble(row);
        moment += forces.get(i).applyAsDouble(row) * centre;
        sum += forces.get(i).applyAsDouble(row);
        largest = Math.max(largest, Math.abs(centre));
      }
      return sum == 0
          || Math.abs(whole.applyAsDouble(row) - moment / sum)
              <= TrackLimits.SUM_COP_AGREES * largest;
    };
  }

  /** Whether a condition holds in nearly all rows without holes. */
  private boolean agrees(BitSet holes, IntPredicate condition) {
    int compared = table.rows() - holes.cardinality();
    double mayDiffer = (1 - TrackLimits.AGREEING_ROWS) * compared;
    for (int i = holes.nextClearBit(0); i < table.rows(); i = holes.nextClearBit(i + 1)) {
      mayDiffer -= condition.test(i) ? 0 : 1;
      if (mayDiffer < 0) {
        return false;
      }
    }
    return compared > 0;
  }

  /** A plate's vertical force by row. */
  private IntToDoubleFunction force(PlateColumns plate) {
    double scale = units.get(plate).scale(Quantity.FORCE);
    IntToDoubleFunction sum =
        sum(
            PlateViews.forces(table, plate, vertical).stream()
                .<IntToDoubleFunction>map(column -> column::at)
                .toList());
    return row -> scale * sum.applyAsDouble(row);
  }

  private static IntToDoubleFunction sum(List<IntToDoubleFunction> parts) {
    return row -> {
      double sum = 0;
      for (IntToDoubleFunction part : parts) {
        sum += part.applyAsDouble(row);
      }
      return sum;
    };
  }

  private IntToDoubleFunction value(PlateColumns plate, Channel channel) {
    NumberColumn column = table.column(plate.column(channel).orElseThrow());
    double scale = units.get(plate).scale(channel.quantity());
    return row -> scale * column.at(row);
  }

  private BitSet holes(PlateColumns plate, List<PlateColumns> parts) {
    BitSet holes = new BitSet();
    plate.wanted().forEach(i -> table.column(i).addHolesTo(holes));
    parts.stream().flatMap(PlateColumns::wanted).forEach(i -> table.column(i).addHolesTo(holes));
    return holes;
  }
}
