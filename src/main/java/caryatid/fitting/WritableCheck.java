package caryatid.fitting;

import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;

/** Whether a record takes entries: it is undamaged, can be read completely, and was not erased. */
public final class WritableCheck {
  private WritableCheck() {}

  /**
   * Requires that a record takes entries.
   *
   * @throws BadInput if it is damaged, holds what cannot be read, or was erased
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
