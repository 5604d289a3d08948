package caryatid.recording;

import caryatid.geometry.Axes;
import caryatid.recording.Understood.Basis;
import caryatid.remark.Argument;
import caryatid.remark.Unit;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Tells a table's plates apart: those that carry somebody, those that carry nothing at all, and
 * sets of columns that hold all plates together and are no plate.
 */
final class LoadedPlates {
  private final Table table;
  private final Optional<PlateDescription> description;
  private final Notebook notes;

  LoadedPlates(Table table, Optional<PlateDescription> description, Notebook notes) {
    this.table = table;
    this.description = description;
    this.notes = notes;
  }

  /** All plates, in their order, with what is known of their units; empty for an empty plate. */
  Map<PlatePlan, Optional<PlateUnits>> find() {
    Map<PlatePlan, Optional<PlateUnits>> plates = new LinkedHashMap<>();
    Map<PlatePlan, PlateUnits> loaded = new LinkedHashMap<>();
    UnitFinder finder = new UnitFinder(table.head(), notes);
    for (PlatePlan plan : table.plan().plates()) {
      if (plan.wanted().allMatch(i -> table.column(i).allZero())) {
        notes.remark(RecordingRemark.EMPTY_PLATE, Argument.text(plan.name()));
        plates.put(plan, Optional.empty());
      } else {
        loaded.put(plan, finder.units(plan));
        plates.put(plan, Optional.of(loaded.get(plan)));
      }
    }
    if (loaded.isEmpty() && notes.clean()) {
      notes.problem(Reading.UNLOADED, Argument.of(Load.LEAST_N, Unit.N));
    }
    sums(loaded).forEach(plates::remove);
    return plates;
  }

  /** The export's vertical axis, as described or as it seems. */
  int vertical(Map<PlatePlan, PlateUnits> loaded) {
    Optional<Axes> axes = description.flatMap(PlateDescription::axes);
    return axes.map(a -> a.up().axis()).orElseGet(() -> VerticalAxis.seen(table, loaded.keySet()));
  }

  private List<PlatePlan> sums(Map<PlatePlan, PlateUnits> loaded) {
    SumOfPlates together = new SumOfPlates(table, loaded, vertical(loaded));
    return loaded.keySet().stream().filter(plan -> isSum(plan, together)).toList();
  }

  /** Whether a plate is left out as the sum of others; one that only is named so is asked about. */
  private boolean isSum(PlatePlan plan, SumOfPlates together) {
    List<PlatePlan> parts = together.parts(plan);
    boolean holds = together.holds(plan, parts);
    boolean described = !described().isEmpty();
    Argument[] said = {
      Argument.text(plan.name()),
      Argument.text(parts.stream().map(PlatePlan::name).collect(Collectors.joining(", ")))
    };
    if (holds && described) {
      notes.problem(Reading.SUM_DESCRIBED, said);
    } else if (holds) {
      Aspect aspect = together.hasForce(plan) ? Aspect.SUM : Aspect.SUM_OF_COP;
      notes.understood(aspect, Basis.CONCLUDED, said);
    } else if (SumOfPlates.named(plan) && !described && !parts.isEmpty()) {
      notes.problem(Reading.SUM_OR_PLATE, said);
    }
    return holds && !described;
  }

  private List<PlateLayout> described() {
    return description.map(PlateDescription::plates).orElse(List.of());
  }
}
