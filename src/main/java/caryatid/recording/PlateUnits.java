package caryatid.recording;

import caryatid.remark.Argument;
import caryatid.remark.Place;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;

/**
 * The units of one plate's quantities: as the file states them, else as the description does.
 *
 * @param force of forces
 * @param moment of moments
 * @param cop of the exported centre of pressure
 */
record PlateUnits(
    Optional<ForceUnit> force, Optional<MomentUnit> moment, Optional<LengthUnit> cop) {

  /** The units; what contradicts or cannot be a unit is noted. */
  static PlateUnits of(PlatePlan plan, Head head, Notebook notes) {
    PlateLayout layout = plan.layout();
    return new PlateUnits(
        unit(plan, head, Channel.Quantity.FORCE, ForceUnit::named, layout.forceUnit(), notes),
        unit(plan, head, Channel.Quantity.MOMENT, MomentUnit::named, layout.momentUnit(), notes),
        unit(plan, head, Channel.Quantity.COP, LengthUnit::named, layout.copUnit(), notes));
  }

  /**
   * What a number of a quantity is multiplied with to be in N, N mm or mm; 1 where that is unknown.
   */
  double scale(Channel.Quantity quantity) {
    return switch (quantity) {
      case FORCE -> force.map(ForceUnit::newton).orElse(1.0);
      case MOMENT -> moment.map(MomentUnit::newtonMm).orElse(1.0);
      case COP -> cop.map(LengthUnit::mm).orElse(1.0);
    };
  }

  private static <U extends Enum<U>> Optional<U> unit(
      PlatePlan plan,
      Head head,
      Channel.Quantity quantity,
      Function<String, Optional<U>> named,
      Optional<U> described,
      Notebook notes) {
    Optional<U> unit = described;
    for (Map.Entry<Channel, Integer> each : new TreeMap<>(plan.columns()).entrySet()) {
      ColumnName column = head.columns().get(each.getValue());
      if (each.getKey().quantity() != quantity || column.unit().isEmpty()) {
        continue;
      }
      String text = column.unit().get();
      Optional<U> stated = named.apply(text);
      if (stated.isEmpty()) {
        notes.problem(
            place(column, head, notes),
            unknown(text),
            Argument.text(text),
            Argument.term(quantity));
      } else if (unit.isPresent() && !unit.equals(stated)) {
        notes.problem(
            place(column, head, notes),
            Reading.UNITS_DIFFER,
            Argument.term(stated.get()),
            Argument.term(unit.get()));
      } else {
        unit = stated;
      }
    }
    return unit;
  }

  private static Reading unknown(String text) {
    return RawUnit.named(text).isPresent() ? Reading.RAW_UNIT : Reading.UNKNOWN_UNIT;
  }

  private static Place place(ColumnName column, Head head, Notebook notes) {
    return new Place(
        notes.file(),
        head.unitsLine().isPresent() ? head.unitsLine() : head.headerLine(),
        Optional.of(column.full()));
  }
}
