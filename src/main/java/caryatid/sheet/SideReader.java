package caryatid.sheet;

import caryatid.geometry.Side;
import caryatid.remark.Argument;
import caryatid.sheet.yaml.Section;
import caryatid.sheet.yaml.ValueParser;
import caryatid.sheet.yaml.ValueParsers;
import java.util.Optional;

/** Reads which leg a landmark or a target belongs to. */
final class SideReader {
  private static final ValueParser<Side> SIDE = ValueParsers.word(Side.class);

  private SideReader() {}

  /**
   * The side an entry states or, with one prosthesis, that of the prosthesis.
   *
   * @param prosthetic empty when the sheet's own side could not be read; the sheet is refused then,
   *     and any side lets the rest be looked through
   */
  static Side of(Section section, Optional<ProstheticSide> prosthetic) {
    Optional<Side> stated = section.optional("side", SIDE);
    if (prosthetic.isEmpty()) {
      return stated.orElse(Side.RIGHT);
    }
    if (prosthetic.get() == ProstheticSide.BOTH && !section.has("side")) {
      section.refuse(section.place(), SheetProblem.SIDE_MISSING);
    }
    stated
        .filter(side -> !prosthetic.get().sides().contains(side))
        .ifPresent(
            side ->
                section.refuse(
                    section.place("side"),
                    SheetProblem.SIDE_WITHOUT_PROSTHESIS,
                    Argument.term(side)));
    return stated.orElse(prosthetic.get().sides().get(0));
  }
}
