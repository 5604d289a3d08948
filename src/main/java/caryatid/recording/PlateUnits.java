package caryatid.recording;

import java.util.Optional;

/**
 * The units of one plate's quantities, as far as they are known.
 *
 * @param force of forces
 * @param moment of moments
 * @param cop of the exported centre of pressure
 */
record PlateUnits(
    Optional<ForceUnit> force, Optional<MomentUnit> moment, Optional<LengthUnit> cop) {

  /** What a number of a quantity is multiplied with to be in N, N mm or mm; 1 where unknown. */
  double scale(Channel.Quantity quantity) {
    return switch (quantity) {
      case FORCE -> force.map(ForceUnit::newton).orElse(1.0);
      case MOMENT -> moment.map(MomentUnit::newtonMm).orElse(1.0);
      case COP -> cop.map(LengthUnit::mm).orElse(1.0);
    };
  }
}
