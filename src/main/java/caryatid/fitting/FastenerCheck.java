package caryatid.fitting;

import caryatid.entry.BenchAlignment;
import caryatid.entry.BenchItem;
import caryatid.entry.SettingUnit;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What is secured to torque: each fastener is a row that says which, in N m. Entries of earlier
 * versions, which had one row for all, are still read.
 */
final class FastenerCheck {
  private FastenerCheck() {}

  /**
   * Requires that a bench alignment names its fasteners.
   *
   * @throws BadInput with each row that does not
   */
  static void check(Place place, BenchAlignment bench) throws BadInput {
    List<Problem> problems = new ArrayList<>();
    for (int i = 0; i < bench.items().size(); i++) {
      problem(place, i + 1, bench.items().get(i)).ifPresent(problems::add);
    }
    if (!problems.isEmpty()) {
      throw new BadInput(problems);
    }
  }

  private static Optional<Problem> problem(Place place, int row, BenchAlignment.Item item) {
    if (!item.item().is(BenchItem.FASTENERS)) {
      return Optional.empty();
    }
    if (item.unit() != SettingUnit.NEWTON_METRE) {
      return Optional.of(
          Problem.at(
              place,
              RecordProblem.TORQUE_UNIT,
              Argument.text("items[" + row + "].unit"),
              Argument.text(item.unit().code())));
    }
    return item.fastener().isPresent()
        ? Optional.empty()
        : Optional.of(
            Problem.at(
                place, RecordProblem.WHICH_FASTENER, Argument.text("items[" + row + "].fastener")));
  }
}
