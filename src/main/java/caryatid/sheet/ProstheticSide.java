package caryatid.sheet;

import caryatid.geometry.Side;
import java.util.List;

/** On which side the wearer has a prosthesis. */
public enum ProstheticSide {
  LEFT,
  RIGHT,
  BOTH;

  /** The prosthetic sides, left first. */
  public List<Side> sides() {
    return switch (this) {
      case LEFT -> List.of(Side.LEFT);
      case RIGHT -> List.of(Side.RIGHT);
      case BOTH -> List.of(Side.LEFT, Side.RIGHT);
    };
  }
}
