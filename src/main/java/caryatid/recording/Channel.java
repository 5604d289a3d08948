package caryatid.recording;

import caryatid.remark.Coded;

/** What a column of an export holds for one plate; x, y, z are the export's own axes. */
public enum Channel {
  FORCE_X(Quantity.FORCE, 0),
  FORCE_Y(Quantity.FORCE, 1),
  FORCE_Z(Quantity.FORCE, 2),
  MOMENT_X(Quantity.MOMENT, 0),
  MOMENT_Y(Quantity.MOMENT, 1),
  MOMENT_Z(Quantity.MOMENT, 2),
  COP_X(Quantity.COP, 0),
  COP_Y(Quantity.COP, 1),
  COP_Z(Quantity.COP, 2);

  /** What kind of quantity a channel holds. */
  enum Quantity implements Coded {
    FORCE("Quantity.FORCE"),
    MOMENT("Quantity.MOMENT"),
    COP("Quantity.COP");

    private final String code;

    Quantity(String code) {
      this.code = code;
    }

    @Override
    public String code() {
      return code;
    }
  }

  private final Quantity quantity;
  private final int axis;

  Channel(Quantity quantity, int axis) {
    this.quantity = quantity;
    this.axis = axis;
  }

  Quantity quantity() {
    return quantity;
  }

  /** The export's axis: 0 for x, 1 for y, 2 for z. */
  int axis() {
    return axis;
  }

  /** The channel of a quantity along an axis. */
  static Channel of(Quantity quantity, int axis) {
    for (Channel channel : values()) {
      if (channel.quantity == quantity && channel.axis == axis) {
        return channel;
      }
    }
    throw new IllegalArgumentException(quantity + " along axis " + axis);
  }
}
