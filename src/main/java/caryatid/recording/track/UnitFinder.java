package caryatid.recording.track;

import caryatid.recording.model.Channel.Quantity;
import caryatid.recording.model.ForceUnit;
import caryatid.recording.model.ImportFact;
import caryatid.recording.model.ImportProblem;
import caryatid.recording.model.LengthUnit;
import caryatid.recording.model.MomentUnit;
import caryatid.recording.model.PlateLayout;
import caryatid.recording.model.RawUnit;
import caryatid.recording.model.UnderstoodFact.Basis;
import caryatid.recording.table.ColumnName;
import caryatid.recording.table.HeaderBlock;
import caryatid.recording.table.Outcome;
import caryatid.recording.table.PlateColumns;
import caryatid.recording.table.Preamble;
import caryatid.recording.table.StageMessages;
import caryatid.remark.Argument;
import caryatid.remark.Coded;
import caryatid.remark.Place;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Decides the units of a plate's columns, quantity by quantity: in the header or a row of units,
 * above the table, in the description; where two of them state one, they must agree.
 */
public final class UnitFinder {
  private final HeaderBlock head;
  private final Preamble preamble;
  private final StageMessages nothing;

  public UnitFinder(HeaderBlock head, String file) {
    this.head = head;
    this.preamble = new Preamble(head);
    this.nothing = StageMessages.none(file);
  }

  Outcome<PlateUnits> units(PlateColumns plate) {
    PlateLayout layout = plate.layout();
    Decided<ForceUnit> force = unit(plate, Quantity.FORCE, ForceUnit::named, layout.forceUnit());
    Decided<MomentUnit> moment =
        unit(plate, Quantity.MOMENT, MomentUnit::named, layout.momentUnit());
    Decided<LengthUnit> cop = unit(plate, Quantity.COP, LengthUnit::named, layout.copUnit());
    Set<Quantity> refused =
        Stream.of(force, moment, cop)
            .filter(Decided::refused)
            .map(Decided::quantity)
            .collect(Collectors.toSet());
    return new Outcome<>(
        new PlateUnits(force.unit(), moment.unit(), cop.unit(), refused),
        force.messages().and(moment.messages()).and(cop.messages()));
  }

  /** A unit as the file states it, and where. */
  private record Statement(Place place, String unit) {}

  /** The unit of a quantity; refused where the file states one that cannot be used. */
  private record Decided<U>(
      Quantity quantity, Optional<U> unit, boolean refused, StageMessages messages) {}

  private <U extends Enum<U> & Coded> Decided<U> unit(
      PlateColumns plate,
      Quantity quantity,
      Function<String, Optional<U>> named,
      Optional<U> described) {
    StageMessages messages = nothing;
    Optional<U> unit = Optional.empty();
    boolean refused = false;
    for (Statement each : statements(plate, quantity)) {
      Optional<U> stated = named.apply(each.unit());
      if (stated.isEmpty()) {
        refused = true;
        messages = messages.and(unusable(each, quantity));
      } else {
        messages = messages.and(compared(each, stated.get(), unit.or(() -> described)));
        unit = stated;
      }
    }
    Basis basis = unit.isPresent() ? Basis.STATED : Basis.DESCRIBED;
    Optional<U> known = unit.or(() -> described);
    if (known.isPresent()) {
      messages =
          messages.withFact(
              ImportFact.UNIT,
              basis,
              Argument.text(plate.name()),
              Argument.term(quantity),
              Argument.term(known.get()));
    }
    return new Decided<>(quantity, known, refused, messages);
  }

  private StageMessages unusable(Statement stated, Quantity quantity) {
    return nothing.withProblem(
        stated.place(),
        RawUnit.named(stated.unit()).isPresent()
            ? ImportProblem.RAW_UNIT
            : ImportProblem.UNKNOWN_UNIT,
        Argument.text(stated.unit()),
        Argument.term(quantity));
  }

  private <U extends Enum<U> & Coded> StageMessages compared(
      Statement statement, U stated, Optional<U> known) {
    return known.isPresent() && known.get() != stated
        ? nothing.withProblem(
            statement.place(),
            ImportProblem.UNITS_DIFFER,
            Argument.term(stated),
            Argument.term(known.get()))
        : nothing;
  }

  /** Every unit the file states for a quantity of a plate, and where. */
  private Collection<Statement> statements(PlateColumns plate, Quantity quantity) {
    Map<String, Statement> statements = new LinkedHashMap<>();
    plate
        .holding(quantity)
        .map(head.columns()::get)
        .forEach(
            column ->
                column
                    .unit()
                    .map(unit -> new Statement(place(column), unit))
                    .ifPresent(statement -> statements.put(column.full(), statement)));
    boolean there = plate.count(quantity) > 0 || !plate.sensors().isEmpty();
    if (there && statements.isEmpty()) {
      preamble
          .unit(quantity)
          .map(stated -> new Statement(Place.of(nothing.file(), stated.line()), stated.text()))
          .ifPresent(statement -> statements.put("", statement));
    }
    return statements.values();
  }

  private Place place(ColumnName column) {
    return new Place(
        nothing.file(),
        head.unitsLine().isPresent() ? head.unitsLine() : head.headerLine(),
        Optional.of(column.full()));
  }
}
