package caryatid.recording.importer;

import caryatid.recording.model.Channel;
import caryatid.recording.model.ExportLayout;
import caryatid.recording.model.ImportProblem;
import caryatid.recording.model.PlateDescription;
import caryatid.recording.model.PlateLayout;
import caryatid.recording.model.TimeBase;
import caryatid.recording.model.TimeUnit;
import caryatid.recording.table.ColumnMeaning;
import caryatid.recording.table.ColumnName;
import caryatid.recording.table.HeaderBlock;
import caryatid.recording.table.ParsedTable;
import caryatid.recording.table.PlateColumns;
import caryatid.recording.track.PlateUnits;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** A plate description of everything that is known, to be completed by hand. */
final class DescriptionDraft {
  /** No column's name, so that the description is refused as long as it stands there. */
  private static final String OPEN = "unknown";

  /** Questions that names for all columns answer. */
  private static final Set<ImportProblem> NAMING =
      EnumSet.of(ImportProblem.TWICE, ImportProblem.NO_NAMES, ImportProblem.NAMES_COUNT);

  private final Optional<PlateDescription> described;
  private final Set<ImportProblem> asked;

  /**
   * @param asked what is open
   */
  DescriptionDraft(Optional<PlateDescription> described, Set<ImportProblem> asked) {
    this.described = described;
    this.asked = Set.copyOf(asked);
  }

  /**
   * The description.
   *
   * @param shown the head of the table that holds the plate, or else of the first
   * @param times the unit of the times, where it was found
   */
  PlateDescription of(
      Optional<ParsedTable> table,
      Optional<HeaderBlock> shown,
      Map<PlateColumns, PlateUnits> units,
      Optional<TimeUnit> times) {
    List<PlateLayout> plates = new ArrayList<>();
    units.forEach((plate, known) -> plates.add(layout(table.orElseThrow(), plate, known)));
    List<PlateLayout> stated = described.map(PlateDescription::plates).orElse(List.of());
    return new PlateDescription(
        described.map(PlateDescription::name).orElse("plate"),
        form(shown),
        time(table.map(ParsedTable::head).or(() -> shown), times),
        described.flatMap(PlateDescription::axes),
        described.flatMap(PlateDescription::forceIs),
        plates.isEmpty() && stated.isEmpty() && shown.isPresent()
            ? List.of(open())
            : plates.isEmpty() ? stated : plates,
        described.map(PlateDescription::lines).orElse(List.of()),
        described.flatMap(PlateDescription::accuracy),
        described.map(PlateDescription::removeUnloadedOffset).orElse(false));
  }

  /** With a name to be written for each column, where the file's own cannot be used. */
  private ExportLayout form(Optional<HeaderBlock> shown) {
    ExportLayout stated = described.map(PlateDescription::layout).orElse(ExportLayout.UNSTATED);
    boolean naming = asked.stream().anyMatch(NAMING::contains);
    return naming && shown.isPresent() ? withColumns(stated, names(shown.get())) : stated;
  }

  private static List<String> names(HeaderBlock head) {
    List<String> names = head.columns().stream().map(ColumnName::full).toList();
    return names.stream()
        .map(n -> n.isEmpty() || Collections.frequency(names, n) > 1 ? OPEN : n)
        .toList();
  }

  private static ExportLayout withColumns(ExportLayout layout, List<String> columns) {
    return new ExportLayout(
        layout.encoding(),
        layout.delimiter(),
        layout.decimalMark(),
        layout.headerLine(),
        layout.firstDataLine(),
        columns,
        layout.recording());
  }

  /** A plate of which every column is to be named. */
  private static PlateLayout open() {
    PlateLayout bare = PlateColumns.bare("plate 1");
    return new PlateLayout(
        bare.name(),
        Map.of(Channel.COP_X, OPEN, Channel.COP_Y, OPEN, Channel.FORCE_Z, OPEN),
        bare.copUnit(),
        bare.forceUnit(),
        bare.momentUnit(),
        bare.size(),
        bare.trueOrigin(),
        bare.exportOrigin(),
        bare.sensors(),
        bare.measures());
  }

  private TimeBase time(Optional<HeaderBlock> head, Optional<TimeUnit> times) {
    TimeBase stated = described.map(PlateDescription::time).orElse(TimeBase.UNSTATED);
    boolean something =
        stated.column().isPresent() || stated.unit().isPresent() || stated.rateHz().isPresent();
    // Whole seconds are no times to go by, and the rate is asked for instead.
    if (something || asked.contains(ImportProblem.WHOLE_SECONDS)) {
      return stated;
    }
    return head.stream()
        .flatMap(h -> h.columns().stream())
        .filter(name -> ColumnMeaning.of(name).kind() == ColumnMeaning.ColumnKind.TIME)
        .findFirst()
        .map(name -> times(name, times))
        .orElse(stated);
  }

  private static TimeBase times(ColumnName name, Optional<TimeUnit> times) {
    return new TimeBase(
        Optional.of(name.full()),
        times.or(() -> name.unit().flatMap(TimeUnit::named)),
        OptionalDouble.empty());
  }

  private static PlateLayout layout(ParsedTable table, PlateColumns plate, PlateUnits units) {
    PlateLayout stated = plate.layout();
    Map<Channel, String> columns = new EnumMap<>(Channel.class);
    plate
        .columns()
        .forEach(
            (channel, index) ->
                columns.put(
                    channel, plate.open().contains(channel) ? OPEN : table.columnName(index)));
    return new PlateLayout(
        stated.name(),
        columns,
        units.cop(),
        units.force(),
        units.moment(),
        stated.size(),
        stated.trueOrigin(),
        stated.exportOrigin(),
        stated.sensors(),
        stated.measures());
  }
}
