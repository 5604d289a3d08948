package caryatid.recording;

import caryatid.geometry.Axes;
import caryatid.geometry.Direction;

/** From an export's axes into the person's frame. */
record Frame(Axes axes) {

  /** Turns a series along an export axis into one along a direction of the person, in place. */
  static double[] along(Direction direction, double[] series, double scale) {
    double factor = direction.sign() * scale;
    for (int i = 0; factor != 1 && i < series.length; i++) {
      series[i] *= factor;
    }
    return series;
  }

  /** The channel of a quantity along a direction. */
  static Channel channel(Channel.Quantity quantity, Direction direction) {
    return Channel.of(quantity, direction.axis());
  }

  Channel right(Channel.Quantity quantity) {
    return channel(quantity, axes.right());
  }

  Channel anterior(Channel.Quantity quantity) {
    return channel(quantity, axes.anterior());
  }

  Channel up(Channel.Quantity quantity) {
    return channel(quantity, axes.up());
  }
}
