package caryatid.recording.track;

import caryatid.geometry.Axis;
import caryatid.recording.model.Channel;
import caryatid.recording.model.Channel.Quantity;
import caryatid.recording.model.ForceUnit;
import caryatid.recording.model.Inspection.Loaded;
import caryatid.recording.model.Inspection.PlateView;
import caryatid.recording.model.Sensors;
import caryatid.recording.table.NumberColumn;
import caryatid.recording.table.ParsedTable;
import caryatid.recording.table.PlateColumns;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Looks at a plate's vertical force before anything is converted. */
public final class PlateViews {
  private static final int PIECES = 60;

  private final NumberColumn[] columns;
  private final double scale;
  private final int rows;
  private final BitSet holes = new BitSet();
  private final boolean whole;

  private PlateViews(List<NumberColumn> columns, double scale, int rows) {
    this.columns = columns.toArray(new NumberColumn[0]);
    this.scale = scale;
    this.rows = rows;
    columns.forEach(column -> column.addHolesTo(holes));
    this.whole = holes.isEmpty();
  }

  /** The view of a plate; empty for one without a vertical force. */
  public static Optional<PlateView> of(
      ParsedTable table, PlateColumns plate, Axis vertical, Optional<ForceUnit> unit) {
    List<NumberColumn> columns = forces(table, plate, vertical);
    if (columns.isEmpty() || table.rows() == 0) {
      return Optional.empty();
    }
    if (plate.layout().sensors().orElse(null) instanceof Sensors.EightChannels eight) {
      PlateViews views = new PlateViews(columns, eight.verticalNPerUnit(), table.rows());
      return Optional.of(views.view(plate.name(), Optional.of(ForceUnit.N)));
    }
    return Optional.of(new PlateViews(columns, 1, table.rows()).view(plate.name(), unit));
  }

  /** The columns that make a plate's vertical force when added up. */
  static List<NumberColumn> forces(ParsedTable table, PlateColumns plate, Axis vertical) {
    Sensors sensors = plate.layout().sensors().orElse(null);
    if (sensors instanceof Sensors.LoadCells cells) {
      return cells.cells().stream()
          .map(c -> table.column(plate.sensors().get(c.column())))
          .toList();
    }
    if (sensors instanceof Sensors.EightChannels eight) {
      return Arrays.stream(Sensors.RawChannel.values())
          .filter(Sensors.RawChannel::isVertical)
          .map(c -> table.column(plate.sensors().get(eight.columns().get(c))))
          .toList();
    }
    return plate.column(Channel.of(Quantity.FORCE, vertical)).map(table::column).stream().toList();
  }

  private PlateView view(String name, Optional<ForceUnit> unit) {
    List<Double> means = means();
    double sign = means.stream().mapToDouble(m -> m).sum() < 0 ? -1 : 1;
    List<Double> pieces = means.stream().map(m -> sign * m).toList();
    double largest = pieces.stream().mapToDouble(p -> p).max().orElse(0);
    double least =
        unit.map(u -> TrackLimits.LEAST_N / u.newton()).orElse(TrackLimits.LOADED_SHARE * largest);
    List<Loaded> loaded = loaded(sign, least);
    return new PlateView(name, pieces, unit, loaded, mass(sign, loaded, unit));
  }

  private double force(int row) {
    return scale * (columns.length == 1 ? columns[0].at(row) : together(row));
  }

  private double together(int row) {
    double sum = 0;
    for (NumberColumn column : columns) {
      sum += column.at(row);
    }
    return sum;
  }

  /** The mean force over rows, without those in which it is missing; 0 where all are. */
  private double mean(int from, int to) {
    double sum = 0;
    int count = 0;
    if (whole) {
      for (NumberColumn column : columns) {
        sum += scale * column.sum(from, to);
      }
      return sum / Math.max(to - from, 1);
    }
    for (int row = from; row < to; row++) {
      if (!holes.get(row)) {
        sum += force(row);
        count++;
      }
    }
    return sum / Math.max(count, 1);
  }

  private List<Double> means() {
    int count = Math.min(PIECES, rows);
    List<Double> means = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      int from = (int) ((long) rows * i / count);
      int to = (int) ((long) rows * (i + 1) / count);
      means.add(mean(from, to));
    }
    return means;
  }

  private List<Loaded> loaded(double sign, double least) {
    List<Loaded> stretches = new ArrayList<>();
    int from = -1;
    for (int row = 0; row <= rows; row++) {
      boolean known = whole || row == rows || !holes.get(row);
      boolean on = known ? row < rows && sign * force(row) >= least : from >= 0;
      if (on && from < 0) {
        from = row;
      } else if (!on && from >= 0) {
        stretches.add(new Loaded(from + 1, row));
        from = -1;
      }
    }
    return stretches;
  }

  private OptionalDouble mass(double sign, List<Loaded> loaded, Optional<ForceUnit> unit) {
    double sum = 0;
    int count = 0;
    for (Loaded stretch : loaded) {
      int from = stretch.fromRow() - 1;
      int known = stretch.toRow() - from - holes.get(from, stretch.toRow()).cardinality();
      sum += sign * mean(from, stretch.toRow()) * known;
      count += known;
    }
    return unit.isEmpty() || count == 0
        ? OptionalDouble.empty()
        : OptionalDouble.of(sum / count * unit.get().newton() / ForceUnit.STANDARD_GRAVITY);
  }
}
