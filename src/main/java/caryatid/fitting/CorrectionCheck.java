package caryatid.fitting;

import caryatid.entry.Entry;
import caryatid.entry.EntryKind;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import java.util.Optional;

/** What an entry may take the place of: an entry of its own kind that nothing took the place of. */
public final class CorrectionCheck {
  private CorrectionCheck() {}

  public static void check(FittingRecord record, Addition addition) throws BadInput {
    if (addition.corrects().isEmpty()) {
      if (addition.kind() == EntryKind.OPENING) {
        throw new BadInput(
            Problem.at(Place.of(record.code().text()), RecordProblem.STARTED_BEFORE));
      }
      return;
    }
    check(record, addition.corrects().get(), addition.kind());
  }

  /**
   * Requires that an entry can be corrected by one of a kind.
   *
   * @throws BadInput if it is not there, was corrected before or is of another kind
   */
  public static void check(FittingRecord record, Entry.Correction correction, EntryKind kind)
      throws BadInput {
    Place place = Place.of(record.code().text());
    Entry wrong = record.entry(correction.number());
    Optional<Entry> before = record.correctionOf(wrong);
    if (before.isPresent()) {
      throw new BadInput(
          Problem.at(
              place,
              RecordProblem.CORRECTED_BEFORE,
              Argument.count(wrong.number()),
              Argument.count(before.get().number())));
    }
    if (wrong.kind() != kind) {
      throw new BadInput(
          Problem.at(
              place,
              RecordProblem.OTHER_KIND,
              Argument.count(wrong.number()),
              Argument.text(wrong.kind().key())));
    }
  }
}
