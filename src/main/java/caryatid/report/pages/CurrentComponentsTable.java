package caryatid.report.pages;

import caryatid.entry.Components.ComponentLimits;
import caryatid.entry.Entry;
import caryatid.report.pages.Block.Table;
import caryatid.report.pages.Block.TableColumn;
import caryatid.views.CurrentComponent;
import caryatid.wording.Wording;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** The components that are fitted now, with the limits that their makers state. */
final class CurrentComponentsTable {
  private final List<CurrentComponent> components;
  private final Wording wording;

  /**
   * @param valid the entries that no other takes the place of, in order of time
   */
  CurrentComponentsTable(List<Entry> valid, Wording wording) {
    this.components = CurrentComponent.of(valid);
    this.wording = wording;
  }

  /** The table; empty where no component is named. */
  List<Block> blocks() {
    if (components.isEmpty()) {
      return List.of();
    }
    List<TableColumn> columns =
        List.of(
            column("PART", 40, false),
            column("SERIAL", 22, false),
            column("MASS_HIGHEST", 22, true),
            column("GRADES", 20, true),
            column("HEELS", 24, true),
            column("SOURCE", 49, false),
            column("NUMBER", 13, true));
    return List.of(new Table(columns, components.stream().map(this::row).toList()));
  }

  private TableColumn column(String name, double parts, boolean numbers) {
    return new TableColumn(wording.word("FittingReport." + name), parts, numbers);
  }

  private List<String> row(CurrentComponent component) {
    ComponentLimits limits = component.limits();
    String side = limits.side().map(leg -> ", " + wording.word(leg)).orElse("");
    return List.of(
        limits.what() + ": " + limits.name() + side,
        limits.serial().orElse("–"),
        limits.bodyMassHighestKg().map(kg -> wording.exact(kg) + " kg").orElse("–"),
        range(decimal(limits.mobilityGradeLowest()), decimal(limits.mobilityGradeHighest()), ""),
        range(limits.heelHeightLowestMm(), limits.heelHeightHighestMm(), " mm"),
        limits.source().orElse("–"),
        Integer.toString(component.entry()));
  }

  private static Optional<BigDecimal> decimal(OptionalInt grade) {
    return grade.isPresent() ? Optional.of(BigDecimal.valueOf(grade.getAsInt())) : Optional.empty();
  }

  private String range(Optional<BigDecimal> lowest, Optional<BigDecimal> highest, String unit) {
    return lowest.isEmpty() && highest.isEmpty()
        ? "–"
        : lowest.map(wording::exact).orElse("")
            + "–"
            + highest.map(wording::exact).orElse("")
            + unit;
  }
}
