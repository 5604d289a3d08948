package caryatid.recording.model;

import caryatid.geometry.Axis;
import caryatid.remark.Coded;

/** What a column of an export holds for one plate; x, y, z are the export's own axes. */
public enum Channel implements Coded {
  FORCE_X("Channel.FORCE_X", Quantity.FORCE, Axis.X),
  FORCE_Y("Channel.FORCE_Y", Quantity.FORCE, Axis.Y),
  FORCE_Z("Channel.FORCE_Z", Quantity.FORCE, Axis.Z),
  MOMENT_X("Channel.MOMENT_X", Quantity.MOMENT, Axis.X),
  MOMENT_Y("Channel.MOMENT_Y", Quantity.MOMENT, Axis.Y),
  MOMENT_Z("Channel.MOMENT_Z", Quantity.MOMENT, Axis.Z),
  COP_X("Channel.COP_X", Quantity.COP, Axis.X),
  COP_Y("Channel.COP_Y", Quantity.COP, Axis.Y),
  COP_Z("Channel.COP_Z", Quantity.COP, Axis.Z);

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

  private final String code;
  private final Quantity quantity;
  private final Axis axis;

  Channel(String code, Quantity quantity, Axis axis) {
    this.code = code;
    this.quantity = quantity;
    this.axis = axis;
  }

  @Override
  public String code() {
    return code;
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
