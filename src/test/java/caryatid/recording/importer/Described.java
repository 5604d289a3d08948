package caryatid.recording.importer;

import caryatid.geometry.Axes;
import caryatid.geometry.Direction;
import caryatid.recording.model.Channel;
import caryatid.recording.model.ExportLayout;
import caryatid.recording.model.ForceUnit;
import caryatid.recording.model.LengthUnit;
import caryatid.recording.model.MeasuredDirections;
import caryatid.recording.model.MomentUnit;
import caryatid.recording.model.PlateDescription;
import caryatid.recording.model.PlateDescription.ForceIs;
import caryatid.recording.model.PlateLayout;
import caryatid.recording.model.Sensors;
import caryatid.recording.model.TimeBase;
import caryatid.recording.model.TimeUnit;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** Plate descriptions for tests: what is not set is not stated. */
final class Described {
  /** x to the right, y forward, z up. */
  static final Axes Z_UP = new Axes(Direction.PLUS_X, Direction.PLUS_Y, Direction.PLUS_Z);

  private ExportLayout layout = ExportLayout.UNSTATED;
  private TimeBase time = TimeBase.UNSTATED;
  private Optional<Axes> axes = Optional.of(Z_UP);
  private Optional<ForceIs> forceIs = Optional.empty();
  private final List<PlateLayout> plates = new ArrayList<>();
  private boolean removeOffset;

  /** A plate with numbers in N, mm and N mm. */
  static Plate plate() {
    return new Plate("plate 1").units();
  }

  /** The usual units: N, N mm and mm, for a single plate whose columns tell themselves. */
  static PlateDescription usual() {
    return new Described().plate(plate()).get();
  }

  Described axes(Axes known) {
    axes = Optional.of(known);
    return this;
  }

  Described withoutAxes() {
    axes = Optional.empty();
    return this;
  }

  Described forceIs(ForceIs known) {
    forceIs = Optional.of(known);
    return this;
  }

  Described rate(double hz) {
    time = new TimeBase(Optional.empty(), Optional.empty(), OptionalDouble.of(hz));
    return this;
  }

  Described time(String column, TimeUnit unit) {
    time = new TimeBase(Optional.of(column), Optional.of(unit), OptionalDouble.empty());
    return this;
  }

  Described columns(String... names) {
    layout =
        new ExportLayout(
            layout.encoding(),
            layout.delimiter(),
            layout.decimalMark(),
            layout.headerLine(),
            layout.firstDataLine(),
            List.of(names),
            layout.recording());
    return this;
  }

  Described recording(int number) {
    layout =
        new ExportLayout(
            layout.encoding(),
            layout.delimiter(),
            layout.decimalMark(),
            layout.headerLine(),
            layout.firstDataLine(),
            layout.columns(),
            OptionalInt.of(number));
    return this;
  }

  Described form(ExportLayout known) {
    layout = known;
    return this;
  }

  Described removeOffset() {
    removeOffset = true;
    return this;
  }

  Described plate(Plate plate) {
    plates.add(plate.get());
    return this;
  }

  PlateDescription get() {
    return new PlateDescription(
        "test plate",
        layout,
        time,
        axes,
        forceIs,
        plates,
        List.of(),
        Optional.empty(),
        removeOffset);
  }

  /** One plate of a description. */
  static final class Plate {
    private final String name;
    private final Map<Channel, String> columns = new EnumMap<>(Channel.class);
    private Optional<LengthUnit> cop = Optional.empty();
    private Optional<ForceUnit> force = Optional.empty();
    private Optional<MomentUnit> moment = Optional.empty();
    private Optional<PlateLayout.Extent> size = Optional.empty();
    private Optional<PlateLayout.TrueOrigin> trueOrigin = Optional.empty();
    private Optional<PlateLayout.ExportOrigin> origin = Optional.empty();
    private Optional<Sensors> sensors = Optional.empty();
    private MeasuredDirections measures = MeasuredDirections.BOTH;

    Plate(String name) {
      this.name = name;
    }

    Plate column(Channel channel, String column) {
      columns.put(channel, column);
      return this;
    }

    Plate units() {
      return units(LengthUnit.MM, ForceUnit.N, MomentUnit.N_MM);
    }

    Plate units(LengthUnit length, ForceUnit newton, MomentUnit newtonMm) {
      cop = Optional.of(length);
      force = Optional.of(newton);
      moment = Optional.of(newtonMm);
      return this;
    }

    Plate cop(LengthUnit unit) {
      cop = Optional.of(unit);
      return this;
    }

    Plate force(ForceUnit unit) {
      force = Optional.of(unit);
      return this;
    }

    Plate edges(double left, double right, double rear, double front) {
      size = Optional.of(new PlateLayout.Extent(left, right, rear, front));
      return this;
    }

    Plate trueOrigin(double x, double y, double z) {
      trueOrigin = Optional.of(new PlateLayout.TrueOrigin(x, y, z));
      return this;
    }

    Plate at(double right, double anterior) {
      origin = Optional.of(new PlateLayout.ExportOrigin(right, anterior));
      return this;
    }

    Plate sensors(Sensors known) {
      sensors = Optional.of(known);
      return this;
    }

    Plate foreAndAft() {
      measures = MeasuredDirections.FORE_AND_AFT;
      return this;
    }

    PlateLayout get() {
      return new PlateLayout(
          name, columns, cop, force, moment, size, trueOrigin, origin, sensors, measures);
    }
  }
}
