package caryatid.views;

import caryatid.geometry.Side;
import caryatid.remark.Argument;
import caryatid.remark.Coded;
import java.util.Optional;

/** The leg that follows the name of an item or a component, with a leading comma. */
enum LegSuffix implements Coded {
  LEFT("Leg.LEFT"),
  RIGHT("Leg.RIGHT");

  private final String code;

  LegSuffix(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }

  /** The leg behind a name; nothing where none is said. */
  static Argument behind(Optional<Side> side) {
    return side.map(s -> Argument.term(s == Side.LEFT ? LEFT : RIGHT)).orElse(Argument.text(""));
  }
}
