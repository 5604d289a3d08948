package caryatid.sheet;

import caryatid.geometry.Side;
import java.util.List;
import java.util.Set;

/** Which prosthetic ankles have an axis. */
public enum AnkleAxis {
  NONE,
  LEFT,
  RIGHT,
  BOTH;

  /** That of these legs. */
  public static AnkleAxis of(Set<Side> legs) {
    if (legs.size() == 1) {
      return legs.contains(Side.LEFT) ? LEFT : RIGHT;
    }
    return legs.isEmpty() ? NONE : BOTH;
  }

  /** The legs whose ankle has one, left first. */
  public List<Side> legs() {
    return switch (this) {
      case NONE -> List.of();
      case LEFT -> List.of(Side.LEFT);
      case RIGHT -> List.of(Side.RIGHT);
      case BOTH -> List.of(Side.LEFT, Side.RIGHT);
    };
  }
}
