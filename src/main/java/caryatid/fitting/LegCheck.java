package caryatid.fitting;

import caryatid.entry.BenchAlignment;
import caryatid.entry.Components;
import caryatid.entry.EntryContent;
import caryatid.entry.RecordOpening;
import caryatid.geometry.Side;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import caryatid.sheet.ProstheticSide;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Requires the leg of an item or a component if both legs have a prosthesis. */
final class LegCheck {
  private LegCheck() {}

  /**
   * Requires a side where there are two, and none but the record's where there is one.
   *
   * @param opening of the record
   * @throws BadInput with each row that has none or another one
   */
  static void check(Place place, RecordOpening opening, EntryContent content) throws BadInput {
    List<Problem> problems = new ArrayList<>();
    List<Optional<Side>> sides = sides(content);
    String rows = content instanceof Components ? "components" : "items";
    for (int i = 0; i < sides.size(); i++) {
      Argument field = Argument.text(rows + "[" + (i + 1) + "].side");
      problem(place, field, opening.side(), sides.get(i)).ifPresent(problems::add);
    }
    if (!problems.isEmpty()) {
      throw new BadInput(problems);
    }
  }

  /**
   * Requires the level of each leg if both have a prosthesis.
   *
   * @throws BadInput if not
   */
  static void check(Place place, RecordOpening opening) throws BadInput {
    boolean single = opening.levelLeft().isPresent() || opening.levelRight().isPresent();
    if (single && opening.side() != ProstheticSide.BOTH) {
      throw new BadInput(Problem.at(place, RecordProblem.LEVEL_OF_ONE_LEG));
    }
  }

  private static List<Optional<Side>> sides(EntryContent content) {
    if (content instanceof BenchAlignment bench) {
      return bench.items().stream().map(BenchAlignment.Item::side).toList();
    }
    return content instanceof Components components
        ? components.components().stream().map(Components.ComponentLimits::side).toList()
        : List.of();
  }

  private static Optional<Problem> problem(
      Place place, Argument field, ProstheticSide record, Optional<Side> side) {
    if (side.isEmpty()) {
      return record == ProstheticSide.BOTH
          ? Optional.of(Problem.at(place, RecordProblem.WHICH_LEG, field))
          : Optional.empty();
    }
    return record.sides().contains(side.get())
        ? Optional.empty()
        : Optional.of(
            Problem.at(
                place,
                RecordProblem.OTHER_LEG,
                field,
                Argument.term(side.get()),
                Argument.term(record)));
  }
}
