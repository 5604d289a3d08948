package caryatid.recording;

import caryatid.recording.Channel.Quantity;
import caryatid.recording.Understood.Basis;
import caryatid.remark.Argument;
import caryatid.remark.Coded;
import caryatid.remark.Place;
import java.util.Collection;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/**
 * Finds the units of a plate's quantities: in the header or a row of units, above the table, in the
 * description; where two of them state one, they must agree.
 */
final class UnitFinder {
  private final Head head;
  private final Preamble preamble;
  private final Notebook notes;
  private final Set<Quantity> refused = EnumSet.noneOf(Quantity.class);

  UnitFinder(Head head, Notebook notes) {
    this.head = head;
    this.preamble = new Preamble(head);
    this.notes = notes;
  }

  PlateUnits units(PlatePlan plan) {
    PlateLayout layout = plan.layout();
    refused.clear();
    return new PlateUnits(
        unit(plan, Quantity.FORCE, ForceUnit::named, layout.forceUnit()),
        unit(plan, Quantity.MOMENT, MomentUnit::named, layout.momentUnit()),
        unit(plan, Quantity.COP, LengthUnit::named, layout.copUnit()),
        refused);
  }

  /** A unit as the file states it, and where. */
  private record Statement(Place place, String unit) {}

  private <U extends Enum<U> & Coded> Optional<U> unit(
      PlatePlan plan,
      Quantity quantity,
      Function<String, Optional<U>> named,
      Optional<U> described) {
    Optional<U> unit = Optional.empty();
    for (Statement each : statements(plan, quantity)) {
      Optional<U> stated = named.apply(each.unit());
      if (stated.isEmpty()) {
        refused.add(quantity);
        notes.problem(
            each.place(),
            RawUnit.named(each.unit()).isPresent() ? Reading.RAW_UNIT : Reading.UNKNOWN_UNIT,
            Argument.text(each.unit()),
            Argument.term(quantity));
        continue;
      }
      Optional<U> known = unit.or(() -> described);
      if (known.isPresent() && !known.equals(stated)) {
        notes.problem(
            each.place(),
            Reading.UNITS_DIFFER,
            Argument.term(stated.get()),
            Argument.term(known.get()));
      }
      unit = stated;
    }
    note(plan, quantity, unit, described);
    return unit.or(() -> described);
  }

  /** Every unit the file states for a quantity of a plate, and where. */
  private Collection<Statement> statements(PlatePlan plan, Quantity quantity) {
    Map<String, Statement> statements = new LinkedHashMap<>();
    plan.holding(quantity)
        .map(head.columns()::get)
        .forEach(
            column ->
                column
                    .unit()
                    .map(unit -> new Statement(place(column), unit))
                    .ifPresent(statement -> statements.put(column.full(), statement)));
    boolean there = plan.count(quantity) > 0 || !plan.sensors().isEmpty();
    if (there && statements.isEmpty()) {
      preamble
          .unit(quantity)
          .map(stated -> new Statement(Place.of(notes.file(), stated.line()), stated.text()))
          .ifPresent(statement -> statements.put("", statement));
    }
    return statements.values();
  }

  private Place place(ColumnName column) {
    return new Place(
        notes.file(),
        head.unitsLine().isPresent() ? head.unitsLine() : head.headerLine(),
        Optional.of(column.full()));
  }

  private <U extends Enum<U> & Coded> void note(
      PlatePlan plan, Quantity quantity, Optional<U> stated, Optional<U> described) {
    stated
        .or(() -> described)
        .ifPresent(
            unit ->
                notes.understood(
                    Aspect.UNIT,
                    stated.isPresent() ? Basis.STATED : Basis.DESCRIBED,
                    Argument.text(plan.name()),
                    Argument.term(quantity),
                    Argument.term(unit)));
  }
}
