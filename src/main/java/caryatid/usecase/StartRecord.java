package caryatid.usecase;

import caryatid.entry.RecordOpening;
import caryatid.fitting.Addition;
import caryatid.fitting.RecordCode;
import caryatid.loadline.GeometryLimits;
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
   * @throws StoreFailure if another program is writing, or it cannot be written; nothing is left of
   *     it then
   */
  public static void run(Records records, String code, EntryDraft opening)
      throws BadInput, StoreFailure {
    run(records, code, opening, false);
  }

  /**
   * Starts a record, in a new folder of records that a group shares if asked for.
   *
   * @param shared whether the folder is made for a group; it must not be there then
   * @throws BadInput as above, or if the folder is there
   */
  public static void run(Records records, String code, EntryDraft opening, boolean shared)
      throws BadInput, StoreFailure {
    require(code, opening.sure());
    Addition addition = opening.addition(records.now(), GeometryLimits.USUAL);
    if (!opening.sure()) {
      RecordCode.requireAnonymous(((RecordOpening) addition.content()).wearer());
    }
    if (shared) {
      records.store().share();
    }
    records.store().start(RecordCode.of(code), addition);
  }
}
