package caryatid.recording.track;

import caryatid.recording.model.Channel;
import caryatid.recording.model.ExportForm;
import caryatid.recording.model.PlateDescription;
import caryatid.recording.model.PlateLayout;
import caryatid.recording.model.TimeBase;
import caryatid.recording.model.TimeUnit;
import caryatid.recording.table.ColumnName;
import caryatid.recording.table.PlatePlan;
import caryatid.recording.table.Table;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** A plate description of all that is known, to be completed by hand. */
public final class Draft {
  /** No column's name, so that the description is refused as long as it stands there. */
  private static final String OPEN = "unknown";

  private final Optional<PlateDescription> described;

  public Draft(Optional<PlateDescription> described) {
    this.described = described;
  }

  /**
   * The description.
   *
   * @param times the unit of the times, where it was found
   */
  public PlateDescription of(
      Optional<Table> table, Map<PlatePlan, PlateUnits> units, Optional<TimeUnit> times) {
    List<PlateLayout> plates = new ArrayList<>();
    units.forEach((plan, known) -> plates.add(layout(table.orElseThrow(), plan, known)));
    List<PlateLayout> stated = described.map(PlateDescription::plates).orElse(List.of());
    return new PlateDescription(
        described.map(PlateDescription::name).orElse("plate"),
        described.map(PlateDescription::form).orElse(ExportForm.UNSTATED),
        time(table, times),
        described.flatMap(PlateDescription::axes),
        described.flatMap(PlateDescription::forceIs),
        plates.isEmpty() ? stated : plates,
        described.map(PlateDescription::lines).orElse(List.of()),
        described.flatMap(PlateDescription::accuracy),
        described.map(PlateDescription::removeUnloadedOffset).orElse(false));
  }

  private TimeBase time(Optional<Table> table, Optional<TimeUnit> times) {
    TimeBase stated = described.map(PlateDescription::time).orElse(TimeBase.UNSTATED);
    boolean something =
        stated.column().isPresent() || stated.unit().isPresent() || stated.rateHz().isPresent();
    if (something || table.isEmpty() || table.get().plan().time().isEmpty()) {
      return stated;
    }
    ColumnName name = table.get().head().columns().get(table.get().plan().time().getAsInt());
    return new TimeBase(
        Optional.of(name.full()),
        times.or(() -> name.unit().flatMap(TimeUnit::named)),
        OptionalDouble.empty());
  }

  private static PlateLayout layout(Table table, PlatePlan plan, PlateUnits units) {
    PlateLayout stated = plan.layout();
    Map<Channel, String> columns = new EnumMap<>(Channel.class);
    plan.columns()
        .forEach(
            (channel, index) ->
                columns.put(
                    channel, plan.open().contains(channel) ? OPEN : table.columnName(index)));
    return new PlateLayout(
        stated.name(),
        columns,
        units.cop(),
        units.force(),
        units.moment(),
        stated.size(),
        stated.trueOrigin(),
        stated.exportOrigin(),
        stated.sensors());
  }
}
