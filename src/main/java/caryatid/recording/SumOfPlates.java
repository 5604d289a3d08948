package caryatid.recording;

import caryatid.recording.Channel.Quantity;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntPredicate;

/**
 * Recognises a set of columns that holds all plates together, by its values: its vertical force is
 * the sum of the others', or, where it has none, its centre of pressure is their load-weighted
 * mean.
 */
final class SumOfPlates {
  /**
   * Rounding and filters leave no more between a sum and its parts (common practice, no source).
   */
  private static final double WITHIN = 0.01;

  /** The same for a centre of pressure, as a share of its farthest from zero (no source). */
  private static final double COP_WITHIN = 0.01;

  /** Fewer rows that agree are an accident (common practice, no source). */
  private static final double AGREEING = 0.99;

  private final Table table;
  private final Map<PlatePlan, PlateUnits> units;
  private final int vertical;
  private final Map<PlatePlan, List<Column>> forces = new IdentityHashMap<>();

  /**
   * @param vertical the export's axis that seems vertical: 0 for x, 1 for y, 2 for z
   */
  SumOfPlates(Table table, Map<PlatePlan, PlateUnits> units, int vertical) {
    this.table = table;
    this.units = units;
    this.vertical = vertical;
    units.keySet().forEach(p -> forces.put(p, PlateViews.forces(table, p, vertical)));
  }

  /** The plates that a set of columns may hold together. */
  List<PlatePlan> parts(PlatePlan plan) {
    return units.keySet().stream()
        .filter(other -> !other.equals(plan) && !named(other) && hasForce(other))
        .toList();
  }

  /** Whether a plate's name says that it is none of its own. */
  static boolean named(PlatePlan plan) {
    return Together.plates(plan.name());
  }

  /** Whether the values of a plate are those of some others together. */
  boolean holds(PlatePlan plan, List<PlatePlan> parts) {
    boolean enough = parts.size() >= (named(plan) ? 1 : 2);
    return enough && (hasForce(plan) ? forceIsSum(plan, parts) : copIsMean(plan, parts));
  }

  boolean hasForce(PlatePlan plan) {
    return !forces.get(plan).isEmpty();
  }

  private boolean forceIsSum(PlatePlan plan, List<PlatePlan> parts) {
    double size = 0;
    for (int row = 0; row < table.rows(); row++) {
      size += Math.abs(force(plan, row)) / table.rows();
    }
    double most = WITHIN * size;
    return agrees(holes(plan, parts), row -> Math.abs(force(plan, row) - sum(parts, row)) <= most);
  }

  private boolean copIsMean(PlatePlan plan, List<PlatePlan> parts) {
    List<Channel> channels = new ArrayList<>();
    plan.columns().keySet().stream()
        .filter(c -> c.quantity() == Quantity.COP && c.axis() != vertical)
        .filter(c -> parts.stream().allMatch(p -> p.has(c)))
        .forEach(channels::add);
    BitSet holes = holes(plan, parts);
    return channels.size() == 2
        && channels.stream().allMatch(c -> agrees(holes, row -> isMean(plan, parts, c, row)));
  }

  private boolean isMean(PlatePlan plan, List<PlatePlan> parts, Channel channel, int row) {
    double moment = 0;
    double largest = 0;
    for (PlatePlan part : parts) {
      double cop = value(part, channel, row);
      moment += force(part, row) * cop;
      largest = Math.max(largest, Math.abs(cop));
    }
    double sum = sum(parts, row);
    double apart = Math.abs(value(plan, channel, row) - moment / sum);
    return sum == 0 || apart <= COP_WITHIN * largest;
  }

  private boolean agrees(BitSet holes, IntPredicate row) {
    int compared = table.rows() - holes.cardinality();
    double mayDiffer = (1 - AGREEING) * compared;
    for (int i = holes.nextClearBit(0); i < table.rows(); i = holes.nextClearBit(i + 1)) {
      mayDiffer -= row.test(i) ? 0 : 1;
      if (mayDiffer < 0) {
        return false;
      }
    }
    return compared > 0;
  }

  private double sum(List<PlatePlan> parts, int row) {
    double sum = 0;
    for (PlatePlan part : parts) {
      sum += force(part, row);
    }
    return sum;
  }

  private double force(PlatePlan plan, int row) {
    double sum = 0;
    for (Column column : forces.get(plan)) {
      sum += column.at(row);
    }
    return sum * units.get(plan).scale(Quantity.FORCE);
  }

  private double value(PlatePlan plan, Channel channel, int row) {
    Optional<Integer> index = plan.column(channel);
    return table.column(index.orElseThrow()).at(row) * units.get(plan).scale(channel.quantity());
  }

  private BitSet holes(PlatePlan plan, List<PlatePlan> parts) {
    BitSet holes = new BitSet();
    plan.wanted().forEach(i -> holes.or(table.column(i).holes()));
    parts.stream().flatMap(PlatePlan::wanted).forEach(i -> holes.or(table.column(i).holes()));
    return holes;
  }
}
