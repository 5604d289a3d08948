package caryatid.recording.track;

import caryatid.geometry.Axes;
import caryatid.geometry.Axis;
import caryatid.recording.model.ImportFact;
import caryatid.recording.model.ImportProblem;
import caryatid.recording.model.PlateDescription;
import caryatid.recording.model.PlateLayout;
import caryatid.recording.model.RecordingRemark;
import caryatid.recording.model.UnderstoodFact.Basis;
import caryatid.recording.table.Outcome;
import caryatid.recording.table.ParsedTable;
import caryatid.recording.table.PlateColumns;
import caryatid.recording.table.StageMessages;
import caryatid.remark.Argument;
import caryatid.remark.Unit;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Divides a table's plates into those that carry somebody, those that carry nothing at all, and
 * sets of columns that hold all plates together and are no plate.
 */
public final class LoadedPlates {
  private final ParsedTable table;
  private final Optional<PlateDescription> description;
  private final String file;

  public LoadedPlates(ParsedTable table, Optional<PlateDescription> description, String file) {
    this.table = table;
    this.description = description;
    this.file = file;
  }

  /**
   * All plates, in their order, with what is known of their units; empty for an empty plate.
   *
   * @param units decides the units of a plate's columns
   * @param earlier what was found before
   */
  public Outcome<Map<PlateColumns, Optional<PlateUnits>>> find(
      UnitFinder units, StageMessages earlier) {
    StageMessages messages = earlier;
    Map<PlateColumns, Optional<PlateUnits>> plates = new LinkedHashMap<>();
    Map<PlateColumns, PlateUnits> loaded = new LinkedHashMap<>();
    for (PlateColumns plate : table.mapping().plates()) {
      if (plate.wanted().allMatch(i -> table.column(i).allZero())) {
        messages = messages.withRemark(RecordingRemark.EMPTY_PLATE, Argument.text(plate.name()));
        plates.put(plate, Optional.empty());
      } else {
        Outcome<PlateUnits> known = units.units(plate);
        messages = messages.and(known.messages());
        loaded.put(plate, known.value());
        plates.put(plate, Optional.of(known.value()));
      }
    }
    if (loaded.isEmpty() && messages.clean()) {
      messages =
          messages.withProblem(ImportProblem.UNLOADED, Argument.of(TrackLimits.LEAST_N, Unit.N));
    }
    SumOfPlates together = new SumOfPlates(table, loaded, vertical(loaded));
    for (PlateColumns plate : loaded.keySet()) {
      Outcome<Boolean> sum = isSum(plate, together);
      messages = messages.and(sum.messages());
      if (sum.value()) {
        plates.remove(plate);
      }
    }
    return new Outcome<>(plates, messages);
  }

  /** The export's vertical axis, as described or as it seems. */
  public Axis vertical(Map<PlateColumns, PlateUnits> loaded) {
    Optional<Axes> axes = description.flatMap(PlateDescription::axes);
    return axes.map(a -> a.up().axis()).orElseGet(() -> VerticalAxis.seen(table, loaded.keySet()));
  }

  /** Whether a plate is left out as the sum of others; one that only is named so is asked about. */
  private Outcome<Boolean> isSum(PlateColumns plate, SumOfPlates together) {
    List<PlateColumns> parts = together.parts(plate);
    boolean holds = together.holds(plate, parts);
    boolean described = !described().isEmpty();
    Argument[] said = {
      Argument.text(plate.name()),
      Argument.text(parts.stream().map(PlateColumns::name).collect(Collectors.joining(", ")))
    };
    StageMessages nothing = StageMessages.none(file);
    if (holds && described) {
      return new Outcome<>(false, nothing.withProblem(ImportProblem.SUM_DESCRIBED, said));
    }
    if (holds) {
      ImportFact aspect = together.hasForce(plate) ? ImportFact.SUM : ImportFact.SUM_OF_COP;
      return new Outcome<>(true, nothing.withFact(aspect, Basis.CONCLUDED, said));
    }
    boolean open = SumOfPlates.named(plate) && !described && !parts.isEmpty();
    return new Outcome<>(
        false, open ? nothing.withProblem(ImportProblem.SUM_OR_PLATE, said) : nothing);
  }

  private List<PlateLayout> described() {
    return description.map(PlateDescription::plates).orElse(List.of());
  }
}
