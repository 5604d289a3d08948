package caryatid.standing;

import caryatid.geometry.Side;

/** Whose load line it is. */
public enum LineOf {
  LEFT_FOOT,
  RIGHT_FOOT,
  WHOLE_BODY;

  /** The line of a foot. */
  public static LineOf foot(Side side) {
    return side == Side.LEFT ? LEFT_FOOT : RIGHT_FOOT;
  }
}
