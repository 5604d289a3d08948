package caryatid.fitting;

import caryatid.entry.Acceptance;
import caryatid.entry.BenchAlignment;
import caryatid.entry.BenchItem;
import caryatid.entry.EntryContent;
import caryatid.entry.EntryKind;
import caryatid.entry.RecordOpening;
import caryatid.entry.SettingUnit;
import caryatid.entry.ShoeList;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * What an entry must say beyond its form, which is not asked of entries that were added before this
 * was known.
 */
public final class ContentCheck {
  private ContentCheck() {}

  /**
   * Requires what an addition to a record must say.
   *
   * @throws BadInput with what is missing or is of another leg
   */
  public static void check(FittingRecord record, Addition addition) throws BadInput {
    Place place = Place.of(record.code().text());
    if (addition.content() instanceof RecordOpening opening) {
      LegCheck.check(place, opening);
    }
    if (addition.content() instanceof BenchAlignment bench) {
      FastenerCheck.check(place, bench);
    }
    Optional<RecordOpening> opening = record.opening();
    if (opening.isPresent()) {
      LegCheck.check(place, opening.get(), addition.content());
    }
    StandReferenceCheck.check(record, addition);
  }

  /**
   * Requires what an opening must say.
   *
   * @throws BadInput with what is missing
   */
  public static void check(RecordCode code, Addition opening) throws BadInput {
    if (opening.content() instanceof RecordOpening said) {
      LegCheck.check(Place.of(code.text()), said);
    }
  }

  /**
   * What is secured to torque: each fastener is a row that says which, in N m. Entries of earlier
   * versions, which had one row for all, are still read.
   */
  private static final class FastenerCheck {
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
                  place,
                  RecordProblem.WHICH_FASTENER,
                  Argument.text("items[" + row + "].fastener")));
    }
  }

  /** The stands and entries that an entry names, as acceptances and lists of shoes do. */
  private static final class StandReferenceCheck {
    private StandReferenceCheck() {}

    /**
     * Requires that every number is that of a stand of the record, so that nothing is accepted or
     * said of an entry that was meant otherwise.
     *
     * @throws BadInput with each number that is not
     */
    static void check(FittingRecord record, Addition addition) throws BadInput {
      List<Problem> problems = new ArrayList<>();
      Place place = Place.of(record.code().text());
      named(addition.content())
          .filter(number -> !isStand(record, number))
          .forEach(
              number ->
                  problems.add(
                      Problem.at(place, RecordProblem.NO_SUCH_STAND, Argument.count(number))));
      if (addition.content() instanceof Acceptance accepted) {
        accepted.entry().stream()
            .filter(number -> record.entries().stream().noneMatch(e -> e.number() == number))
            .forEach(
                number ->
                    problems.add(
                        Problem.at(
                            place, RecordProblem.NO_SUCH_ENTRY_NAMED, Argument.count(number))));
      }
      if (!problems.isEmpty()) {
        throw new BadInput(problems);
      }
    }

    private static IntStream named(EntryContent content) {
      if (content instanceof Acceptance accepted) {
        return accepted.stand().stream();
      }
      return content instanceof ShoeList footwear
          ? footwear.shoes().stream().flatMapToInt(shoe -> shoe.stand().stream())
          : IntStream.empty();
    }

    private static boolean isStand(FittingRecord record, int number) {
      return record.entries().stream()
          .anyMatch(e -> e.number() == number && e.kind() == EntryKind.STAND);
    }
  }
}
