package caryatid.standing;

import java.util.Optional;

/**
 * Which foot stood on which plate. Plates go by their names in the recording; a name may be left
 * out where the recording has one plate.
 */
public sealed interface Stance {

  /** The prosthetic foot alone on a plate, the other foot next to it at the same height. */
  record ProstheticFootOnPlate(Optional<String> plate) implements Stance {}

  /** One plate under each foot. */
  record PlatePerFoot(String leftPlate, String rightPlate) implements Stance {}

  /** Both feet on one plate: the line is the whole body's, never one leg's. */
  record BothFeetOnOnePlate(Optional<String> plate) implements Stance {}
}
