package caryatid.recording.track;

import caryatid.recording.model.Channel.Quantity;
import caryatid.recording.model.ForceUnit;
import caryatid.recording.model.LengthUnit;
import caryatid.recording.model.MomentUnit;
import java.util.Optional;
import java.util.Set;

/**
 * The units of one plate's quantities, as far as they are known.
 *
 * @param force of forces
 * @param moment of moments
 * @param cop of the exported centre of pressure
 * @param refused the quantities whose unit is stated, but cannot be used
 */
public record PlateUnits(
    Optional<ForceUnit> force,
    Optional<MomentUnit> moment,
    Optional<LengthUnit> cop,
    Set<Quantity> refused) {
  public PlateUnits {
    refused = Set.copyOf(refused);
  }

  /** Whether a unit is stated nowhere: neither known nor stated as something that is none. */
  boolean unstated(Quantity quantity) {
    boolean known =
        switch (quantity) {
          case FORCE -> force.isPresent();
          case MOMENT -> moment.isPresent();
          case COP -> cop.isPresent();
        };
    return !known && !refused.contains(quantity);
  }

  /** What a number of a quantity is multiplied with to be in N, N mm or mm; 1 where unknown. */
  double scale(Quantity quantity) {
    return switch (quantity) {
      case FORCE -> force.map(ForceUnit::newton).orElse(1.0);
      case MOMENT -> moment.map(MomentUnit::newtonMm).orElse(1.0);
      case COP -> cop.map(LengthUnit::mm).orElse(1.0);
    };
  }
}
