package caryatid.sheet;

import caryatid.geometry.Side;
import java.util.List;

/** On which side the wearer has a prosthesis. */
public enum ProstheticSide {
  LEFT(Side.LEFT),
  RIGHT(Side.RIGHT),
  BOTH(Side.LEFT, Side.RIGHT);

  private final List<Side> sides;

  ProstheticSide(Side... sides) {
    this.sides = List.of(sides);
  }

  /** The prosthetic sides, left first. */
  public List<Side> sides() {
    return sides;
  }
}
