package caryatid.standing;

import caryatid.geometry.Side;
import caryatid.remark.Coded;

/** Whose load line it is: a foot's or the whole body's. */
public enum LoadLineOwner implements Coded {
  LEFT_FOOT("LineOf.LEFT_FOOT"),
  RIGHT_FOOT("LineOf.RIGHT_FOOT"),
  WHOLE_BODY("LineOf.WHOLE_BODY");

  private final String code;

  LoadLineOwner(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }

  /** The line of a foot. */
  public static LoadLineOwner foot(Side side) {
    return side == Side.LEFT ? LEFT_FOOT : RIGHT_FOOT;
  }
}
