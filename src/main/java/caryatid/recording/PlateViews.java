package caryatid.recording;

import caryatid.recording.Channel.Quantity;
import caryatid.recording.Inspection.Loaded;
import caryatid.recording.Inspection.PlateView;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.IntToDoubleFunction;

/** Looks at the plates' vertical force before anything is converted. */
final class PlateViews {
  private static final int PIECES = 60;

  /** Standard gravity, m/s2 (CGPM 1901). */
  private static final double GRAVITY = 9.80665;

  /**
   * Without a unit, a plate counts as loaded above this share of its largest mean (common practice,
   * no source).
   */
  private static final double LOADED_SHARE = 0.05;

  private PlateViews() {}

  /** The view of a plate; empty for one without a vertical force. */
  static Optional<PlateView> of(
      Table table, PlatePlan plan, int vertical, Optional<ForceUnit> unit) {
    List<Column> columns = forces(table, plan, vertical);
    if (columns.isEmpty() || table.rows() == 0) {
      return Optional.empty();
    }
    IntToDoubleFunction raw = row -> sum(columns, row);
    double sign = mean(raw, 0, table.rows()) < 0 ? -1 : 1;
    IntToDoubleFunction force = row -> sign * raw.applyAsDouble(row);
    List<Double> pieces = pieces(force, table.rows());
    double largest = pieces.stream().mapToDouble(p -> p).max().orElse(0);
    double least = unit.map(u -> Load.LEAST_N / u.newton()).orElse(LOADED_SHARE * largest);
    List<Loaded> loaded = loaded(force, table.rows(), least);
    return Optional.of(new PlateView(plan.name(), pieces, unit, loaded, mass(force, loaded, unit)));
  }

  private static double sum(List<Column> columns, int row) {
    double sum = 0;
    for (Column column : columns) {
      sum += column.at(row);
    }
    return sum;
  }

  private static List<Column> forces(Table table, PlatePlan plan, int vertical) {
    if (plan.layout().sensors().orElse(null) instanceof Sensors.LoadCells) {
      return plan.sensors().values().stream().map(table::column).toList();
    }
    return plan.column(Channel.of(Quantity.FORCE, vertical)).map(table::column).stream().toList();
  }

  private static List<Double> pieces(IntToDoubleFunction force, int rows) {
    int count = Math.min(PIECES, rows);
    List<Double> pieces = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      pieces.add(
          mean(force, (int) ((long) rows * i / count), (int) ((long) rows * (i + 1) / count)));
    }
    return pieces;
  }

  private static double mean(IntToDoubleFunction force, int from, int to) {
    double sum = 0;
    for (int row = from; row < to; row++) {
      sum += force.applyAsDouble(row);
    }
    return sum / (to - from);
  }

  private static List<Loaded> loaded(IntToDoubleFunction force, int rows, double least) {
    List<Loaded> stretches = new ArrayList<>();
    int from = -1;
    for (int row = 0; row <= rows; row++) {
      boolean on = row < rows && force.applyAsDouble(row) >= least;
      if (on && from < 0) {
        from = row;
      } else if (!on && from >= 0) {
        stretches.add(new Loaded(from + 1, row));
        from = -1;
      }
    }
    return stretches;
  }

  private static OptionalDouble mass(
      IntToDoubleFunction force, List<Loaded> loaded, Optional<ForceUnit> unit) {
    double sum = 0;
    int count = 0;
    for (Loaded stretch : loaded) {
      for (int row = stretch.fromRow() - 1; row < stretch.toRow(); row++) {
        sum += force.applyAsDouble(row);
        count++;
      }
    }
    return unit.isEmpty() || count == 0
        ? OptionalDouble.empty()
        : OptionalDouble.of(sum / count * unit.get().newton() / GRAVITY);
  }
}
