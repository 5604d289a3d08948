package caryatid.fitting;

import caryatid.entry.Acceptance;
import caryatid.entry.EntryContent;
import caryatid.entry.EntryKind;
import caryatid.entry.ShoeList;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** The stands and entries that an entry names, as acceptances and lists of shoes do. */
final class StandReferenceCheck {
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
