package caryatid.recording;

/** What a column of an export holds for one plate; x, y, z are the export's own axes. */
public enum Channel {
  FORCE_X,
  FORCE_Y,
  FORCE_Z,
  MOMENT_X,
  MOMENT_Y,
  MOMENT_Z,
  COP_X,
  COP_Y,
  COP_Z;

  /** What kind of quantity a channel holds. */
  enum Quantity {
    FORCE,
    MOMENT,
    COP
  }

  Quantity quantity() {
    return Quantity.values()[ordinal() / 3];
  }

  /** The export's axis: 0 for x, 1 for y, 2 for z. */
  int axis() {
    return ordinal() % 3;
  }

  static Channel of(Quantity quantity, int axis) {
    return values()[3 * quantity.ordinal() + axis];
  }
}
