package caryatid.usecase;

import caryatid.entry.Opening;
import caryatid.fitting.Addition;
import caryatid.fitting.RecordCode;
import caryatid.remark.BadInput;
import caryatid.remark.StoreFailure;

/** Starts the record of a prosthesis. */
public final class StartRecord {
  private StartRecord() {}

  /**
   * Refuses early a code that a record cannot have.
   *
   * @param sure whether the code says nothing about who the wearer is, whatever it looks like
   * @throws BadInput if it is none, or looks like a name or a date
   */
  public static void require(String code, boolean sure) throws BadInput {
    RecordCode.of(code);
    if (!sure) {
      RecordCode.requireAnonymous(code);
    }
  }

  /**
   * Starts a record.
   *
   * @param opening its first entry
   * @throws BadInput if there is a record of that code already, or the entry does not fit
   * @throws StoreFailure if somebody else is writing, or it cannot be written; nothing is left of
   *     it then
   */
  public static void run(Records records, String code, Draft opening)
      throws BadInput, StoreFailure {
    require(code, opening.sure());
    Addition addition = opening.addition(records.now());
    if (!opening.sure()) {
      RecordCode.requireAnonymous(((Opening) addition.content()).wearer());
    }
    records.store().start(RecordCode.of(code), addition);
  }
}
