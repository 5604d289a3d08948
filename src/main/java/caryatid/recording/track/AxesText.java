package caryatid.recording.track;

import caryatid.geometry.Axes;
import caryatid.geometry.Direction;
import caryatid.recording.model.Channel;
import java.util.Locale;

/**
 * Axes and channels as a plate description writes them; the keys are the same in every language.
 */
public final class AxesText {
  private AxesText() {}

  public static String of(Axes axes) {
    return "axes: {right: "
        + of(axes.right())
        + ", anterior: "
        + of(axes.anterior())
        + ", up: "
        + of(axes.up())
        + "}";
  }

  private static String of(Direction direction) {
    return (direction.sign() < 0 ? "-" : "+") + direction.axis().letter();
  }

  /** A channel's key: {@code moment-x}. */
  static String key(Channel channel) {
    return channel.lastPart().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
