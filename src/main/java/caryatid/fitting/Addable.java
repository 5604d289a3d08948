package caryatid.fitting;

import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;

/** Whether a record takes entries: it is whole, all of it can be read, and it was not erased. */
public final class Addable {
  private Addable() {}

  /**
   * Requires that a record takes entries.
   *
   * @throws BadInput with its damage, with what cannot be read, or that it was erased
   */
  public static void require(FittingRecord record) throws BadInput {
    if (!record.notShown().isEmpty()) {
      throw new BadInput(record.notShown());
    }
    if (record.isErased()) {
      throw new BadInput(Problem.at(Place.of(record.code().text()), RecordProblem.WAS_ERASED));
    }
  }
}
