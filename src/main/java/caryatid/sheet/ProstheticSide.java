package caryatid.sheet;

import caryatid.geometry.Side;
import caryatid.remark.Coded;
import java.util.List;

/** On which side the wearer has a prosthesis. */
public enum ProstheticSide implements Coded {
  LEFT("ProstheticSide.LEFT"),
  RIGHT("ProstheticSide.RIGHT"),
  BOTH("ProstheticSide.BOTH");

  private final String code;

  ProstheticSide(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }

  /** The prosthetic sides, left first. */
  public List<Side> sides() {
    return switch (this) {
      case LEFT -> List.of(Side.LEFT);
      case RIGHT -> List.of(Side.RIGHT);
      case BOTH -> List.of(Side.LEFT, Side.RIGHT);
    };
  }
}
