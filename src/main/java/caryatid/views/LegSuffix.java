package caryatid.views;

import caryatid.entry.Entry;
import caryatid.entry.RecordOpening;
import caryatid.geometry.Side;
import caryatid.remark.Argument;
import caryatid.remark.Coded;
import caryatid.sheet.ProstheticSide;
import java.util.List;
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

  /** Whether a record is known to be of one leg, so that its items need no side. */
  static boolean isOne(List<Entry> valid) {
    return Entry.latest(valid, RecordOpening.class)
        .filter(opening -> opening.side() != ProstheticSide.BOTH)
        .isPresent();
  }
}
