package caryatid.recording.model;

import caryatid.geometry.Axis;
import caryatid.remark.Coded;

/** What a column of an export holds for one plate; x, y, z are the export's own axes. */
public enum Channel {
  FORCE_X(Quantity.FORCE, Axis.X),
  FORCE_Y(Quantity.FORCE, Axis.Y),
  FORCE_Z(Quantity.FORCE, Axis.Z),
  MOMENT_X(Quantity.MOMENT, Axis.X),
  MOMENT_Y(Quantity.MOMENT, Axis.Y),
  MOMENT_Z(Quantity.MOMENT, Axis.Z),
  COP_X(Quantity.COP, Axis.X),
  COP_Y(Quantity.COP, Axis.Y),
  COP_Z(Quantity.COP, Axis.Z);

  /** What kind of quantity a channel holds. */
  public enum Quantity implements Coded {
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
  private final Axis axis;

  Channel(Quantity quantity, Axis axis) {
    this.quantity = quantity;
    this.axis = axis;
  }

  public Quantity quantity() {
    return quantity;
  }

  /** The export's axis. */
  public Axis axis() {
    return axis;
  }

  /** The channel of a quantity along an axis. */
  public static Channel of(Quantity quantity, Axis axis) {
    for (Channel channel : values()) {
      if (channel.quantity == quantity && channel.axis == axis) {
        return channel;
      }
    }
    throw new IllegalArgumentException(quantity + " along axis " + axis);
  }
}
